import { describe, expect, it } from 'vitest';
import { SIDES, type Side } from '../../../src/core/base/side.ts';
import { World } from '../../../src/core/physics/index.ts';
import { HAND, handShapes } from '../../../src/core/room/handShape.ts';
import { layoutOf } from '../../../src/core/room/layout.ts';
import { coreDistance, posed } from '../../support/physics/distances.ts';
import { bisect, capsule } from '../../support/physics/geometry.ts';
import { shippedScenario } from '../../support/runOperator.ts';

const { bottom, topCentre, radius } = layoutOf(shippedScenario('quiet-room')).rails.right;
const RAIL = capsule([0, bottom], [0, topCentre], radius);
const PRESS_N = 20;
const DT = 1 / 120;
/** Rates in rad/s of the critically damped pull and turn of a hand, and its moment of inertia, near those of the room's hands. */
const RATE = 30;
const INERTIA = 0.0013;
const REST_STEPS = 24;

interface Slide {
  readonly side: Side;
  /** Angle of the hand's first axis (rad). */
  readonly angle: number;
  readonly way: 1 | -1;
  readonly speed: number;
  /** How far before the rail the middle of the palm begins (m). */
  readonly before: number;
}

/** Depth (m) of a hand at a pose in the rail: of each capsule the sum of the radii less the distance of the axes. */
const depthAt = (side: Side, x: number, y: number, c: number, s: number): number =>
  Math.max(...handShapes(side).map((part) => part.radius + radius - coreDistance(posed(part.verts, x, y, c, s), RAIL.verts)));

/** Presses a hand on the top of the rail, then drags it off sideways, the force capped in each direction. Returns the deepest overlap after any step (m). */
function deepestOf({ side, angle, way, speed, before }: Slide): number {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const startX = -way * before;
  const startY = bisect(topCentre, topCentre + 0.4, 50, (y) => depthAt(side, startX, y, c, s) < 0) + 0.001;
  const world = new World();
  world.addBody({ kind: 'static', x: 0, y: 0, shapes: [RAIL], friction: 0.5 });
  const hand = world.addBody({ kind: 'dynamic', x: startX, y: startY, c, s, massKg: HAND.massKg, gravityScale: 0, friction: 0.6, shapes: handShapes(side) });
  world.finalize();
  const pull = HAND.massKg * RATE;
  let deepest = -1;
  let goalX = startX;
  for (let k = 0; k < 240 && Math.abs(world.bodyX[hand]!) < 0.4 && world.bodyY[hand]! > topCentre - 0.4; k++) {
    const wanted = k < REST_STEPS ? 0 : way * speed;
    goalX += wanted * DT;
    const fx = pull * (RATE * (goalX - world.bodyX[hand]!) + 2 * (wanted - world.bodyVx[hand]!));
    const off = world.bodyC[hand]! * s - world.bodyS[hand]! * c;
    world.setBodyForce(hand, Math.max(-PRESS_N, Math.min(PRESS_N, fx)), -PRESS_N, INERTIA * RATE * (RATE * off - 2 * world.bodyOmega[hand]!));
    world.step();
    deepest = Math.max(deepest, depthAt(side, world.bodyX[hand]!, world.bodyY[hand]!, world.bodyC[hand]!, world.bodyS[hand]!));
  }
  return deepest;
}

describe('a hand that is pressed on the end of a rail with 20 N and dragged off', () => {
  const angles = [-90, -70, -50, -35, -20, -10, -3, 0, 3, 10, 20, 35, 50, 70, 90];
  const cases = SIDES.flatMap((side) => ([1, -1] as const).flatMap((way) => [0.3, 0.6, 1].map((speed) => [side, way, speed] as const)));

  // Outside check: depth by the distance of segments, after every step.
  it.each(cases)('(%s hand, direction %i, %f m/s) never goes in by 0.1 mm, at any angle of the wrist', (side, way, speed) => {
    for (const degrees of angles) {
      for (const turned of [0, 180]) {
        for (const before of [0, 0.04]) {
          const deepest = deepestOf({ side, way, speed, before, angle: ((degrees + turned) * Math.PI) / 180 });
          expect(deepest, `${degrees + turned}° from ${before} m`).toBeGreaterThan(0); // it did touch
          expect(deepest, `${degrees + turned}° from ${before} m`).toBeLessThan(1e-4);
        }
      }
    }
  });
});
