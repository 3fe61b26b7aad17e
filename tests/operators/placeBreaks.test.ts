import { describe, expect, it } from 'vitest';
import { expectBreaks } from '../support/expectBreaks.ts';
import { POLE_ASIDE, SHORT_OPERATOR } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';

/** Every part of a glove, lost at once. */
const wholeGlove = (glove: string): string[] => ['fingers', 'palm', 'back', 'cuff'].map((part) => `0 ${glove}:${part}`);

describe('A hand where it may not be is one break', () => {
  it('below the waist beside the bed', () => {
    const { result } = runOperator((op) => {
      op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.45).palmTo('left', 0.8, 1.45).turn('left', -85).palmTo('left', 0.8, 1.12);
      op.palmTo('left', 0.8, 1.03, 0.1).palmTo('left', 0.8, 1.4);
    }, POLE_ASIDE);
    expectBreaks(result, [{ rule: 'hand-below-field', surface: 'glove.left#1:fingers', against: null, spread: wholeGlove('glove.left#1'), severity: 'minor' }]);
  });

  it('out of sight over the head', () => {
    const { result } = runOperator((op) => op.palmTo('right', -0.45, 1.5).palmTo('right', -0.45, 1.83).palmTo('right', -0.3, 1.4));
    expectBreaks(result, [{ rule: 'hand-out-of-sight', surface: 'glove.right#1:fingers', against: null, spread: wholeGlove('glove.right#1'), severity: 'minor' }]);
  });

  it('scratching an itching nose', () => {
    const { result } = runOperator((op) => op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).palmTo('right', -0.27, 1.3));
    expectBreaks(result, [{ rule: 'hand-on-face', surface: 'glove.right#1:fingers', against: 'face', spread: ['0 glove.right#1:fingers'], severity: 'major' }]);
  });

  it('an upper arm low over the field is a risk without a loss, and over when it is withdrawn', () => {
    const { run, result } = runOperator((op) => {
      op.palmTo('left', 0.15, 1.18).touch('left', -1, 0, () => (op.run.breaks.length > 0 ? 0 : 1));
      op.palmTo('left', 0.25, 1.2);
    }, SHORT_OPERATOR);
    expectBreaks(result, [{ rule: 'reach-over', surface: 'gown#1:left.outerSleeve', against: null, spread: [], severity: 'minor' }]);
    expect(run.breaks[0]!.remediedStep).not.toBeNull();
  });

  it('a packet that slips below the waist is snatched from the air', () => {
    const { op, result } = runOperator((op) => {
      op.palmTo('right', -0.25, 1.45).turn('left', -40).take('left', 'gel').palmTo('left', 0.2, 1.45).palmTo('left', 0.8, 1.45).turn('left', -85).palmTo('left', 0.8, 1.065, 0.2);
      op.send({ type: 'hand.release', hand: 'left' }).wait(0.04).grip('left').palmTo('left', 0.8, 1.4);
    }, POLE_ASIDE);
    expect(op.holds('left')).toBe('gel');
    expectBreaks(result, [{ rule: 'fallen-item-taken-back', surface: 'glove.left#1:fingers', against: 'gel#1:body', spread: ['0 gel#1:body', '0 glove.left#1:fingers'] }]);
  });
});
