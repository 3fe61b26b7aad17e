import { fingertips } from '../fingertips.ts';
import type { Arm } from '../arm.ts';
import type { Side } from '../../base/side.ts';
import type { Scene } from '../scene.ts';
import { HAND_ALONG_M } from './gownFacts.ts';

/** Point on the arm at that distance from the fingertips along hand, forearm and upper arm (m), as this plane shows them. */
export function alongArm(scene: Scene, side: Side, arm: Arm, metres: number): readonly [number, number] {
  const { forearmM, upperArmM } = scene.scenario.operator;
  const [tipX, tipY] = fingertips(scene, side);
  const between = (ax: number, ay: number, bx: number, by: number, share: number): readonly [number, number] => [ax + (bx - ax) * share, ay + (by - ay) * share];
  if (metres < HAND_ALONG_M) return between(tipX, tipY, arm.wristX, arm.wristY, metres / HAND_ALONG_M);
  const fore = metres - HAND_ALONG_M;
  if (fore < forearmM) return between(arm.wristX, arm.wristY, arm.elbowX, arm.elbowY, fore / forearmM);
  return between(arm.elbowX, arm.elbowY, arm.shoulderX, arm.shoulderY, Math.min(1, (fore - forearmM) / upperArmM));
}
