import type { Side } from '../../../core/base/side.ts';
import { wearerProfile } from '../../../core/room/gown/wearerProfile.ts';
import type { GownFromSide, LineFromSide, RoomPicture } from '../../../core/room/picture.ts';
import type { Box } from '../labels/arrange.ts';
import { CAP, FACE, MASK, NECK, SHOE } from './profileShapes.ts';
import type { Frame } from '../frame.ts';
import { OPERATOR_FACE } from '../art/head.ts';
import { GOWN_LINE, QUIET_INK } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { limb, polyline, smooth, type Point, type WidePoint } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { CAP_SHADE, MASK_SHADE } from '../pen/shades.ts';
import { CLOTH_SHADE, SKIN_LINE, SKIN_SHADE } from './colours.ts';
import { SCRUB_LINE, SCRUB_SHADE } from './scrubs.ts';

/** The card in the corner of the canvas, in CSS pixels. */
const CARD = { wide: 128, high: 232, right: 12, top: 58, radius: 6 } as const;
const TITLE = 'from your side';
const TITLE_PX = 16;
/** What a centimetre of the room is on it, where the middle of the body and the floor are (CSS pixels). */
const PX_PER_CM = 0.88;
const BODY_PX = 44;
const FLOOR_PX = 207;
/** Lines on it are this much finer than in the room, and a sleeve is this thick (cm). */
const FINE = 0.7;
const SLEEVE_CM = 4;
/** Nearer than this it touches, and from here on a line shows how far it is (cm). */
const TOUCHES_CM = 0.5;
const LINE_FROM_CM = 2;
const CARD_FILL = '#FDFDFB';
const CARD_LINE = '#C9D0D2';

/** Where the card lies (CSS pixels). */
const cardBox = ({ widthPx }: Frame['camera']): Box => ({ x0: widthPx - CARD.right - CARD.wide, y0: CARD.top, x1: widthPx - CARD.right, y1: CARD.top + CARD.high });

/** What the card covers now. */
export const fromSideBoxes = ({ picture, camera }: Frame): Box[] => (picture.gown?.fromSide ? [cardBox(camera)] : []);

const toCm = ({ x, y }: LineFromSide): Point[] => Array.from(x, (value, k): Point => [value * 100, y[k]! * 100]);

/** The open gown once more, from the operator's side, in a corner: how far before the clothes it hangs. Nothing while no hand holds it open. */
export function paintFromSide(frame: Frame): void {
  const { picture, pen, camera, labels } = frame;
  const side = picture.gown?.fromSide;
  if (!side) return;
  const { x0: left } = cardBox(camera);
  const px = pen.onto(pen.ctx, [pen.density, 0, 0, pen.density, left * pen.density, CARD.top * pen.density]).weighted(FINE);
  px.box(0, 0, CARD.wide, CARD.high, { fill: CARD_FILL, line: CARD_LINE, weight: 1 }, CARD.radius);
  const cm = px.in(shift(BODY_PX, FLOOR_PX), scaling(PX_PER_CM, -PX_PER_CM));
  cm.path(polyline([[-40, 0], [86, 0]]), { line: CARD_LINE, weight: 1 });
  paintWearer(cm, frame);
  paintCloth(cm, frame, side);
  labels.paintWords(frame, TITLE, TITLE_PX, left + 8, CARD.top + 4);
  paintGap(frame, cm, side, left);
}

/** The operator in scrubs, cap and mask, seen from the side. */
function paintWearer(cm: Pen, { picture, markOf }: Frame): void {
  const { operator } = picture.scenario;
  const mark = markOf(picture.gown!.surfaces.clothes);
  const head = cm.in(shift(0, operator.faceM * 100));
  head.path(NECK, { fill: OPERATOR_FACE.shade, line: OPERATOR_FACE.line, weight: 'd' });
  head.path(FACE, { fill: OPERATOR_FACE.shade, line: OPERATOR_FACE.line });
  head.path(MASK, { fill: MASK_SHADE, line: '#5F7C88', weight: 'd' });
  head.path(CAP, { fill: CAP_SHADE, line: GOWN_LINE });
  cm.path(SHOE, { fill: '#5E6E78', line: '#35434C' });
  // Legs before trunk: the shirt hangs over the trousers.
  for (const { low, high, r } of [...wearerProfile(picture.scenario)].reverse()) {
    const part = limb([[0, low * 100, r * 100], [0, high * 100, r * 100]], 6);
    cm.path(part, { fill: SCRUB_SHADE, line: SCRUB_LINE });
    paintMark(cm, part, mark);
  }
}

/** Sleeves and sides of the gown, and the arms that hold it. */
function paintCloth(cm: Pen, { picture, markOf }: Frame, { cloth }: GownFromSide): void {
  for (const { side, edge } of cloth) {
    const points = toCm(edge);
    cm.path(smooth(points), { line: GOWN_LINE, weight: 4 });
    cm.path(smooth(points), { line: '#BFD2DD', weight: 2.2 });
    paintArm(cm, picture, side, points[0]!);
  }
  for (const { side, sleeve } of cloth) {
    const points = toCm(sleeve);
    const shape = limb(points.map(([x, y]): WidePoint => [x, y, SLEEVE_CM / 2]), 2, true);
    cm.path(shape, { fill: CLOTH_SHADE, line: GOWN_LINE, weight: 'd' });
    paintMark(cm, shape, markOf(picture.strands.find(({ id }) => id === `sleeve.${side}`)?.surfaces.at(-1)));
  }
  const hem = cloth.map(({ edge }) => toCm(edge).slice(-2));
  for (const points of hem) paintMark(cm, limb(points.map(([x, y]): WidePoint => [x, y, 2]), 2, true), markOf(picture.gown!.surfaces.hem));
}

/** From the shoulder over the elbow to the shoulder of the gown that the hand holds. */
function paintArm(cm: Pen, { hands, scenario }: RoomPicture, side: Side, [handX, handY]: Point): void {
  const { upperArmM, forearmM } = scenario.operator;
  const { shoulderY, elbowY, wristY } = hands[side];
  const arm = limb([[0, shoulderY * 100, 4.6], [(handX * upperArmM) / (upperArmM + forearmM), elbowY * 100, 3.8], [handX, wristY * 100, 2.6], [handX, handY, 2]], 3);
  cm.path(arm, { fill: SKIN_SHADE, line: SKIN_LINE });
}

/** Least distance of hem and sleeves from the clothes, as a line and in words; only where coaching shows such things. */
function paintGap(frame: Frame, cm: Pen, { nearest }: GownFromSide, left: number): void {
  if (!nearest || !frame.shown) return;
  const [x, y, gap] = [nearest.x * 100, nearest.y * 100, nearest.gapM * 100];
  if (gap > LINE_FROM_CM) cm.path(`M${x - gap} ${y}L${x} ${y}M${x - gap} ${y - 3}L${x - gap} ${y + 3}`, { line: QUIET_INK, weight: 1 });
  frame.labels.paintWords(frame, gap < TOUCHES_CM ? 'touches' : `${Math.round(gap)} cm clear`, TITLE_PX, left + 8, CARD.top + FLOOR_PX);
}
