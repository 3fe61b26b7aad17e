import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { GOWN_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { paintMark, paintPattern } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { GOWN_SHADE, GOWN_SIDES } from '../pen/shades.ts';
import { paintScrubLegs, paintScrubs } from '../gown/scrubs.ts';
import { paintHead, OPERATOR_FACE } from './head.ts';
import type { MarkOf } from './marks.ts';

/** Height of the shoulder joint and half width that the gown was drawn for, in centimetres and metres. */
const DRAWN_JOINT_CM = 139;
const DRAWN_HALF_WIDTH_M = 0.19;
/** How far the drawn joint of the sleeve lies below the top of the shoulder, in centimetres. */
const JOINT_BELOW_TOP_CM = 3;

const GOWN = 'M-7.4 150.9C-10 149.6 -13.2 148.2 -15.6 147C-19.4 144.4 -22.4 139.4 -23.2 132.4C-22.6 121 -23.4 108 -25 92C-26.4 74 -27.6 54 -28.4 37C-20 34.4 -10 33.6 0 33.6C10 33.6 20 34.4 28.4 37C27.6 54 26.4 74 25 92C23.4 108 22.6 121 23.4 132.4C22.4 139.4 19.4 144.4 15.6 147C13.2 148.2 10 149.6 7.4 150.9C5.4 147 2.6 145.8 0 145.8C-2.6 145.8 -5.4 147 -7.4 150.9Z';
const GOWN_SEAM = 'M-22.9 127C-22.6 119 -23.4 108 -25 92C-26.4 74 -27.6 54 -28.4 37C-20 34.4 -10 33.6 0 33.6C10 33.6 20 34.4 28.4 37C27.6 54 26.4 74 25 92C23.4 108 22.6 119 22.9 127';
const BELOW_WAIST = 'M-24 106C-10 103.4 10 103.4 24 106C24.2 102 24.6 97 25 92C26.4 74 27.6 54 28.4 37C20 34.4 10 33.6 0 33.6C-10 33.6 -20 34.4 -28.4 37C-27.6 54 -26.4 74 -25 92C-24.6 97 -24.2 102 -24 106Z';
const CHEST = 'M-12 145C-6 142 6 142 12 145C16 138 18 126 20 109C10 106.4 -10 106.4 -20 109C-18 126 -16 138 -12 145Z';
const YOKE = 'M-7.4 150.9C-10 149.6 -13.2 148.2 -15.6 147C-19.4 144.4 -22.4 139.4 -23 130C-14 126.4 14 126.4 23 130C22.4 139.4 19.4 144.4 15.6 147C13.2 148.2 10 149.6 7.4 150.9C5.4 147 2.6 145.8 0 145.8C-2.6 145.8 -5.4 147 -7.4 150.9Z';
const COLLAR = 'M-7.4 150.9C-5.4 147 -2.6 145.8 0 145.8C2.6 145.8 5.4 147 7.4 150.9L6.2 151.8C4.6 148.8 2.4 147.6 0 147.6C-2.4 147.6 -4.6 148.8 -6.2 151.8Z';

/** How far the drawn gown is raised to this person's shoulders, in centimetres. */
const gownLift = ({ shoulderM }: RoomPicture['scenario']['operator']): number => shoulderM * 100 - JOINT_BELOW_TOP_CM - DRAWN_JOINT_CM;

/** The frame of the gown: centimetres, 0 at the operator's midline, moved and stretched to this person's shoulders. */
function gownFrame(pen: Pen, operator: RoomPicture['scenario']['operator']): Pen {
  return pen.in(scaling(0.01), shift(0, gownLift(operator)), scaling(operator.shoulderHalfWidthM / DRAWN_HALF_WIDTH_M, 1));
}

/** The gown is on and tied. */
export const isGowned = ({ gown }: RoomPicture): boolean => gown === null || gown.tied;

/** Head, gown and legs of the operator at x = 0; the pen's frame is in metres. */
export function paintOperatorBody(pen: Pen, picture: RoomPicture, markOf: MarkOf, shown: boolean): void {
  if (!isGowned(picture)) {
    paintScrubs(pen, picture, markOf, shown);
    return;
  }
  const { operator } = picture.scenario;
  const cm = pen.in(scaling(0.01));
  // Who was seen to put the gown on wears the same scrubs below it.
  if (picture.gown) paintScrubLegs(cm, operator, shown ? 'unsterile' : 'sterile');
  else paintLegs(cm);
  paintHead(cm.in(shift(0, operator.faceM * 100)), OPERATOR_FACE, markOf(picture.fixed['face']));
  const gown = gownFrame(pen, operator);
  gown.path(GOWN, { fill: GOWN_SHADE });
  gown.path(GOWN, { fill: GOWN_SIDES });
  gown.path(GOWN_SEAM, { line: GOWN_LINE });
  if (shown) paintMark(gown, BELOW_WAIST, 'unsterile');
  paintMark(gown, CHEST, markOf(picture.fixed['gownFront']));
  // The shoulders are one surface with the outer sleeves.
  paintPattern(gown, YOKE, yokeMark(picture, markOf), [0, -gownLift(operator)]);
  paintTieAndFolds(gown);
}

function paintLegs(cm: Pen): void {
  for (const side of [-1, 1]) {
    cm.path(`M${side * 3} 44L${side * 3.4} 7L${side * 12} 7L${side * 16} 44Z`, { fill: '#7F98A7', line: GOWN_LINE });
    cm.path(`M${side * 2.6} 0C${side * 2} 5 ${side * 3} 8.4 ${side * 7} 8.6C${side * 11.4} 8.4 ${side * 13.6} 5 ${side * 13.4} 0Z`, { fill: '#5E6E78', line: '#35434C' });
  }
}

/** State of the shoulders: the worse one of both outer sleeves. */
export function yokeMark({ hands }: RoomPicture, markOf: MarkOf): SurfaceMark {
  const [left, right] = [markOf(hands.left.surfaces.outerSleeve), markOf(hands.right.surfaces.outerSleeve)];
  return right === 'became' ? right : left;
}

function paintTieAndFolds(gown: Pen): void {
  const ends = 'M-9 104C-12 98 -12 90 -10 82M-8.4 104C-8 97 -6.6 92 -6.8 84';
  gown.path('M-24 108C-10 105.4 10 105.4 24 108L24.2 105.4C10 102.8 -10 102.8 -24.2 105.4Z', { fill: '#B1C8D5', line: GOWN_LINE, weight: 'd' });
  gown.path(ends, { line: '#B1C8D5', weight: 3.2 });
  gown.path(ends, { line: GOWN_LINE, weight: 'h' });
  gown.path('M-16 100C-18 84 -19 62 -19.4 38M-6 98C-8 80 -9 58 -8.6 36M5 99C6 80 7 60 6.6 36M17 101C18 84 19 62 19.6 40M11 100C12 92 12 84 11.4 76',
    { line: GOWN_LINE, weight: 'h', alpha: 0.5 });
  gown.path('M-4 138C-5 130 -4.6 122 -6 113M6 140C8 131 7.4 122 9 112M-11 134C-13 127 -13 119 -14 112M14 130C13.4 124 14.4 118 15 112',
    { line: GOWN_LINE, weight: 'h', alpha: 0.32 });
}

export function paintNeckband(pen: Pen, operator: RoomPicture['scenario']['operator']): void {
  gownFrame(pen, operator).path(COLLAR, { fill: '#DCE7ED', line: GOWN_LINE, weight: 'd' });
}
