import { otherSide, SIDES, type Side } from '../../base/side.ts';
import { asking, type NextAct } from '../nextAct.ts';
import type { HoldAct, GownPlace, NextHold } from '../nextHold.ts';
import type { GownTaskId } from '../observation.ts';
import { sideToGlove } from './hints.ts';
import { cuffToCover, isCuffShort, isInCuff, isOpened, type Seen } from './seen.ts';

/**
 * What comes next, as `gownHint` tells it: holds, and what the assistant is asked for; nothing while there is only to be waited, or the gown is lost.
 * @param knitM length of the knit cuff, which the glove must cover (m)
 */
export function gownActs(current: GownTaskId | 'finished', seen: Seen, knitM: number): readonly NextAct[] {
  if (seen.gown === 'dropped' || current === 'finished') return [];
  return cuffToCover(seen, knitM) ? glovingHolds(seen, knitM) : ACTS[current](seen, knitM);
}

/** The holds by which a glove comes on again in the middle of the work, as `glovingHint` tells them. */
export function glovingHolds(seen: Seen, knitM: number): readonly NextHold[] {
  const of = cuffToCover(seen, knitM);
  return of ? [{ hand: otherSide(of), act: 'draw', place: 'gloveEdge', of, thing: null }] : gloving(seen, knitM);
}

const either = (act: HoldAct, place: GownPlace): NextHold[] => [{ hand: null, act, place, of: null, thing: null }];
const own = (sides: readonly Side[], act: HoldAct, place: GownPlace): NextHold[] => sides.map((side) => ({ hand: side, act, place, of: side, thing: null }));

const ACTS: Readonly<Record<GownTaskId, (seen: Seen, knitM: number) => readonly NextAct[]>> = {
  opened: (seen) => {
    if (seen.gown === 'lying') return either('grip', 'gownNeck');
    if (seen.gown === 'carried') return either('squeeze', 'clearOfTable');
    return isOpened(seen) ? [] : shoulders(seen);
  },
  armsIn: (seen) => {
    const out = SIDES.filter((side) => seen.toCuffM[side] === null);
    if (out.length > 0) return out.some((side) => !seen.holding[side]) ? shoulders(seen) : own(out, 'squeeze', 'sleeve');
    return own(SIDES.filter((side) => !isInCuff(seen, side)), 'push', 'upSleeve');
  },
  tied: (seen) => [...own(SIDES, 'grip', 'cuffFromInside'), ...(seen.isHelped ? [] : [asking('tieBack')])],
  firstGlove: gloving,
  secondGlove: gloving,
  turned: (seen) => {
    if (seen.card === 'hanging') return either('grip', 'cardHalf');
    return seen.card === 'held' ? [...either('stay', 'heldOut'), ...(seen.isHelped ? [] : [asking('takeCard')])] : [];
  },
  waited: () => own(SIDES, 'stay', 'together'),
};

/** Hands that are still to take their shoulder of the open gown. */
const shoulders = (seen: Seen): NextHold[] => own(SIDES.filter((side) => seen.toCuffM[side] === null && !seen.holding[side]), 'grip', 'gownShoulder');

function gloving(seen: Seen, knitM: number): readonly NextHold[] {
  const of = sideToGlove(seen);
  const past = seen.toCuffM[of];
  const by = otherSide(of);
  const hold = (hand: Side, act: HoldAct, place: GownPlace): NextHold => ({ hand, act, place, of, thing: null });
  const isBare = past !== null && past < 0 && seen.gloves[of] !== 'over';
  // Until a new glove lies there, or a finger is out of its cuff and not the whole hand: nothing goes on.
  if (seen.gloves[of] === 'away' || (isBare && !seen.isOut[of])) return [];
  if (isBare && seen.gloves[of] !== 'lying') return [hold(of, 'push', 'gloveMouth')];
  switch (seen.gloves[of]) {
    case 'lying':
      return [hold(by, 'grip', 'gloveCuff')];
    case 'taken':
      return [hold(by, 'bring', 'fingertips'), hold(of, 'grip', 'fingertips')];
    case 'laid':
      return [hold(by, 'draw', 'gloveEdge')];
    default:
      return [isCuffShort(seen, of, knitM) ? hold(by, 'draw', 'gloveEdge') : hold(of, 'push', 'intoGlove')];
  }
}
