import type { RoomPicture } from '../../../core/room/picture.ts';
import { QUIET_INK } from '../palette.ts';
import { LINE, MOVE } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';

/** The line below which hands must not go; the pen's frame is in metres. */
export function paintLevel(pen: Pen, { levelX, levelY }: RoomPicture): void {
  if (levelX.length < 2) return;
  const xy = Array.from(levelX).flatMap((x, i) => [x, levelY[i]!]);
  pen.path({ ops: Array.from(levelX, (_, i) => (i === 0 ? MOVE : LINE)), xy }, { line: QUIET_INK, weight: 1.5, dash: [7, 5], butt: true, alpha: 0.85 });
}
