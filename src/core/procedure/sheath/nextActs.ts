import type { Scenario } from '../../scenario/schema.ts';
import { asking, type NextAct } from '../nextAct.ts';
import { taking, withThing, type HoldAct, type NextHold } from '../nextHold.ts';
import type { SheathTaskId } from '../observation.ts';
import { lostFor, TAIL_SHARE } from './hints.ts';
import { FACE_CLEAR, GATHERED_ENOUGH } from './limits.ts';
import { isGelComing, isOn, isTaken, type Seen } from './seen.ts';

/** What comes next, as the hint tells it: holds, and what the assistant is asked for; nothing while there is only to be waited, or what is needed is lost. */
export function sheathActs(current: SheathTaskId | 'finished', seen: Seen, scenario: Scenario): readonly NextAct[] {
  return current === 'finished' || seen.torn || lostFor(current, seen) !== undefined ? [] : ACTS[current](seen, scenario);
}

const at = (act: HoldAct, place: NextHold['place']): NextHold[] => [{ hand: null, act, place, of: null, thing: null }];

const ACTS: Readonly<Record<SheathTaskId, (seen: Seen, scenario: Scenario) => readonly NextAct[]>> = {
  gelInside: (seen, scenario) => {
    if (seen.probe.inside || isGelComing(seen, scenario)) return [];
    if (seen.packed?.includes('gelPacket')) return inPacket(seen);
    return opening(seen) ?? [taking('gelPacket'), withThing('gelPacket', 'squeeze', 'mouth')];
  },
  probeTaken: (seen) => (isTaken(seen) && isOn(seen) ? [] : putting(seen)),
  covered: (seen, { tasks }) => {
    if (!isOn(seen)) return putting(seen);
    return seen.coveredM >= TAIL_SHARE * tasks.coveredM ? [asking('pullTail')] : at('draw', 'openEnd');
  },
  airOut: (seen) => {
    if (!isOn(seen)) return putting(seen);
    return seen.faceSpoiled <= FACE_CLEAR ? [] : at('draw', 'probeFace');
  },
  banded: (seen) => {
    if (!isOn(seen)) return putting(seen);
    if (seen.packed?.includes('band')) return inPacket(seen);
    return [taking('band'), withThing('band', 'squeeze', seen.bands.head ? 'alongHandle' : 'behindHead')];
  },
  laidDown: (seen) => (isOn(seen) ? [] : putting(seen)),
};

/** What is needed is still in its packet. */
const inPacket = ({ cordHeld }: Seen): readonly NextAct[] => [asking(cordHeld ? 'letGo' : 'openPacket')];

/** Holds until the mouth of the sheath is open, or null once it is. */
function opening(seen: Seen): readonly NextHold[] | null {
  if (seen.sheath === 'lying') return [taking('sheathRoll')];
  if (seen.sheath !== 'held') return null;
  return seen.gathered < GATHERED_ENOUGH ? [withThing('sheathRoll', 'squeeze', 'inHand')] : at('grip', 'mouthEdge');
}

/** What is still to be done until the sheath is on the probe and the probe in the operator's hand alone. */
function putting(seen: Seen): readonly NextAct[] {
  const { probe } = seen;
  if (probe.stopped === 'lowering' && probe.heldThrough === null) return [asking('lower')];
  if (probe.inside && probe.heldThrough === null) return at('grip', 'probeInside');
  if (probe.inside) return probe.withAssistant ? [asking('letGo')] : [];
  const closed = opening(seen);
  if (closed !== null) return closed;
  if (probe.stopped === 'bringing') return [asking('bringProbe')];
  if (probe.overMouth) return [asking('lower')];
  return probe.withAssistant ? [] : [asking('bringProbe')];
}
