import { describe, expect, it } from 'vitest';
import { ROOMY } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { runOperator } from '../../../support/runOperator.ts';

describe('A new gown', () => {
  it('lies on its table with new gloves, and begins the work anew', () => {
    const { run, result } = runOperator((op) => {
      const work = new GownWork(op);
      work.lift().fallOpen();
      op.release('right').palmsTo([['right', work.x - 0.2, work.workM], ['left', work.x + 0.2, work.workM]]);
      op.send({ type: 'remedy.start', remedy: 'changeGownAndGloves' }).wait(62);
      expect(work.gown.state).toBe('lying');
      work.gowned();
    }, ROOMY);
    expect(result.breaks.map(({ rule, remediedStep }) => [rule, remediedStep !== null])).toEqual([['sleeve-on-floor', true]]);
    expect(run.ledger.stateOf('gown#2:left.knitCuff')).toBe('sterile');
    expect(run.room.gown!.state).toBe('tied');
  });

  it('a glove for a hand that has none lies on the table again', () => {
    const { run, result } = runOperator((op) => {
      const work = new GownWork(op);
      work.gowned().fetchGlove('right');
      op.release('left').wait(1).palmsTo([['right', work.x - 0.15, work.workM], ['left', work.x + 0.15, work.workM]]);
      op.send({ type: 'remedy.start', remedy: 'changeGlove', thing: 'right' }).wait(22);
      work.glove('right');
    }, ROOMY);
    expect(result.breaks.map(({ rule, remediedStep }) => [rule, remediedStep !== null])).toEqual([['glove-on-floor', true]]);
    expect(run.room.gown!.dress.arms.right.glove).toBe('on');
    expect(run.ledger.stateOf('glove.right#2:fingers')).toBe('sterile');
  });
});
