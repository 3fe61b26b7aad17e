import type { Scenario } from '../../scenario/schema.ts';
import { taking, withThing, type HoldAct, type NextHold } from '../nextHold.ts';
import type { SheathTaskId } from '../observation.ts';
import { TAIL_SHARE } from './hints.ts';
import { FACE_CLEAR, GATHERED_ENOUGH } from './limits.ts';
import { isOn, type Seen } from './seen.ts';

/** The holds that come next, as the hint tells them; none while only the assistant has something to do, or what is needed is lost. */
export function sheathHolds(current: SheathTaskId | 'finished', seen: Seen, scenario: Scenario): readonly NextHold[] {
  return current === 'finished' || seen.torn || seen.lost !== undefined ? [] : HOLDS[current](seen, scenario);
}

const at = (act: HoldAct, place: NextHold['place']): NextHold[] => [{ hand: null, act, place, of: null, thing: null }];

const HOLDS: Readonly<Record<SheathTaskId, (seen: Seen, scenario: Scenario) => readonly NextHold[]>> = {
  gelInside: (seen) => (seen.probe.inside ? [] : opening(seen) ?? [taking('gelPacket'), withThing('gelPacket', 'squeeze', 'mouth')]),
  probeTaken: (seen) => (isOn(seen) ? [] : putting(seen)),
  covered: (seen, { tasks }) => {
    if (!isOn(seen)) return putting(seen);
    return seen.coveredM >= TAIL_SHARE * tasks.coveredM ? [] : at('draw', 'openEnd');
  },
  airOut: (seen) => {
    if (!isOn(seen)) return putting(seen);
    return seen.faceSpoiled <= FACE_CLEAR ? [] : at('draw', 'probeFace');
  },
  banded: (seen) => {
    if (!isOn(seen)) return putting(seen);
    return [taking('band'), withThing('band', 'squeeze', seen.bands.head ? 'alongHandle' : 'behindHead')];
  },
  laidDown: (seen) => (isOn(seen) ? [] : putting(seen)),
};

/** Holds until the mouth of the sheath is open, or null once it is. */
function opening(seen: Seen): readonly NextHold[] | null {
  if (seen.sheath === 'lying') return [taking('sheathRoll')];
  if (seen.sheath !== 'held') return null;
  return seen.gathered < GATHERED_ENOUGH ? [withThing('sheathRoll', 'squeeze', 'inHand')] : at('grip', 'mouthEdge');
}

/** Holds until the sheath is on the probe and the probe in the operator's hand. */
function putting(seen: Seen): readonly NextHold[] {
  if (seen.probe.inside) return seen.probe.heldThrough === null ? at('grip', 'probeInside') : [];
  return opening(seen) ?? [];
}
