import { expect } from 'vitest';
import type { ExpectedBreak } from '../../support/expectBreaks.ts';
import { alone, type BreakRun } from '../../support/breakRun.ts';
import { ABOVE_WAIST, POLE_ASIDE, SHORT_OPERATOR } from '../../support/rooms.ts';

/** A glove that is lost as a whole, without a touch. */
const lost = (rule: string, glove: string): ExpectedBreak => ({
  rule, surface: `${glove}:fingers`, against: null, spread: ['fingers', 'palm', 'back', 'cuff'].map((part) => `0 ${glove}:${part}`), severity: 'minor',
});

/** A hand, an arm or a thing where it may not be. */
export const PLACE_RUNS: readonly BreakRun[] = [
  {
    what: 'a hand below the waist beside the bed', room: POLE_ASIDE,
    play: (op) => op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.45).palmTo('left', 0.8, 1.45).turn('left', -85).palmTo('left', 0.8, 1.12).palmTo('left', 0.8, 1.03, 0.1).palmTo('left', 0.8, 1.4),
    breaks: [lost('hand-below-field', 'glove.left#1')],
  },
  {
    what: 'a hand over the field and below the waist, where the policy asks for the waist', room: ABOVE_WAIST,
    play: (op) => op.approach('right', 0, -1, () => op.near.overLevel('right'), -0.004).palmTo('right', -0.27, 1.27),
    breaks: [lost('hand-below-field', 'glove.right#1')],
  },
  {
    what: 'a hand out of sight over the head',
    play: (op) => op.palmTo('right', -0.45, 1.5).palmTo('right', -0.45, 1.83).palmTo('right', -0.3, 1.4),
    breaks: [lost('hand-out-of-sight', 'glove.right#1')],
  },
  {
    what: 'an upper arm low over the field is a risk without a loss, and over when it is withdrawn', room: SHORT_OPERATOR,
    play: (op) => op.palmTo('left', 0.08, 1.3).approach('left', -1, 0, () => op.near.upperArmOver('left') - 0.08, -0.001).palmTo('left', 0.25, 1.27),
    breaks: [{ rule: 'reach-over', surface: 'gown#1:left.outerSleeve', against: null, spread: [], severity: 'minor' }],
    after: ({ run }) => expect(run.breaks[0]!.remediedStep).not.toBeNull(),
  },
  {
    what: 'a packet that slips below the waist is snatched from the air', room: POLE_ASIDE,
    play: (op) => {
      op.palmTo('right', -0.25, 1.45).turn('left', -40).take('left', 'gel').palmTo('left', 0.2, 1.45).palmTo('left', 0.8, 1.45).turn('left', -85).palmTo('left', 0.8, 1.065, 0.2);
      op.send({ type: 'hand.release', hand: 'left' }).wait(0.04).grip('left').palmTo('left', 0.8, 1.4);
    },
    breaks: [alone('fallen-item-taken-back', 'glove.left#1:fingers', 'gel#1:body', { spread: ['0 gel#1:body', '0 glove.left#1:fingers'] })],
    after: ({ op }) => expect(op.holds('left')).toBe('gel'),
  },
];
