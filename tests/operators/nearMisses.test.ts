import { describe, expect, it } from 'vitest';
import type { Side } from '../../src/core/base/side.ts';
import type { Operator, Watched } from '../support/operator.ts';
import { ABOVE_WAIST, EDGE_GAUZE, HIGH_OUTLET, POLE_ASIDE, SHORT_OPERATOR } from '../support/rooms.ts';
import { runOperator, type OperatorRun, type ShippedRoom } from '../support/runOperator.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';

/** How near a near miss is (m): nearer than a person dares, and clear all the same. */
const NEAR = { low: 0.005, high: 0.01, aim: 0.0075 };

/** Plays a script that says what it keeps clear of, and holds that it came near, broke nothing and touched nothing of it. */
function passes(script: (op: Operator) => Watched, room?: ShippedRoom | Scenario): OperatorRun {
  let watched: Watched | null = null;
  const done = runOperator((op) => (watched = script(op)), room);
  expect(done.result.breaks).toEqual([]);
  expect(watched!.least).toBeGreaterThanOrEqual(NEAR.low);
  expect(watched!.least).toBeLessThanOrEqual(NEAR.high);
  return done;
}

/** Brings the hand of `side` close to `what` in the direction (dx, dy) and back to where it came from. */
function brush(op: Operator, side: Side, dx: number, dy: number, what: string, part = `glove.${side}`): Watched {
  const from = op.hand(side);
  op.wait(0.1);
  const watched = op.watch(part, what);
  op.approach(side, dx, dy, () => op.near.gap(part, what), NEAR.aim).wait(0.3).palmTo(side, from.x, from.y);
  return watched;
}

describe('Near, and nothing broken', () => {
  it('a glove over the drape that hangs over the rail', () => {
    passes((op) => brush(op.palmTo('right', -0.4, 1.45).palmTo('right', -0.49, 1.45), 'right', 0, -1, 'margin.right'));
  });

  it('the needle over the margin', () => {
    passes((op) => brush(op.palmTo('right', -0.3, 1.45).palmTo('right', -0.75, 1.45).turn('right', -30).take('right', 'needle').palmTo('right', -0.75, 1.45).palmTo('right', -0.6, 1.45), 'right', 0, -1, 'margin.right', 'needle:needle'));
  });

  it('fingertips beside the pole', () => {
    passes((op) => brush(op.palmTo('left', 0.25, 1.45).palmTo('right', 0.3, 1.5), 'right', 1, 0, 'pole'));
  });

  it('a glove over the machine', () => {
    passes((op) => brush(op.palmTo('left', 0.25, 1.45).palmTo('right', 0.3, 1.5).palmTo('right', 1.05, 1.6), 'right', 0, -1, 'machine'), POLE_ASIDE);
  });

  it('fingertips before the mask', () => {
    passes((op) => brush(op.palmTo('right', -0.25, 1.5), 'right', 0.6, 0.8, 'face'));
  });

  it('a hand just above the waist beside the bed', () => {
    passes((op) => {
      op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.45).palmTo('left', 0.8, 1.45).turn('left', -85).palmTo('left', 0.8, 1.2);
      const watched = op.watchLeast(() => op.near.overLevel('left'));
      op.approach('left', 0, -1, () => op.near.overLevel('left'), NEAR.aim).wait(0.3).palmTo('left', 0.8, 1.4);
      return watched;
    }, POLE_ASIDE);
  });

  it('fingers beside the edge of the kit table', () => {
    passes((op) => brush(op.palmTo('right', -0.4, 1.45).palmTo('right', -0.745, 1.4).turn('right', -70).palmTo('right', -0.745, 1.1), 'right', 0, -1, 'tableEdge'));
  });

  it('a glove over a bare rail', () => {
    passes((op) => brush(op.palmTo('left', 0.4, 1.55).turn('left', -80).palmTo('left', 0.54, 1.6), 'left', 0, -1, 'rail.left'), 'high-rails-short-sheath');
  });

  it('a sleeve over a bare rail', () => {
    passes((op) => brush(op.palmTo('left', 0.4, 1.5), 'left', 0, -1, 'rail.left', 'sleeve.left'), 'high-rails-short-sheath');
  });

  it('an upper arm just as high over the field as is allowed', () => {
    passes((op) => {
      const clear = (): number => op.near.upperArmOver('left') - 0.08;
      op.palmTo('left', 0.08, 1.3);
      const watched = op.watchLeast(clear);
      op.approach('left', -1, 0, clear, NEAR.aim).wait(0.3).palmTo('left', 0.25, 1.27);
      return watched;
    }, SHORT_OPERATOR);
  });

  it('a hand just above the waist over the field, where the policy asks for the waist', () => {
    passes((op) => {
      const watched = op.watchLeast(() => op.near.overLevel('right'));
      op.approach('right', 0, -1, () => op.near.overLevel('right'), NEAR.aim).wait(0.3).palmTo('right', -0.27, 1.27);
      return watched;
    }, ABOVE_WAIST);
  });

  it('a palm beside the kit table and under the waist, its fingers on a thing near the edge', () => {
    const { op, result } = runOperator((by) => {
      by.palmTo('right', -0.4, 1.45).palmTo('right', -1, 1.38).turn('right', -30).take('right', 'gauze');
      const { x, y } = by.hand('right');
      expect([x < by.run.room.scene.layout.kitTable.left, y < by.run.scenario.operator.waistM]).toEqual([true, true]);
      by.palmTo('right', -1, 1.38);
    }, EDGE_GAUZE);
    expect(op.holds('right')).toBe('gauze');
    expect(result.breaks).toEqual([]);
  });

  it('but a palm farther out at that height is too low', () => {
    const { result } = runOperator((op) => op.palmTo('right', -0.4, 1.45).palmTo('right', -1, 1.45).palmTo('right', -1.41, 1.38).palmTo('right', -1.41, 1).palmTo('right', -1.41, 1.38), EDGE_GAUZE);
    expect(result.breaks.map(({ rule, surface }) => [rule, surface])).toEqual([['hand-below-field', 'glove.right#1:fingers']]);
  });

  it('a hand raised as high as it can still be seen', () => {
    passes((op) => {
      const under = (): number => op.run.scenario.operator.faceM + 0.16 - op.hand('right').y;
      op.palmTo('right', -0.45, 1.5);
      const watched = op.watchLeast(under);
      op.approach('right', 0, 1, under, NEAR.aim).wait(0.3).palmTo('right', -0.3, 1.4);
      return watched;
    });
  });

  it('a glove over bare cord', () => {
    passes((op) => brush(op.palmTo('right', -0.25, 1.45).palmTo('left', 0.4, 1.5).palmTo('left', 0.97, 1.55).turn('left', -80), 'left', 0, -1, 'bareCord'), HIGH_OUTLET);
  });

  it('cord that hangs over the edge, drawn almost back over the field and let out again', () => {
    passes((op) => {
      op.palmTo('right', -0.25, 1.4).turn('left', -50).take('left', 'probe').palmTo('left', 0.1, 1.25);
      const watched = op.watchLeast(() => op.near.cordOverEdge());
      op.palmTo('left', -0.22, 1.25).creep('left', -1, 0, () => op.near.cordOverEdge(), NEAR.high - 0.0005).palmTo('left', 0.1, 1.25);
      return watched;
    });
  });
});
