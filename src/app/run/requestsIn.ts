import type { RequestId } from '../../core/commands/command.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { gownsFirst, loadsSheath } from '../../core/scenario/station.ts';
import { REQUEST_KEYS, type RequestKey } from '../input/keyMap.ts';

const THERE: Readonly<Record<NonNullable<RequestKey['needs']>, (scenario: Scenario) => boolean>> = {
  sheath: loadsSheath,
  gown: gownsFirst,
  packets: ({ items }) => items.some(({ spare }) => spare),
  bed: ({ room }) => room.bed.adjustable,
};

/** Gowning comes before the work with the probe. */
const ORDER: readonly RequestKey['needs'][] = ['gown', 'sheath', 'packets', undefined, 'bed'];

/** What the assistant can be asked for in a run of the scenario: first what only such a run has, in the order of its work; the bed last. */
export function requestsIn(scenario: Scenario): readonly RequestKey[] {
  const there = REQUEST_KEYS.filter(({ needs }) => needs === undefined || THERE[needs](scenario));
  return there.sort((a, b) => ORDER.indexOf(a.needs) - ORDER.indexOf(b.needs));
}

export const canBeAsked = (request: RequestId, scenario: Scenario): boolean => requestsIn(scenario).some((one) => one.request === request);
