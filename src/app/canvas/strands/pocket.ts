import type { RoomPicture, StrandPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import { BREAK, FILM_LINE, HATCH } from '../palette.ts';
import { polygon, ribbon, thrifty, type Point } from '../pen/curves.ts';
import { paintPattern } from '../pen/hatch.ts';
import { joinPaths } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import type { Shade } from '../pen/shade.ts';
import { paintCollar } from './pocketFolds.ts';
import { paintPocketGel } from './pocketGel.ts';
import { pocketShape, type PocketShape } from './pocketShape.ts';
import { runsOf } from './runs.ts';

const FAR_SHADE: Shade = { stops: [[0, '#C4DDE5'], [0.5, '#DCEBF0'], [1, '#BCD7E0']], axis: 'across' };
const NEAR_SHADE: Shade = { stops: [[0, '#EAF6F9C8'], [0.3, '#E3F1F538'], [0.7, '#E3F1F530'], [1, '#C8E2E9B8']], axis: 'across' };
/** How far towards the middle the pattern of a wall goes, as part of the way to the other wall. */
const MARK_IN = 0.14;

/** Everything besides nodes and marks that the looks of the pocket depend on. */
export const pocketKey = ({ foldedM, gelInSheathMl }: RoomPicture): string => `${foldedM.toFixed(3)} ${gelInSheathMl.toFixed(1)}`;

/** The far wall with the open mouth; gel and probe lie before it. The pen's frame is in centimetres. */
export function paintPocketFar(cm: Pen, strand: StrandPicture, picture: RoomPicture): void {
  const shape = pocketShape(strand);
  const { line, across } = shape;
  const [one, other] = [line[0]!, line.at(-1)!];
  const rim = across(one, other, -1);
  cm.path(polygon([...line, ...[...rim].reverse()]), { fill: FAR_SHADE, fillAlpha: 0.62 });
  cm.path(polygon([...rim, ...across(other, one)]), { fill: '#A9CBD6', fillAlpha: 0.5 });
  cm.path(thrifty(rim), { line: FILM_LINE });
  cm.path(thrifty(rim.map(([x, y]): Point => [x + shape.down[0] * 0.5, y + shape.down[1] * 0.5]).slice(1, -1)), { line: FILM_LINE, weight: 'h', alpha: 0.7 });
  paintPocketGel(cm, line, picture.gelInSheathMl);
}

/** The near film with its folds, its creases and its marks. The pen's frame is in centimetres. */
export function paintPocketNear(cm: Pen, strand: StrandPicture, picture: RoomPicture, markOf: MarkOf): void {
  const shape = pocketShape(strand);
  const { line, across } = shape;
  const rim = across(line.at(-1)!, line[0]!);
  cm.path(polygon([...line, ...rim.slice(1, -1)]), { fill: NEAR_SHADE });
  paintCreases(cm, shape);
  cm.path(thrifty(line), { line: FILM_LINE });
  paintCollar(cm, shape, picture.foldedM);
  cm.path(thrifty(rim), { line: FILM_LINE });
  for (const { mark, from, to } of runsOf(strand.surfaces, markOf)) {
    if (mark === 'sterile') continue;
    paintWallPattern(cm, shape, from, to, mark);
    const stretch = thrifty(line.slice(from, to + 1));
    if (mark === 'became') cm.path(stretch, { line: BREAK, weight: cm.weights.k * 1.8 });
    else cm.path(stretch, { line: HATCH, weight: cm.weights.film * 0.55, dash: [1, 4], butt: true, alpha: 0.8 });
  }
}

/** Soft lines down the film, and a bright one where the light falls. */
function paintCreases(cm: Pen, { line, end }: PocketShape): void {
  const between = (share: number, from: number, to: number): Point[] =>
    Array.from({ length: 6 }, (_, k): Point => {
      const i = Math.round(end * (from + ((to - from) * k) / 5));
      const [a, b] = [line[i]!, line.at(-1 - i)!];
      return [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
    });
  if (end < 8) return;
  cm.path(joinPaths([thrifty(between(0.12, 0.3, 0.86)), thrifty(between(0.83, 0.2, 0.62)), thrifty(between(0.68, 0.62, 0.93))]), { line: FILM_LINE, weight: 'h', alpha: 0.7 });
  cm.path(thrifty(between(0.2, 0.22, 0.55)), { line: '#FFFFFF', weight: 'k', alpha: 0.85 });
  cm.path(thrifty(between(0.9, 0.4, 0.7)), { line: '#FFFFFF', weight: 'd', alpha: 0.7 });
}

function paintWallPattern(cm: Pen, { line }: PocketShape, from: number, to: number, mark: 'unsterile' | 'became' | 'prepared'): void {
  const last = line.length - 1;
  const indices = Array.from({ length: to - from + 1 }, (_, k) => from + k);
  const edge = indices.map((i) => line[i]!);
  const inner = indices.map((i): Point => {
    const [[x, y], [ox, oy]] = [line[i]!, line[last - i]!];
    return [x + (ox - x) * MARK_IN, y + (oy - y) * MARK_IN];
  });
  paintPattern(cm, ribbon(edge, inner), mark, line[0]!, 0.9);
}
