import { SIDES } from '../../../core/base/side.ts';
import type { RoomPicture, StrandPicture, SurfaceMark } from '../../../core/room/picture.ts';
import type { Frame } from '../frame.ts';
import { GOWN_LINE } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { polygon, ribbon, smooth, type Point } from '../pen/curves.ts';
import { paintMark, paintPattern } from '../pen/hatch.ts';
import { paintBareArm } from './arm.ts';
import { CLOTH_SHADE, INSIDE } from './colours.ts';
import { paintLimpSleeve } from './limpSleeve.ts';

/** Nodes from the shoulder on within which the inside shows at the neck. */
const INSIDE_NODES = 5;
/** Depth and width of the band round the neck, in centimetres. */
const NECK_DEEP_CM = 8;
const NECK_BAND_CM = 2;

const pointsOf = (strand: StrandPicture): Point[] => Array.from(strand.x, (x, i): Point => [x * 100, strand.y[i]! * 100]);

/** The gown hangs open in the room, from hands or arms. */
export const hangsOpen = ({ strands, gown }: RoomPicture): boolean => gown !== null && strands.some(({ id }) => id === 'gown.right');

/** The open gown between its two sides, with neck, ties and hem. Nothing while it is folded or tied. */
export function paintHangingGown({ picture, pen, markOf }: Frame): void {
  if (!hangsOpen(picture)) return;
  const [right, left] = (['gown.right', 'gown.left'] as const).map((id) => picture.strands.find((strand) => strand.id === id)!) as [StrandPicture, StrandPicture];
  const cm = pen.in(scaling(0.01));
  const [r, l] = [pointsOf(right), pointsOf(left)];
  const sleeved = SIDES.filter((side) => picture.gown!.arms[side].inM > 0);
  // An arm goes through from behind: its front lies over the upper arm, its sleeve over the rest.
  for (const side of sleeved) paintBareArm(pen, picture.hands[side], side, markOf);
  for (const side of SIDES) if (!sleeved.includes(side)) paintLimpSleeve(cm, picture, side, markOf);
  const [a, b] = [r[0]!, l[0]!];
  const neck = scoop(a, b, neckDepth(a, b));
  const body = polygon([...r, ...[...l].reverse(), ...neck.slice(1, -1).reverse()]);
  cm.path(body, { fill: CLOTH_SHADE });
  cm.path(smooth(r), { line: GOWN_LINE });
  cm.path(smooth(l), { line: GOWN_LINE });
  cm.path(polygon([r.at(-1)!, l.at(-1)!]), { line: GOWN_LINE, weight: 'd' });
  paintHem(cm, r, l);
  paintNeck(cm, r, l, markOf(right.surfaces[0]));
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

/** How deep the neckline hangs between two shoulders, in centimetres. */
const neckDepth = (a: Point, b: Point): number => Math.min(NECK_DEEP_CM, Math.hypot(b[0] - a[0], b[1] - a[1]) * 0.45);

/** A line that hangs so deep between two points. */
const scoop = (a: Point, b: Point, deep: number): Point[] =>
  [0, 0.1, 0.25, 0.4, 0.5, 0.6, 0.75, 0.9, 1].map((t): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t - deep * 4 * t * (1 - t)]);

/** The neck band along the scooped neckline, between the two shoulders, the tie round the waist, and the strings of the neck. */
function paintNeck(cm: Frame['pen'], r: readonly Point[], l: readonly Point[], mark: SurfaceMark): void {
  const [a, b] = [r[0]!, l[0]!];
  const deep = neckDepth(a, b);
  const band = ribbon(scoop(a, b, deep), scoop(a, b, deep + NECK_BAND_CM));
  cm.path(band, { fill: INSIDE, line: GOWN_LINE, weight: 'd' });
  paintMark(cm, band, mark);
  for (const [[x, y], out] of [[a, -1], [b, 1]] as const) cm.path(`M${x} ${y}C${x + out * 1.5} ${y - 5} ${x + out * 4} ${y - 7} ${x + out * 3} ${y - 14}`, { line: GOWN_LINE, weight: 'd' });
  const [w, v] = [r[14]!, l[14]!];
  cm.path(`M${w[0]} ${w[1]}L${v[0]} ${v[1]}`, { line: '#B1C8D5', weight: 4 });
  cm.path(`M${w[0]} ${w[1] + 0.8}L${v[0]} ${v[1] + 0.8}M${w[0]} ${w[1] - 0.8}L${v[0]} ${v[1] - 0.8}`, { line: GOWN_LINE, weight: 'h' });
}
