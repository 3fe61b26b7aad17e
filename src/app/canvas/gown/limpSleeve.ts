import type { Side } from '../../../core/base/side.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import { GOWN_LINE } from '../palette.ts';
import { limb, polyline, type Point, type WidePoint } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { joinPaths, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { CLOTH_SHADE, KNIT, KNIT_LINE } from './colours.ts';

/** Half widths of an empty sleeve at its armhole and at the seam of its cuff, and of the cuff at its end, in centimetres. */
const ARMHOLE_CM = 8;
const SEAM_CM = 4.6;
const END_CM = 3.2;
/** Sleeve from the armhole on over which it narrows, in centimetres. */
const NARROWS_CM = 50;

/** The empty part of a sleeve, with its knit cuff, where the solver has it. Nothing where there is none. The pen's frame is in centimetres. */
export function paintLimpSleeve(cm: Pen, { strands, scenario }: RoomPicture, side: Side, markOf: MarkOf): void {
  const strand = strands.find(({ id }) => id === `sleeve.${side}`);
  if (!strand) return;
  const points = Array.from(strand.x, (x, i): Point => [x * 100, strand.y[i]! * 100]);
  const fromEnd = points.map((_, k) => points.slice(k).reduce((sum, [x, y], n, rest) => (n === 0 ? 0 : sum + Math.hypot(x - rest[n - 1]![0], y - rest[n - 1]![1])), 0));
  const knitCm = scenario.gown.knitM * 100;
  const seam = Math.min(points.length - 2, Math.max(1, fromEnd.findIndex((cmLeft) => cmLeft < knitCm)));
  const half = (k: number): number => SEAM_CM + (ARMHOLE_CM - SEAM_CM) * Math.min(1, (fromEnd[k]! - knitCm) / NARROWS_CM);
  const cloth = limb(points.slice(0, seam + 1).map(([x, y], k): WidePoint => [x, y, Math.max(SEAM_CM, half(k))]), 3, true);
  cm.path(cloth, { fill: CLOTH_SHADE, line: GOWN_LINE });
  cm.path(polyline(points.slice(0, seam).map(([x, y], k): Point => [x + (k % 2 === 0 ? 1.2 : 1.8), y])), { line: GOWN_LINE, weight: 'h', alpha: 0.5 });
  strand.surfaces.slice(0, seam).forEach((surface, k) => {
    const mark = markOf(surface);
    if (mark !== 'sterile') paintMark(cm, limb([[...points[k]!, half(k)], [...points[k + 1]!, half(k + 1)]], 3, true), mark);
  });
  const cuff = limb(points.slice(seam).map(([x, y], k, all): WidePoint => [x, y, SEAM_CM - 0.6 - ((SEAM_CM - 0.6 - END_CM) * k) / Math.max(1, all.length - 1)]), 1, true);
  cm.path(cuff, { fill: KNIT, line: KNIT_LINE });
  cm.path(ribs(points[seam]!, points.at(-1)!), { line: KNIT_LINE, weight: 'h', alpha: 0.8 });
  paintMark(cm, cuff, markOf(strand.surfaces.at(-1)));
}

/** Ribs of the knit from the seam to the end of the cuff. */
function ribs([ax, ay]: Point, [bx, by]: Point): PathData {
  const long = Math.hypot(bx - ax, by - ay) || 1;
  const [nx, ny] = [(ay - by) / long, (bx - ax) / long];
  return joinPaths([-0.6, -0.2, 0.2, 0.6].map((share) => polyline([[ax + nx * share * SEAM_CM, ay + ny * share * SEAM_CM], [bx + nx * share * END_CM, by + ny * share * END_CM]])));
}
