import { signOf, type Side } from '../../../core/base/side.ts';
import { FOLD_M } from '../../../core/room/gown/gownFacts.ts';
import type { ArmDressPicture, HandPicture, SurfaceMark } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import { ACCENT, GOWN_LINE } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { limb, polygon, type Point, type WidePoint } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { joinPaths, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { CLOTH_SHADE, KNIT, KNIT_LINE, SKIN_LINE, SKIN_SHADE } from './colours.ts';
import { SCRUB_LINE, SCRUB_SHADE } from './scrubs.ts';

/** From wrist to fingertips, and half widths of arm and cloth along it, in centimetres. */
const HAND_CM = 18;
const FORE_CM = 27;
const UPPER_CM = 33;
const KNIT_CM = 6;

/** Points of an arm from the fingertips to the shoulder, in centimetres of the room. */
function chain(hand: HandPicture): { tip: Point; palm: Point; wrist: Point; elbow: Point; shoulder: Point } {
  return {
    tip: [hand.x * 100 + hand.c * 8.5, hand.y * 100 + hand.s * 8.5],
    palm: [hand.x * 100, hand.y * 100],
    wrist: [hand.wristX * 100, hand.wristY * 100],
    elbow: [hand.elbowX * 100, hand.elbowY * 100],
    shoulder: [hand.shoulderX * 100, hand.shoulderY * 100],
  };
}

const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** A bare arm out of the short sleeve of the scrubs. */
export function paintBareArm(pen: Pen, hand: HandPicture, side: Side, markOf: MarkOf): void {
  const cm = pen.in(scaling(0.01));
  const { wrist, elbow, shoulder } = chain(hand);
  const joint: Point = [shoulder[0] - signOf(side) * 1.6, shoulder[1] - 3];
  const upper = limb([[...joint, 5], [...between(joint, elbow, 0.5), 4.6], [...elbow, 4]], 3);
  const fore = limb([[...elbow, 4], [...between(elbow, wrist, 0.35), 4.2], [...wrist, 2.6]], 3);
  const sleeve = limb([[...joint, 7], [...between(joint, elbow, 0.55), 6.6]], 3, true);
  for (const skin of [upper, fore]) cm.path(skin, { fill: SKIN_SHADE, line: SKIN_LINE });
  paintMark(cm, joinPaths([upper, fore]), markOf(hand.surfaces.lowerSleeve));
  cm.path(sleeve, { fill: SCRUB_SHADE, line: SCRUB_LINE });
  paintMark(cm, sleeve, markOf(hand.surfaces.outerSleeve));
}

/** The sleeve as far as the arm is in it, from the armhole down to its knit cuff before, at or behind the fingertips. */
export function paintSleeveOnArm(pen: Pen, hand: HandPicture, arm: ArmDressPicture, markOf: MarkOf): void {
  const cm = pen.in(scaling(0.01));
  const { palm, wrist, elbow, shoulder } = chain(hand);
  const inCm = arm.inM * 100;
  const upper = inCm > HAND_CM + FORE_CM;
  const top: WidePoint = upper ? [...elbow, 6.2] : [...between(wrist, elbow, Math.max(0, (inCm - HAND_CM) / FORE_CM)), 6.6];
  const fore = limb([top, [...between(elbow, wrist, 0.6), 5.4], [...wrist, 4.8], [...palm, 5.2]], 3, true);
  const above = upper ? limb([[...between(elbow, shoulder, Math.min(1, (inCm - HAND_CM - FORE_CM) / UPPER_CM)), 8], [...elbow, 6.2]], 3, true) : null;
  // One cloth from the armhole on: outlines first, then the fill of both.
  for (const part of above ? [above, fore] : [fore]) cm.path(part, { line: GOWN_LINE, weight: cm.weights.k * 2 });
  cm.path(above ? joinPaths([above, fore]) : fore, { fill: CLOTH_SHADE });
  paintMark(cm, fore, markOf(hand.surfaces.lowerSleeve));
}

/**
 * A hand inside its sleeve: cloth over the fist, the knit cuff at its end. Fingers that are past it are drawn before. Millimetres
 * from the middle of the palm, the fingers along +x; `active` is how much of the outline of the active hand is seen, 0 to 1.
 */
export function paintClothOverHand(mm: Pen, arm: ArmDressPicture, marks: { readonly cloth: SurfaceMark; readonly knit: SurfaceMark }, active: number): void {
  // What is more than a fold hangs from the fingertips and is drawn by itself.
  const hangs = arm.toCuffM > FOLD_M;
  const end = 85 + (hangs ? 6 : Math.max(-85, arm.toCuffM * 1000)) - arm.advanceM * 1000;
  const knit = hangs ? end : end - KNIT_CM * 10;
  const cloth = limb([[-98, 0, 40], [Math.min(-20, knit - 10), 0, 46], [Math.max(-60, knit), 0, 40]], 3, true);
  const half = arm.toCuffM > 0.01 && arm.advanceM === 0 ? 30 : 32;
  const { accent } = mm.weights;
  const silhouette = hangs ? cloth : joinPaths([cloth, cuffShape(knit, end, half)]);
  if (active > 0) for (const [line, weight] of [['#FFFFFF', accent + 4], [ACCENT, accent]] as const) mm.path(silhouette, { line, weight, alpha: active });
  mm.path(cloth, { fill: CLOTH_SHADE, line: GOWN_LINE });
  mm.path(`M-80 22C-60 10 -40 4 -30 -14M-40 34C-20 24 -8 8 ${Math.max(-40, knit - 14)} -4`, { line: GOWN_LINE, weight: 'h', alpha: 0.6 });
  paintMark(mm, cloth, marks.cloth);
  if (!hangs) paintKnit(mm, knit, end, half, marks.knit);
}

/** The knit cuff behind a hand that went through it by `pastM` (m); millimetres as above. */
export function paintCuffBehindHand(mm: Pen, pastM: number, mark: SurfaceMark): void {
  const end = 85 - pastM * 1000;
  paintKnit(mm, end - KNIT_CM * 10, end, 31, mark);
}

const cuffShape = (seam: number, end: number, half: number): PathData => polygon([[seam, -38], [end, -half], [end, half], [seam, 38]]);

/** A knit cuff from its seam to its end, which is `half` to either side. */
function paintKnit(mm: Pen, seam: number, end: number, half: number, mark: SurfaceMark): void {
  const cuff = cuffShape(seam, end, half);
  mm.path(cuff, { fill: KNIT, line: KNIT_LINE });
  for (let k = -3; k <= 3; k++) mm.path(`M${seam + 1} ${k * 10.4}L${end - 1} ${k * 8.6}`, { line: KNIT_LINE, weight: 'h', alpha: 0.8 });
  paintMark(mm, cuff, mark);
}
