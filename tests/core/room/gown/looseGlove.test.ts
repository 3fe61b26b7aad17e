import { expect, it } from 'vitest';
import { gloveStrain, IN_LOOSE_GLOVE, isLoose } from '../../../../src/core/room/gown/gownFacts.ts';
import { findGrasp } from '../../../../src/core/room/grip.ts';
import type { Scenario } from '../../../../src/core/scenario/schema.ts';
import { CRAMPED, LARGE_GLOVES, ROOMY, TALL } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { Operator } from '../../../support/operator.ts';
import { freshRun } from '../../../support/runOperator.ts';

const STEP_M = 0.001;

/** Height over the left glove from which the gloved right hand, coming down, can take it (m). */
function takesFrom(room: Scenario): number {
  const { op, gown } = new GownWork(new Operator(freshRun(room))).gowned().glove('right');
  expect(gown.dress.arms.right.glove).toBe('on');
  const { room: built } = op.run;
  const { x, y } = op.thing('gloveLeft');
  op.turn('right', -35).fingersTo('right', x - 0.1, y + 0.2);
  let up = 0.07;
  for (; up > 0 && findGrasp(built.scene, 'right', built.gone, null, gown) === null; up -= STEP_M) op.fingersTo('right', x - 0.1, y + up, 0.1).wait(0.2);
  return up;
}

it('A glove that is too large leaves less of the reach of its fingers; one half a size off does not', () => {
  const reach = ROOMY.operator.gripReachM;
  // Twice a step of the way down, and what a hand still moves after it.
  expect(Math.abs(takesFrom(ROOMY) - takesFrom(LARGE_GLOVES) - reach * (1 - IN_LOOSE_GLOVE.reach))).toBeLessThan(3 * STEP_M);
  expect([7.5, 8, 8.5].map((size) => isLoose(gloveStrain(size, 0.19)))).toEqual([false, false, true]);
  for (const { gown } of [ROOMY, CRAMPED, TALL]) for (const size of [gown.gloveSizes.left, gown.gloveSizes.right]) expect(isLoose(gloveStrain(size, gown.palmGirthM))).toBe(false);
});
