import type { SurfaceMark } from '../../../core/room/picture.ts';
import { GOWN_LINE } from '../palette.ts';
import { limb, polygon, smooth, type Point, type WidePoint } from '../pen/curves.ts';
import { paintPattern } from '../pen/hatch.ts';
import { joinPaths, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { FOREARM_SHADE, GOWN_SHADE } from '../pen/shades.ts';

/** One arm in centimetres of the operator's frame; `side` is the sign of x. */
export interface ArmLine {
  readonly side: -1 | 1;
  readonly shoulder: Point;
  readonly elbow: Point;
  readonly wrist: Point;
}

export type SleeveMarks = Readonly<Record<'lowerSleeve' | 'upperSleeve' | 'outerSleeve', SurfaceMark>>;

/** The sterile part of the sleeve ends this far above the elbow, in centimetres. */
const ABOVE_ELBOW_CM = 5;

/** Directions of the two halves of an arm, in radians, added to its line. */
interface Arm extends ArmLine {
  readonly upperAngle: number;
  readonly foreAngle: number;
}

const along = (from: Point, angle: number, forward: number, left: number): Point => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [from[0] + forward * c - left * s, from[1] + forward * s + left * c];
};

/** A sleeve from shoulder to wrist; grows out of the gown, with soft folds at the elbow. */
export function paintSleeve(pen: Pen, line: ArmLine, marks: SleeveMarks): void {
  const { shoulder, elbow, wrist } = line;
  const arm: Arm = {
    ...line,
    upperAngle: Math.atan2(elbow[1] - shoulder[1], elbow[0] - shoulder[0]),
    foreAngle: Math.atan2(wrist[1] - elbow[1], wrist[0] - elbow[0]),
  };
  const upper = limb([[...shoulder, 7.7], [(shoulder[0] + elbow[0]) / 2, (shoulder[1] + elbow[1]) / 2, 7.2], [...elbow, 6.2]], PIECES);
  const shoulderPieces = shoulderCloth(arm);
  pen.path(upper, { fill: GOWN_SHADE, line: GOWN_LINE });
  pen.path(joinPaths(shoulderPieces), { fill: GOWN_SHADE });
  pen.path(smooth(shoulderLine(arm)), { line: GOWN_LINE });
  if (marks.outerSleeve !== 'sterile') paintPattern(pen, joinPaths([outerPart(arm), ...shoulderPieces]), marks.outerSleeve);
  const fore = forearm(arm);
  pen.path(fore, { fill: GOWN_SHADE, line: GOWN_LINE });
  pen.path(elbowPatch(arm), { fill: GOWN_SHADE });
  pen.path(fore, { fill: FOREARM_SHADE });
  paintPattern(pen, elbowPart(arm), marks.upperSleeve);
  paintPattern(pen, lowerPart(arm), marks.lowerSleeve);
  paintFolds(pen, arm);
}

/** Samples per stretch of a centre line. */
const PIECES = 3;

function forearm({ elbow, wrist, foreAngle }: Arm): PathData {
  const reach = Math.hypot(wrist[0] - elbow[0], wrist[1] - elbow[1]);
  const back = (cm: number, r: number): WidePoint => [...along(wrist, foreAngle, -cm, 0), r];
  return limb([[...elbow, 6.2], back(reach * 0.55, 5.8), back(Math.min(7, reach * 0.4), 4.7), back(5, 4.1)], PIECES, true);
}

/** The upper line of the shoulder from the neck over the joint. */
function shoulderLine({ side, shoulder: [x, y], upperAngle }: Arm): Point[] {
  const outwards = along([0, 0], upperAngle, 0, side);
  const turn = Math.atan2(outwards[1], outwards[0]) - Math.PI / 2;
  const wrapped = Math.atan2(Math.sin(turn), Math.cos(turn));
  const round = [0.05, 0.35, 0.7, 1].map((k): Point => [x + 7.66 * Math.cos(Math.PI / 2 + wrapped * k), y + 7.66 * Math.sin(Math.PI / 2 + wrapped * k)]);
  return [[x - side * 9.9, y + 11.9], [x - side * 6.6, y + 10.5], [x - side * 3.4, y + 9.1], ...round];
}

