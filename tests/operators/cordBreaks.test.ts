import { describe, expect, it } from 'vitest';
import { expectBreaks } from '../support/expectBreaks.ts';
import type { Operator } from '../support/operator.ts';
import { BARE_END } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';

/** Takes the probe and draws its short cord in over the bare rail, until the palm is at (x, y). */
const drawIn = (op: Operator, x: number, y: number): Operator => op.palmTo('left', 0.35, 1.5).turn('right', -50).take('right', 'probe').palmTo('right', -0.16, 1.2).palmTo('right', x, y);

/** The left hand takes the probe over, draws it on, and the right comes down on the cord behind it. */
function touchBehind(op: Operator, what: string): void {
  drawIn(op, 0, 1.3);
  const probe = op.thing('probe');
  op.fingersTo('left', probe.x + 0.06, probe.y + 0.1).fingersTo('left', probe.x, probe.y + 0.02, 0.1).grip('left');
  expect(op.holds('left')).toBe('probe');
  op.palmTo('right', -0.2, 1.5).palmTo('left', 0.3, 1.22).turn('right', -85).palmTo('right', -0.43, 1.55).touch('right', 0, -1, () => op.near.gap('glove.right', what)).palmTo('right', -0.3, 1.5);
}

describe('The cord: one mistake is one break', () => {
  it('a stretch that hung below is drawn in and laid on the field', () => {
    const { result } = runOperator((op) => drawIn(op, 0.243, 1.2).palmTo('right', -0.18, 1.08, 0.6), 'high-rails-short-sheath');
    // The stretch that hung spoils the sheet, the sheet the next stretch that lies down on it, and so on toward the probe.
    const folds = [0, 1, 3, 5, 7].map((depth) => `${depth} sheath#1:{10..29}`);
    const spread = [...[0, 1, 2, 4, 6].map((depth) => `${depth} drape.right#1:{0..20}`), ...folds];
    expectBreaks(result, [{ rule: 'cord-hung-below-returned', surface: 'drape.right#1:{0..20}', against: 'sheath#1:{10..29}', spread, severity: 'major' }]);
  });

  it('bare cord behind a short sheath is drawn in and laid on the field', () => {
    const { result } = runOperator((op) => drawIn(op, 0.3, 1.2).palmTo('right', -0.1, 1.15, 0.9).wait(0.3), BARE_END);
    expectBreaks(result, [{ rule: 'cord-on-field', surface: 'drape.right#1:{2..20}', against: 'cord:{24..40}', spread: ['0 drape.right#1:{2..20}'], severity: 'major' }]);
  });

  it('glove on the tail of the sheath', () => {
    const { result } = runOperator((op) => touchBehind(op, 'sheathTail'), 'high-rails-short-sheath');
    expectBreaks(result, [{ rule: 'glove-on-sheath-tail', surface: 'glove.right#1:fingers', against: 'sheath#1:{30..37}', spread: ['0 glove.right#1:fingers'] }]);
  });
});
