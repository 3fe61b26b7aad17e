import type { RequestId } from '../../core/commands/command.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { loadsSheath } from '../../core/scenario/station.ts';
import { REQUEST_KEYS, type RequestKey } from '../input/keyMap.ts';

const THERE: Readonly<Record<NonNullable<RequestKey['needs']>, (scenario: Scenario) => boolean>> = {
  sheath: loadsSheath,
  packets: ({ items }) => items.some(({ spare }) => spare),
  bed: ({ room }) => room.bed.adjustable,
};

/** Requests of the station come first, since they are there to be asked for; the bed is moved seldom. */
const placeOf = ({ needs }: RequestKey): number => (needs === undefined ? 1 : needs === 'bed' ? 2 : 0);

/** What the assistant can be asked for in a run of the scenario, what matters most first. */
export const requestsIn = (scenario: Scenario): readonly RequestKey[] =>
  REQUEST_KEYS.filter(({ needs }) => needs === undefined || THERE[needs](scenario)).sort((a, b) => placeOf(a) - placeOf(b));

export const canBeAsked = (request: RequestId, scenario: Scenario): boolean => requestsIn(scenario).some((one) => one.request === request);
