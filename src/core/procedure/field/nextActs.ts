import type { Scenario } from '../../scenario/schema.ts';
import { asking, type NextAct } from '../nextAct.ts';
import { taking, withThing } from '../nextHold.ts';
import type { FieldTaskId } from '../observation.ts';
import { isCordLoose, lostFor } from './hints.ts';
import type { Seen } from './seen.ts';

/** What comes next, as the hint tells it: holds, and what the assistant is asked for; nothing while something is to be kept still, or what is needed is lost. */
export function fieldActs(current: FieldTaskId | 'finished', seen: Seen, scenario: Scenario): readonly NextAct[] {
  return current === 'finished' || lostFor(current, seen) !== undefined ? [] : ACTS[current](seen, scenario);
}

const ACTS: Readonly<Record<FieldTaskId, (seen: Seen, scenario: Scenario) => readonly NextAct[]>> = {
  gel: () => [taking('gelPacket'), withThing('gelPacket', 'squeeze', 'site')],
  view: ({ probeAtSite }) => (probeAtSite ? [] : [taking('probe'), withThing('probe', 'bring', 'site')]),
  park: ({ probeHeldBy, probeLies }, scenario) => {
    if (probeHeldBy !== null) return isCordLoose(scenario) ? [asking('takeCord')] : [];
    return probeLies ? [] : [taking('probe')];
  },
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
