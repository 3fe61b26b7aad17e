import { describe, expect, it } from 'vitest';
import { STEP_SECONDS } from '../../../src/core/base/time.ts';
import { levelAt } from '../../../src/core/room/level.ts';
import { Operator } from '../../support/operator.ts';
import { freshRun, runOperator } from '../../support/runOperator.ts';

/** Natural frequency of the pull to the pointer, rad/s. */
const RATE = 30;

describe('A driven hand', () => {
  it('settles like a critically damped spring', () => {
    const run = freshRun();
    const { world, hands } = run.room.scene;
    const b = hands.right;
    run.step([{ type: 'hand.move', hand: 'right', xMm: -270, yMm: 1278 }]);
    run.step([]);
    const goal = run.room.hands.right.targetY;
    const x0 = world.bodyY[b]! - goal;
    const v0 = world.bodyVy[b]!;
    const size = Math.abs(x0) + Math.abs(v0) / RATE;
    let worst = 0;
    for (let k = 1; k <= 60; k++) {
      run.step([]);
      const t = k * STEP_SECONDS;
      const exact = (x0 + (v0 + RATE * x0) * t) * Math.exp(-RATE * t);
      worst = Math.max(worst, Math.abs(world.bodyY[b]! - goal - exact));
    }
    // The pull is constant within a step: an error of about RATE × step / 2 of the movement.
    expect(worst).toBeLessThan(size * RATE * STEP_SECONDS * 0.5);
    expect(Math.abs(world.bodyY[b]! - goal)).toBeLessThan(1e-6);
  });

  it('pressed on a bare rail it does not go in by more than 2 mm, nor pull harder than its force', () => {
    const { op, run } = runOperator((op) => {
      op.palmTo('left', 0.4, 1.55).palmTo('left', 0.52, 1.55);
      const gap = op.watch('glove.left', 'rail.left');
      op.palmTo('left', 0.52, 1.3).wait(0.5);
      expect(gap.least).toBeGreaterThan(-0.002);
      expect(gap.least).toBeLessThan(0.001);
    }, 'high-rails-short-sheath');
    expect(run.room.hands.left.driveN).toBeLessThanOrEqual(run.scenario.operator.handForceN);
    expect(run.room.hands.left.driveN).toBeGreaterThan(10);
    expect(op.hand('left').y).toBeGreaterThan(1.35);
  });
});

describe('A grip', () => {
  it('takes the nearest thing within 3 cm of the fingertips, and nothing beyond', () => {
    const run = freshRun();
    const op = new Operator(run);
    const { x, y } = op.thing('gel');
    op.turn('right', -60).fingersTo('right', x, y + 0.16).fingersTo('right', x, y + 0.045, 0.1).grip('right');
    expect(op.holds('right')).toBeNull();
    op.release('right').fingersTo('right', x, y + 0.03, 0.1).grip('right');
    expect(op.holds('right')).toBe('gel');
  });

  it('slips when a glued sheet is pulled along the skin harder than it bears', () => {
    const { op, run } = runOperator((op) => {
      op.turn('left', -50).palmTo('left', 0.2, 1.3).fingersTo('left', 0.1, 1.09, 0.1).grip('left');
      expect(op.holds('left')).toBe('drape.left');
      const spare = op.watchLeast(() => 10 - (op.run.room.hands.left.hold?.pullN ?? 0));
      op.palmTo('left', 0.35, 1.2, 0.1).wait(0.5);
      expect(spare.least).toBeLessThan(2);
      expect(spare.least).toBeGreaterThanOrEqual(0);
    });
    expect(run.scenario.operator.gripForceN).toBe(10);
    expect(op.holds('left')).toBeNull();
  });
});

describe('The level that hands stay above', () => {
  it('is the sheet over the bed, the top of the kit table over the table, and the waist beside them', () => {
    const run = freshRun();
    const { scene } = run.room;
    const { kitTable, crest } = scene.layout;
    expect(levelAt(scene, 0, (kitTable.left + kitTable.right) / 2)).toBe(kitTable.top);
    expect(levelAt(scene, 0, crest.right.x - 0.1)).toBe(run.scenario.operator.waistM);
    const start = scene.world.strandStart(scene.drapes.left);
    for (const k of [4, 10, 18]) {
      const [x, y] = [scene.world.x[start + k]!, scene.world.y[start + k]!];
      expect(Math.abs(levelAt(scene, 0, x) - y)).toBeLessThan(0.001);
    }
  });
});
