import { expect, it } from 'vitest';
import { ROOMY } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { runOperator } from '../../../support/runOperator.ts';

it('who comes to the bed in gown and gloves stands in its middle, as one who begins there, and until then stays where the gloves went on', () => {
  const { op, run } = runOperator((by) => void new GownWork(by).all(), ROOMY);
  expect(run.room.torsoX).toBeCloseTo(ROOMY.gown.standXM, 2);
  op.release('right').palmsTo([['right', -0.1, 1.38], ['left', 0.1, 1.38]]).wait(1);
  expect(run.room.torsoX).toBe(0);
  // To the kit table and back: no farther than the arm needs.
  op.palmTo('right', -0.9, 1.38);
  expect(run.room.torsoX).toBeLessThan(-0.2);
  op.palmTo('right', -0.1, 1.38).wait(1);
  expect(run.room.torsoX).toBe(0);
  expect(run.breaks).toEqual([]);
});
