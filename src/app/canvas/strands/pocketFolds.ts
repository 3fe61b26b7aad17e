import type { HandPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { FILM_LINE } from '../palette.ts';
import { polygon, thrifty, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { joinPaths, parsePath, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';
import { alongLine, lengthOf } from './along.ts';
import type { PocketShape } from './pocketShape.ts';

/** Height of one fold and of the collar that a metre of folded film makes (cm), the collar at most so much of a wall. */
const FOLD_CM = 0.55;
const COLLAR_CM_PER_M = 4.5;
const MOST_OF_WALL = 0.4;
/** How far folds stand out beyond the wall (cm). */
const BULGE_CM = 0.5;

/** How far the folded film reaches down from the mouth (cm). */
export function collarHeight({ walls }: PocketShape, foldedM: number): number {
  const most = MOST_OF_WALL * Math.min(...walls.map(lengthOf));
  return Math.min(most, Math.round((COLLAR_CM_PER_M * foldedM) / FOLD_CM) * FOLD_CM);
}

/** Film that has not been paid out yet, in folds round the mouth. The pen's frame is in centimetres. */
export function paintCollar(cm: Pen, shape: PocketShape, foldedM: number): void {
  const height = collarHeight(shape, foldedM);
  if (height <= 0) return;
  const folds = Math.max(1, Math.round(height / FOLD_CM));
  const [one, other] = shape.walls;
  const outer = (wall: readonly Point[], far: number, middle: Point, out: number): Point => {
    const { at } = alongLine(wall, far);
    const [dx, dy] = [at[0] - middle[0], at[1] - middle[1]];
    const length = Math.hypot(dx, dy) || 1;
    return [at[0] + (dx / length) * out, at[1] + (dy / length) * out];
  };
  const rows = Array.from({ length: 2 * folds + 1 }, (_, k) => {
    const far = (k * height) / (2 * folds);
    const [a, b] = [alongLine(one, far).at, alongLine(other, far).at];
    const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const out = k % 2 === 1 ? BULGE_CM : 0.06;
    return [outer(one, far, middle, out), outer(other, far, middle, out)] as const;
  });
  const [top, bottom] = [rows[0]!, rows.at(-1)!];
  const edge = [...rows.map(([a]) => a), ...shape.across(...bottom).slice(1, -1), ...rows.map(([, b]) => b).reverse(), ...shape.across(...top).reverse().slice(1, -1)];
  cm.path(polygon(edge), { fill: down('#EAF5F8', '#C3DEE6'), fillAlpha: 0.8, line: FILM_LINE });
  const creases = rows.flatMap(([a, b], k): PathData[] => (k % 2 === 0 && k > 0 ? [thrifty(shape.across(a, b))] : []));
  cm.path(joinPaths(creases), { line: FILM_LINE, weight: 'd', alpha: 0.75 });
  const lights = rows.flatMap(([a, b], k): PathData[] => (k % 2 === 1 ? [thrifty(shape.across(a, b).slice(1, 5))] : []));
  cm.path(joinPaths(lights), { line: '#FFFFFF', weight: 'd', alpha: 0.7 });
}

/** The fold at one edge of the mouth, in centimetres from that edge: x outwards over the fingers, y down the wall. Its inner side goes over into the film. */
const FLAP = parsePath('M-1 -.9C.2 -1.9 2 -2.1 3.4 -1.7C4.3 -1.3 4.8 .1 4.5 1.5C4.3 2.5 3.4 2.9 2.2 2.8C1.2 2.8 0 3 -1 3.5Z');
const FLAP_EDGE = parsePath('M-1 -.9C.2 -1.9 2 -2.1 3.4 -1.7C4.3 -1.3 4.8 .1 4.5 1.5C4.3 2.5 3.4 2.9 2.2 2.8C1.2 2.8 0 3 -1 3.5');
const HEM = parsePath('M3 -1.7C3.9 -1.1 4.2 .2 3.9 1.5C3.7 2.3 3.1 2.6 2.2 2.4');
const CREASES = parsePath('M-.6 -.5C.8 -.9 2.2 -.8 3.3 -.4M-.6 -.2C.8 .1 2 .6 2.9 1.2M-.6 .2C.2 1 .9 1.6 1.4 2.3');

/**
 * The turned-back fold of the mouth over the fingers of a hand that are under it; drawn after the hand. The pen's frame is in
 * centimetres; `mark` is that of the film at this edge.
 */
export function paintFoldOverFingers(cm: Pen, { line, down: [downX, downY] }: PocketShape, hand: Fingers, mark: SurfaceMark): void {
  const [x, y] = edgeAt(line, hand) === 0 ? line[0]! : line.at(-1)!;
  const [ux, uy] = [-hand.c, -hand.s];
  const way = -uy * downX + ux * downY < 0 ? -1 : 1;
  const flap = cm.in([ux, uy, -way * uy, way * ux, x, y]);
  flap.path(FLAP, { fill: '#DCEDF3', fillAlpha: 0.66 });
  paintMark(flap, FLAP, mark, [0, 0], 0.8);
  flap.path(FLAP_EDGE, { line: FILM_LINE });
  flap.path(HEM, { line: FILM_LINE, weight: 'd', alpha: 0.8 });
  flap.path(CREASES, { line: FILM_LINE, weight: 'h', alpha: 0.75 });
  flap.path('M.2 -1.4C1.2 -1.7 2 -1.7 2.8 -1.4', { line: '#FFFFFF', weight: 'd', alpha: 0.9 });
}

type Fingers = Pick<HandPicture, 'x' | 'y' | 'c' | 's' | 'gripAlong'>;

/** Which edge of the mouth a hand is at: 0 the first, 1 the last node of the strand, in centimetres. */
export function edgeAt(line: readonly Point[], hand: Fingers): 0 | 1 {
  const tip: Point = [(hand.x + hand.c * hand.gripAlong) * 100, (hand.y + hand.s * hand.gripAlong) * 100];
  const far = ([x, y]: Point): number => Math.hypot(x - tip[0], y - tip[1]);
  return far(line[0]!) <= far(line.at(-1)!) ? 0 : 1;
}
