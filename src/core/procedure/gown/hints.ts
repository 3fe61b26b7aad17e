import { otherSide as other, SIDES, type Side } from '../../base/side.ts';
import type { GownTaskId } from '../observation.ts';
import { cuffToCover, glovesOn, isCuffShort, isInCuff, isNearClothes, type Seen } from './seen.ts';

/** One line for the operator on what to do now, as a calm colleague would say it; the knit cuff is `knitM` long. */
export function gownHint(current: GownTaskId | 'finished', seen: Seen, knitM: number): string {
  if (seen.gown === 'dropped' && current !== 'finished') return 'The gown has fallen. Stop and take a new one.';
  if (isNearClothes(seen)) return 'The gown hangs close to your own clothes: hands down, to shoulder height.';
  return coverCuff(seen, knitM) ?? HINTS[current](seen, knitM);
}

/** What to do about a glove that was taken off in the middle of the work, or about a cuff of a new one that is still turned back. */
export const glovingHint = (seen: Seen, knitM: number): string => coverCuff(seen, knitM) ?? gloving(seen, knitM);

/** A knit cuff that shows is covered as soon as the other hand is gloved. */
function coverCuff(seen: Seen, knitM: number): string | null {
  const side = cuffToCover(seen, knitM);
  return side && `Draw the cuff of the ${side} glove over the whole knit cuff: grip its edge with the ${other(side)} hand.`;
}

const HINTS: Readonly<Record<GownTaskId | 'finished', (seen: Seen, knitM: number) => string>> = {
  opened: (seen) => {
    if (seen.gown === 'lying') return 'Take the folded gown by its neck, in the middle, and lift it straight up.';
    if (seen.gown === 'carried') return 'Step clear of the table, hands at shoulder height, and let it fall open: squeeze.';
    return 'Take the other shoulder with the free hand, and keep the hem off the floor.';
  },
  armsIn: (seen) => {
    const first = SIDES.find((side) => seen.toCuffM[side] === null);
    if (first) return seen.gown === 'onArms' ? `The ${first} hand into its sleeve as well: squeeze.` : 'A hand on either shoulder, then both into the sleeves: squeeze.';
    const open = SIDES.filter((side) => !isInCuff(seen, side));
    return open.length > 0 ? `Stretch ${open.length > 1 ? 'both arms' : `the ${open[0]!} arm`} through the sleeve, and stop inside the cuff. Grip holds the cuff.` : 'Stop. Fingers stay inside the cuffs.';
  },
  tied: (seen) => (seen.isHelped ? 'Hold both cuffs and keep still: the assistant ties the back.' : 'Ask the assistant to tie the back.'),
  firstGlove: gloving,
  secondGlove: gloving,
  turned: (seen) => {
    if (seen.card === 'hanging') return 'Take the tie card by the half on your right, and hold it out to the assistant.';
    if (seen.card === 'held') return seen.isHelped ? 'Hold the card out: the assistant takes it.' : 'Ask the assistant to take the card.';
    return seen.card === 'passed' ? 'Hold your tie while you turn.' : 'Have the back tied first.';
  },
  waited: (seen) => (seen.handsTogether ? 'Wait like this. If something itches, ask.' : 'Wait with both hands together in front, above the waist.'),
  finished: () => 'All done. You can end the run.',
};

/** The next hold of gloving: the hand that is furthest along first. */
function gloving(seen: Seen, knitM: number): string {
  const side = sideToGlove(seen);
  const by = other(side);
  const past = seen.toCuffM[side];
  if (past !== null && past < 0 && seen.gloves[side] !== 'over') return openGloving(seen, side);
  switch (seen.gloves[side]) {
    case 'lying':
      return glovesOn(seen) > 0 ? `Now the ${side} glove: take it with the ${by} hand.` : `Through the sleeve: take the ${side} glove with the ${by} hand, by its cuff.`;
    case 'taken':
      return `Lay it on the ${side} palm, its fingers toward the elbow: grip it with the ${side} hand.`;
    case 'laid':
      return `With the ${by} hand grip the edge of its cuff and draw it over the whole knit cuff.`;
    default:
      if (isCuffShort(seen, side, knitM)) return `Draw its cuff on with the ${by} hand, over the whole knit cuff.`;
      return `Stretch the ${side} arm: the hand goes into the glove.`;
  }
}

/** The next hold for a hand of which fingers are out of the cuff. */
function openGloving(seen: Seen, side: Side): string {
  const by = other(side);
  if (!seen.isOut[side]) return `A finger of the ${side} hand is out of its cuff. Stop: new gown, or stretch the hand out for open gloving.`;
  switch (seen.gloves[side]) {
    case 'away':
      return `The assistant opens a new ${side} glove on the gown table.`;
    case 'taken':
      return `Let the ${side} glove hang from its cuff, and slip the bare ${side} hand in from above, fingers first.`;
    case 'entered':
      return `Push the ${side} hand on into the glove, as far as it goes.`;
    default:
      return seen.gloves[by] === 'on' ? `Take the new ${side} glove with the gloved ${by} hand, under its turned-back cuff.` : `Take the ${side} glove with the ${by} hand by its turned-back cuff, which is its inside.`;
  }
}

/** The glove that is being put on, or the next one: a bare hand's before one that is safe in its sleeve. */
export function sideToGlove({ gloves, toCuffM }: Seen): Side {
  const rank = { on: -1, away: 0, lying: 0, taken: 1, laid: 2, entered: 2, over: 3 } as const;
  const rankOf = (side: Side): number => rank[gloves[side]] + (gloves[side] === 'lying' && (toCuffM[side] ?? 0) < 0 ? 0.5 : 0);
  return rankOf('left') > rankOf('right') ? 'left' : 'right';
}
