import type { AssistantHandPicture, AssistantPicture, RoomPicture } from '../../../core/room/picture.ts';
import { SIDES, signOf, type Side } from '../../../core/base/side.ts';
import { HAND } from '../../../core/room/handShape.ts';
import { NO_MARKS, paintHand } from '../hand/paintHand.ts';
import { placeHand } from '../hand/placeHand.ts';
import { HAND_SHAPES } from '../hand/poses.ts';
import { CLOTHES_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { limb, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { CLOTHES_SHADE } from '../pen/shades.ts';
import { paintBody } from './assistant.ts';
import { paintOpenedPacket } from './openedPacket.ts';

const SKIN = '#DFB897';
const SKIN_LINE = '#855E45';
/** Length of the assistant's hand (m), and how far the joint of the drawn sleeve lies inside and below the shoulder (cm). */
const HAND_M = 0.18;
const JOINT_IN_CM = 3;
const JOINT_DOWN_CM = 1.5;
/** Share of the upper arm that the short sleeve covers. */
const SLEEVE_SHARE = 0.8;

/** Bodies nearer to each other than this overlap; an operator so far outside the rails stands free of the bed (m). */
const OVERLAP_M = 0.45;
const FREE_OF_BED_M = 0.2;

/** Who helps an operator in a sterile gown passes behind and ties it from behind; beside the bed alone, since there the bed is before both. */
export function isBehindOperator({ assistant, gown, torsoX, scenario }: RoomPicture): boolean {
  const isFree = Math.abs(torsoX) > scenario.room.rails.xM + FREE_OF_BED_M;
  return gown !== null && isFree && !assistant.waits && Math.abs(assistant.torsoX - torsoX) < OVERLAP_M;
}

/** Legs, head and top of an assistant who is at work. The pen's frame is in metres. */
export const paintAssistantBody = (pen: Pen, { torsoX, stoop }: AssistantPicture, shown: boolean): void =>
  paintBody(pen.in(scaling(0.01), shift(torsoX * 100, 0)), stoop * 100, shown);

/** Both arms where they are: bare forearm and hand below a short sleeve. The pen's frame is in metres. */
export function paintAssistantArms(pen: Pen, { assistant: { doing, hands } }: RoomPicture, shown: boolean): void {
  for (const side of SIDES) {
    if (doing === 'offeringItem' && hands[side].inPlane) paintOpenedPacket(pen, hands[side]);
    paintArm(pen, side, hands[side], shown);
  }
}

function paintArm(pen: Pen, side: Side, arm: AssistantHandPicture, shown: boolean): void {
  const cm = pen.in(scaling(0.01));
  const mark = shown ? 'unsterile' : 'sterile';
  const elbow: Point = [arm.elbowX * 100, arm.elbowY * 100];
  const wrist: Point = [arm.wristX * 100, arm.wristY * 100];
  const shoulder: Point = [arm.shoulderX * 100 - signOf(side) * JOINT_IN_CM, arm.shoulderY * 100 - JOINT_DOWN_CM];
  const on = (share: number): Point => [shoulder[0] + (elbow[0] - shoulder[0]) * share, shoulder[1] + (elbow[1] - shoulder[1]) * share];
  const forearm = limb([[...on(0.7), 4.6], [...elbow, 4.5], [(elbow[0] + wrist[0]) / 2, (elbow[1] + wrist[1]) / 2, 4], [...wrist, 2.9]], 6, true);
  cm.path(forearm, { fill: SKIN, line: SKIN_LINE });
  const shape = HAND_SHAPES.pinch;
  const place = placeHand({ ...arm, side, gripAlong: HAND.gripU }, shape.grip, HAND_M);
  paintHand(pen.in(place), { shape, skin: 'assistant', cuffDeg: 0, active: 0, marks: shown ? { ...NO_MARKS, fingers: 'unsterile', back: 'unsterile' } : NO_MARKS });
  paintMark(cm, forearm, mark);
  const sleeve = limb([[...shoulder, 6.4], [...on(SLEEVE_SHARE / 2), 6.1], [...on(SLEEVE_SHARE), 5.6]], 5, true);
  cm.path(sleeve, { fill: CLOTHES_SHADE, line: CLOTHES_LINE });
  paintMark(cm, sleeve, mark);
}