/** Hides the inner half of the sleeve's end: it is one cloth with the body. All outlines turn the same way, so that they unite. */
function shoulderCloth(arm: Arm): PathData[] {
  const { side, shoulder: [x, y], upperAngle } = arm;
  const inner = x - side * 4.2;
  const cap: Point[] = [[x + side * 0.6, y + 6.6], [inner, y + 7.4], [inner - side * 3.4, y + 5.6], [inner - side * 5.6, y - 2], [inner - side * 3.8, y - 9],
    [x - side * 0.6, y - 7.3], [x + side * 1.4, y]];
  const slope: Point[] = [[x - side * 9.2, y + 11], ...shoulderLine(arm).slice(1), along([x, y], upperAngle, 1, side * 7.1), [x, y], [x - side * 7.2, y + 2.4]];
  const sameTurn = (points: Point[], clockwise: boolean): Point[] => (clockwise ? points : points.reverse());
  return [
    smooth(sameTurn(cap, side < 0), true),
    limb([[x - side * 1.2, y + 0.2, 7], [x - side * 4.2, y + 1, 7.4], [x - side * 8.2, y + 1.2, 7.4]], 2),
    polygon(sameTurn(slope, side > 0)),
  ];
}

/** Cloth over the elbow, so that upper and lower sleeve are one. */
const elbowPatch = ({ elbow, upperAngle, foreAngle }: Arm): PathData =>
  limb([[...along(elbow, foreAngle, 5, 0), 5.3], [...elbow, 5.62], [...along(elbow, upperAngle, -ABOVE_ELBOW_CM, 0), 6.35]], PIECES, true);

/** From the shoulder to the seam above the elbow. Patterns are tied to the operator's origin, where that of the gown is tied too. */
function outerPart({ side, shoulder, elbow, upperAngle }: Arm): PathData {
  const seam = along(elbow, upperAngle, -ABOVE_ELBOW_CM, 0);
  return limb([[shoulder[0] - side * 0.6, shoulder[1], 7.6], [(shoulder[0] + seam[0]) / 2, (shoulder[1] + seam[1]) / 2, 7.2], [...seam, 6.5]], PIECES, true);
}

/** Round about the elbow, from the seam above it to a little below. */
const elbowPart = ({ elbow, upperAngle, foreAngle }: Arm): PathData => joinPaths([
  limb([[...elbow, 6.1], [...along(elbow, upperAngle, -ABOVE_ELBOW_CM, 0), 6.5]], PIECES, true),
  limb([[...elbow, 6.1], [...along(elbow, foreAngle, 2.5, 0), 6]], PIECES, true),
]);

const lowerPart = ({ elbow, wrist, foreAngle }: Arm): PathData =>
  limb([[...along(wrist, foreAngle, -4, 0), 4.2], [...along(wrist, foreAngle, -8, 0), 4.9], [...along(elbow, foreAngle, 2.5, 0), 6]], PIECES, true);

/** Points of a fold as [forward, left] from one of the joints; `left` is mirrored on the other side. */
type Fold = readonly (readonly [number, number])[];
const FOLDS: readonly (readonly [from: 'elbow' | 'shoulder' | 'wrist', half: 'upper' | 'fore', points: Fold])[] = [
  ['elbow', 'fore', [[-1.5, -6], [3.6, -3.4], [7.6, -2.6]]],
  ['elbow', 'fore', [[6.5, -5.6], [9, -4], [12.5, -3.6]]],
  ['elbow', 'upper', [[-9, -3.6], [-4.6, -1], [-1.6, 0.6]]],
  ['elbow', 'fore', [[1, 4.6], [6, 2.4], [11, 2.2]]],
  ['elbow', 'fore', [[8.5, 6], [6.6, 4.2], [5.6, 2.6]]],
  ['shoulder', 'upper', [[6, -6], [9, -3.4], [14, -2.6]]],
  ['shoulder', 'upper', [[5, 4.4], [10, 3], [15, 3.8]]],
  ['wrist', 'fore', [[-10.6, -4], [-9.6, -1], [-10, 1.6]]],
  ['wrist', 'fore', [[-13.5, 3.8], [-12, 1.4], [-12.4, -1]]],
];

function paintFolds(pen: Pen, arm: Arm): void {
  const line = (from: Point, angle: number, points: Fold): PathData => smooth(points.map(([forward, left]) => along(from, angle, forward, arm.side * left)));
  const folds = FOLDS.map(([from, half, points]) => line(arm[from], half === 'fore' ? arm.foreAngle : arm.upperAngle, points));
  pen.path(joinPaths(folds), { line: GOWN_LINE, weight: 'h', alpha: 0.62 });
  pen.path(line(arm.elbow, arm.foreAngle, [[6.2, 6], [3.6, 4.2], [1.6, 1.2]]), { line: GOWN_LINE, weight: 'h', alpha: 0.95 });
}
