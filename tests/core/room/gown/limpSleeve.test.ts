import { expect, it } from 'vitest';
import { SIDES } from '../../../../src/core/base/side.ts';
import { fingertips } from '../../../../src/core/room/fingertips.ts';
import { SLEEVE_LINKS } from '../../../../src/core/room/gown/gownFacts.ts';
import { ROOMY } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { Operator } from '../../../support/operator.ts';
import { freshRun } from '../../../support/runOperator.ts';

/** Upper and lower end of the empty sleeve (m), and its length along the cloth. */
function sleeve({ op }: GownWork, side: 'left' | 'right') {
  const { world, gown } = op.run.room.scene;
  const top = world.strandStart(gown!.sleeves[side]);
  let along = 0;
  for (let k = 0; k < SLEEVE_LINKS; k++) along += Math.hypot(world.x[top + k + 1]! - world.x[top + k]!, world.y[top + k + 1]! - world.y[top + k]!);
  return { topX: world.x[top]!, topY: world.y[top]!, endY: world.y[top + SLEEVE_LINKS]!, along };
}

it('an empty sleeve hangs down by its whole length, and one with an arm in it by what is left beyond the fingertips', () => {
  const work = new GownWork(new Operator(freshRun(ROOMY)));
  work.lift().fallOpen().takeShoulder().op.wait(2);
  // At rest a cloth without stiffness hangs plumb (statics).
  for (const side of SIDES) {
    const { topY, endY } = sleeve(work, side);
    expect(Math.abs((topY - endY) / ROOMY.gown.sleeveM - 1)).toBeLessThan(0.01);
  }
  work.slipIn().stretch(0.3, false).op.wait(2);
  for (const side of SIDES) {
    const left = ROOMY.gown.sleeveM - work.gown.dress.arms[side].inM;
    expect(left).toBeGreaterThan(0.15);
    const { topX, topY, along } = sleeve(work, side);
    const [x, y] = fingertips(work.op.run.room.scene, side);
    expect(Math.hypot(topX - x, topY - y)).toBeLessThan(0.01);
    expect(Math.abs(along / left - 1)).toBeLessThan(0.01);
  }
});

it('a sleeve that the arm fills does not hang any more', () => {
  const work = new GownWork(new Operator(freshRun(ROOMY)));
  work.lift().fallOpen().takeShoulder().slipIn().stretch();
  for (const side of SIDES) expect(work.gown.held.sleeves.isHanging(side)).toBe(false);
});
