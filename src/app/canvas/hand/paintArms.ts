import { SIDES, signOf, type Side } from '../../../core/base/side.ts';
import { Sleeve } from '../art/sleeve.ts';
import { gownFrame, YOKE } from '../art/operatorBody.ts';
import type { Frame } from '../frame.ts';
import { paintItem } from '../items/paintItem.ts';
import { applyTo, scaling, shift } from '../pen/affine.ts';
import type { Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { placeHand } from './placeHand.ts';
import { paintHand } from './paintHand.ts';

/** The joint of the drawn sleeve lies inside and below the shoulder's top, in centimetres. */
const JOINT_IN_CM = 1.6;
const JOINT_DOWN_CM = 3;

/** Where the drawn hand's frame lies in the room, for the pose that it shows now. */
function handFrame({ picture, motion, nowMs }: Frame, side: Side) {
  const hand = picture.hands[side];
  const shape = motion[side].shape(hand.pose, nowMs);
  return { shape, place: placeHand(hand, shape.grip, picture.scenario.operator.handM) };
}

export function paintSleeves(frame: Frame): void {
  const { picture, markOf, pen } = frame;
  const cm = pen.in(scaling(0.01), shift(picture.torsoX * 100, 0));
  for (const side of SIDES) {
    const hand = picture.hands[side];
    const sign = signOf(side) as -1 | 1;
    const wrist = applyTo(handFrame(frame, side).place, 0, 0);
    const local = (x: number, y: number): Point => [(x - picture.torsoX) * 100, y * 100];
    const shoulder = local(hand.shoulderX, hand.shoulderY);
    new Sleeve(cm, {
      side: sign, shoulder: [shoulder[0] - sign * JOINT_IN_CM, shoulder[1] - JOINT_DOWN_CM],
      elbow: local(hand.elbowX, hand.elbowY), wrist: local(...wrist),
    }).paint({
      lowerSleeve: markOf(hand.surfaces.lowerSleeve), upperSleeve: markOf(hand.surfaces.upperSleeve), outerSleeve: markOf(hand.surfaces.outerSleeve),
    });
  }
  const { left, right } = picture.hands;
  const yoke = markOf(left.surfaces.outerSleeve) === 'became' ? markOf(left.surfaces.outerSleeve) : markOf(right.surfaces.outerSleeve);
  paintMark(gownFrame(pen.in(shift(picture.torsoX, 0)), picture.scenario.operator), YOKE, yoke);
}

/** A hand with what it holds between its far and near fingers. */
export function paintHandWithThing(frame: Frame, side: Side): void {
  const { picture, markOf, pen, motion, nowMs } = frame;
  const hand = picture.hands[side];
  const { shape, place } = handFrame(frame, side);
  const held = picture.items.find((item) => item.heldBy === side);
  const wrist = applyTo(place, 0, 0);
  paintHand(pen.in(place), {
    shape, skin: 'glove',
    cuffDeg: angleInHand(place, wrist[0] - hand.elbowX, wrist[1] - hand.elbowY),
    active: motion[side].active(frame.activeHand === side, nowMs),
    marks: { fingers: markOf(hand.surfaces.fingers), palm: markOf(hand.surfaces.palm), back: markOf(hand.surfaces.back), cuff: markOf(hand.surfaces.cuff) },
    ...(held === undefined ? {} : { tool: () => paintItem(pen, held, markOf) }),
  });
}

/** Angle of a direction of the room in the frame of the hand, in degrees. */
function angleInHand([a, b, c, d]: readonly number[], dx: number, dy: number): number {
  const along = a! * dx + b! * dy;
  const across = c! * dx + d! * dy;
  return (Math.atan2(across, along) * 180) / Math.PI;
}
