import type { StrandPicture } from '../../../core/room/picture.ts';
import type { Frame } from '../frame.ts';
import { GOWN_LINE } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { polygon, smooth, type Point } from '../pen/curves.ts';
import { paintMark, paintPattern } from '../pen/hatch.ts';
import { joinPaths } from '../pen/pathData.ts';
import { CLOTH_SHADE, INSIDE } from './colours.ts';

/** Nodes from the shoulder on within which the inside shows at the neck. */
const INSIDE_NODES = 5;
/** A sleeve that hangs beside the body of the gown, in centimetres. */
const SLEEVE_CM = 46;

const pointsOf = (strand: StrandPicture): Point[] => Array.from(strand.x, (x, i): Point => [x * 100, strand.y[i]! * 100]);

/** The open gown between its two sides, with neck, ties and hem. Nothing while it is folded or tied. */
export function paintHangingGown({ picture, pen, markOf }: Frame): void {
  const [right, left] = (['gown.right', 'gown.left'] as const).map((id) => picture.strands.find((strand) => strand.id === id));
  if (!right || !left || !picture.gown) return;
  const cm = pen.in(scaling(0.01));
  const [r, l] = [pointsOf(right), pointsOf(left)];
  const inArms = picture.gown.arms.left.inM > 0 || picture.gown.arms.right.inM > 0;
  if (!inArms) for (const [top, next, sign] of [[r[0]!, r[8]!, -1], [l[0]!, l[8]!, 1]] as const) paintLimpSleeve(cm, top, next, sign);
  const body = joinPaths([polygon([...r, ...[...l].reverse()])]);
  cm.path(body, { fill: CLOTH_SHADE });
  cm.path(smooth(r), { line: GOWN_LINE });
  cm.path(smooth(l), { line: GOWN_LINE });
  cm.path(polygon([r.at(-1)!, l.at(-1)!]), { line: GOWN_LINE, weight: 'd' });
  paintHem(cm, r, l);
  paintNeck(cm, r, l);
  for (const strand of [right, left]) {
    const points = pointsOf(strand);
    strand.surfaces.forEach((surface, k) => {
      const mark = markOf(surface);
      if (mark === 'sterile' || k < INSIDE_NODES) return;
      const other = strand === right ? l : r;
      const inner = (i: number): Point => [points[i]![0] + (other[i]![0] - points[i]![0]) * 0.3, points[i]![1] + (other[i]![1] - points[i]![1]) * 0.3];
      paintPattern(cm, polygon([points[k]!, points[k + 1]!, inner(k + 1), inner(k)]), mark);
    });
  }
}

function paintHem(cm: Frame['pen'], r: readonly Point[], l: readonly Point[]): void {
  const across = (k: number): Point[] => [r[k]!, l[k]!];
  cm.path(smooth(across(r.length - 2)), { line: GOWN_LINE, weight: 'h', alpha: 0.7 });
  // Folds run down the cloth.
  for (const share of [0.2, 0.42, 0.63, 0.82]) {
    const fold = r.filter((_, k) => k > 8 && k % 5 === 0).map((point, n): Point => {
      const k = 10 + n * 5;
      const other = l[Math.min(k, l.length - 1)]!;
      return [point[0] + (other[0] - point[0]) * share, point[1] + (other[1] - point[1]) * share];
    });
    cm.path(smooth(fold), { line: GOWN_LINE, weight: 'h', alpha: 0.45 });
  }
}

/** Neckline with the inside behind it, and the ties. */
function paintNeck(cm: Frame['pen'], r: readonly Point[], l: readonly Point[]): void {
  const [a, b] = [r[0]!, l[0]!];
  const [c, d] = [r[INSIDE_NODES]!, l[INSIDE_NODES]!];
  const middle: Point = [(c[0] + d[0]) / 2, Math.min(c[1], d[1]) + 5];
  cm.path(polygon([a, b, d, middle, c]), { fill: INSIDE });
  cm.path(smooth([a, [a[0] * 0.55 + middle[0] * 0.45, (a[1] + middle[1]) / 2 - 2], middle, [b[0] * 0.55 + middle[0] * 0.45, (b[1] + middle[1]) / 2 - 2], b]), { line: GOWN_LINE });
  const [w, v] = [r[14]!, l[14]!];
  cm.path(`M${w[0]} ${w[1]}L${v[0]} ${v[1]}`, { line: '#B1C8D5', weight: 4 });
  cm.path(`M${w[0]} ${w[1] + 0.8}L${v[0]} ${v[1] + 0.8}M${w[0]} ${w[1] - 0.8}L${v[0]} ${v[1] - 0.8}`, { line: GOWN_LINE, weight: 'h' });
}

function paintLimpSleeve(cm: Frame['pen'], [x, y]: Point, [nx, ny]: Point, sign: number): void {
  const sleeve = polygon([[x + sign, y - 4], [x + sign * 9, y - 12], [nx + sign * 8, ny - SLEEVE_CM + 18], [nx + sign * 2, ny - SLEEVE_CM + 18], [nx - sign * 2, ny]]);
  cm.path(sleeve, { fill: CLOTH_SHADE, line: GOWN_LINE });
  cm.path(polygon([[nx + sign * 7.6, ny - SLEEVE_CM + 18], [nx + sign * 6.6, ny - SLEEVE_CM + 12], [nx + sign * 2.6, ny - SLEEVE_CM + 12], [nx + sign * 2.2, ny - SLEEVE_CM + 18]]), { fill: '#E9EFF2', line: GOWN_LINE, weight: 'd' });
  paintMark(cm, sleeve, 'sterile');
}
