import { layoutOf } from '../../../core/room/layout.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { QUIET_INK } from '../palette.ts';
import { polyline, type Point } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';

/**
 * Stretches of the level that hands must stay above which need a line, in metres: those beside the bed. Over the bed the sheet itself
 * is the level.
 */
export function levelStretches({ scenario, levelX, levelY }: RoomPicture): Point[][] {
  const { crest } = layoutOf(scenario);
  const points = Array.from(levelX, (x, i): Point => [x, levelY[i]!]);
  return [points.filter(([x]) => x <= crest.right.x), points.filter(([x]) => x >= crest.left.x)].filter((stretch) => stretch.length > 1);
}

/** The pen's frame is in metres. */
export function paintLevel(pen: Pen, picture: RoomPicture): void {
  for (const stretch of levelStretches(picture)) pen.path(polyline(stretch), { line: QUIET_INK, weight: 1.5, dash: [7, 5], butt: true, alpha: 0.85 });
}
