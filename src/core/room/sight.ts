import { SIDES, type Side } from '../base/side.ts';
import { fingertips } from './fingertips.ts';
import { HAND } from './handShape.ts';
import type { Scene } from './scene.ts';

/** A hand this far over the middle of the face is over the head (m). */
const OVER_FACE_M = 0.16;
/** Thickness of the table top (m). */
const TABLE_TOP_M = 0.03;

/**
 * Whether the operator cannot see the hand: over the head, under the table top or the mattress, in the bin, or with a sheet over all
 * of it from wrist to fingertips. Behind the back is out of this plane. `more` widens each of these places, in metres.
 */
export function isHidden(scene: Scene, side: Side, more = 0): boolean {
  const { world, layout, scenario } = scene;
  const body = scene.hands[side];
  const x = world.bodyX[body]!;
  const y = world.bodyY[body]!;
  if (y > scenario.operator.faceM + OVER_FACE_M - more) return true;
  const under = (left: number, right: number, top: number): boolean => x > left - more && x < right + more && y < top + more;
  const { kitTable, mattress, bin } = layout;
  if (under(kitTable.left, kitTable.right, kitTable.top - TABLE_TOP_M) || under(-mattress.halfWidth, mattress.halfWidth, mattress.bottom) || under(bin.left, bin.right, bin.rim)) return true;
  const wristX = x + world.bodyC[body]! * HAND.wristU;
  const wristY = y + world.bodyS[body]! * HAND.wristU;
  const [tipX, tipY] = fingertips(scene, side);
  const covered = (atX: number, atY: number): boolean => highestFold(scene, atX) > atY - more;
  return covered(x, y) && covered(tipX, tipY) && covered(wristX, wristY);
}

/** Height of the highest fold of either sheet at x, or minus infinity where none reaches, in metres. */
function highestFold({ world, drapes }: Scene, x: number): number {
  let highest = -Infinity;
  for (const side of SIDES) {
    const start = world.strandStart(drapes[side]);
    for (let i = start, last = start + world.strandSize(drapes[side]) - 1; i < last; i++) {
      const ax = world.x[i]!;
      const bx = world.x[i + 1]!;
      if ((ax - x) * (bx - x) > 0 || ax === bx) continue;
      const y = world.y[i]! + ((world.y[i + 1]! - world.y[i]!) * (x - ax)) / (bx - ax);
      if (y > highest) highest = y;
    }
  }
  return highest;
}
