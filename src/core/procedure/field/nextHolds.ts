import type { Scenario } from '../../scenario/schema.ts';
import { taking, withThing, type NextHold } from '../nextHold.ts';
import type { FieldTaskId } from '../observation.ts';
import { lostFor } from './hints.ts';
import type { Seen } from './seen.ts';

/** The holds that come next, as the hint tells them; none while something is to be kept still, or what is needed is lost. */
export function fieldHolds(current: FieldTaskId | 'finished', seen: Seen, scenario: Scenario): readonly NextHold[] {
  return current === 'finished' || lostFor(current, seen) !== undefined ? [] : HOLDS[current](seen, scenario);
}

const HOLDS: Readonly<Record<FieldTaskId, (seen: Seen, scenario: Scenario) => readonly NextHold[]>> = {
  gel: () => [taking('gelPacket'), withThing('gelPacket', 'squeeze', 'site')],
  view: ({ probeAtSite }) => (probeAtSite ? [] : [taking('probe'), withThing('probe', 'bring', 'site')]),
  park: ({ probeHeldBy, probeLies }) => (probeHeldBy !== null || probeLies ? [] : [taking('probe')]),
  anaesthetic: () => [taking('syringe'), withThing('syringe', 'squeeze', 'site')],
  ready: ({ probeAtSite, needleAtSite }) => [
    ...(probeAtSite ? [] : [taking('probe'), withThing('probe', 'bring', 'site')]),
    ...(needleAtSite ? [] : [taking('needleSyringe'), withThing('needleSyringe', 'bring', 'site')]),
  ],
  rubbish: ({ rubbishLeft, rubbishOutOfReach }, { items }) => {
    const kind = items.find(({ id }) => id === rubbishLeft[0])?.kind;
    return rubbishOutOfReach || !kind ? [] : [taking(kind), withThing(kind, 'bring', 'bin')];
  },
};
