import { length } from '../../base/portableMath.ts';
import { otherSide, SIDES, signOf, type Side } from '../../base/side.ts';
import { fingertips } from '../fingertips.ts';
import type { Scene } from '../scene.ts';

/** Hands are together when they are this near, clear of waist and face by as much as they are said to be (m); common practice. */
const TOGETHER_M = 0.3;
const OVER_WAIST_M = 0.03;
const UNDER_FACE_M = 0.2;
/** The armpit lies this far under the shoulder, and so near are fingers in it (m). */
const ARMPIT_BELOW_M = 0.12;
const IN_ARMPIT_M = 0.09;
/** A hand slower than this rests where it is (m/s); common practice. */
const RESTS_MPS = 0.1;

/** Both hands together in front, above the waist and below the face. */
export function handsTogether(scene: Scene): boolean {
  const { world, hands, scenario } = scene;
  const { waistM, faceM } = scenario.operator;
  const [ax, bx] = SIDES.map((side) => world.bodyX[hands[side]]!) as [number, number];
  const [ay, by] = SIDES.map((side) => world.bodyY[hands[side]]!) as [number, number];
  return length(ax - bx, ay - by) < TOGETHER_M && [ay, by].every((y) => y > waistM + OVER_WAIST_M && y < faceM - UNDER_FACE_M);
}

/** Fingers at rest under the other arm, as people cross their arms; hands pass there in front as well, so that they must close to be in it. */
export function inOwnArmpit(scene: Scene, side: Side, torsoX: number): boolean {
  const { shoulderM, shoulderHalfWidthM } = scene.scenario.operator;
  const { world, hands } = scene;
  if (length(world.bodyVx[hands[side]]!, world.bodyVy[hands[side]]!) > RESTS_MPS) return false;
  const [x, y] = fingertips(scene, side);
  return length(x - (torsoX + signOf(otherSide(side)) * shoulderHalfWidthM), y - (shoulderM - ARMPIT_BELOW_M)) < IN_ARMPIT_M;
}
