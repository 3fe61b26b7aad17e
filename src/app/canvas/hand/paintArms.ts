import { SIDES, signOf, type Side } from '../../../core/base/side.ts';
import type { ItemPicture } from '../../../core/room/picture.ts';
import { isGowned } from '../art/operatorBody.ts';
import { paintSleeve, type SleeveMarks } from '../art/sleeve.ts';
import type { Frame } from '../frame.ts';
import { paintBareArm, paintCuffBehindHand, paintSleeveOnArm } from '../gown/arm.ts';
import { hangsOpen } from '../gown/hangingGown.ts';
import { paintDressingHand } from '../gown/dressingHand.ts';
import { ITEM_REACH_M, itemLookKey } from '../items/itemLook.ts';
import { paintItem } from '../items/paintItem.ts';
import { applyTo, scaling, shift, type Affine } from '../pen/affine.ts';
import type { Point } from '../pen/curves.ts';
import { boxAround } from '../pictureCache.ts';
import { handFrame } from './handFrame.ts';
import { paintHand, type HandDrawing } from './paintHand.ts';

/** The joint of the drawn sleeve lies inside and below the shoulder's top, in centimetres. */
const JOINT_IN_CM = 1.6;
const JOINT_DOWN_CM = 3;
/** Half width of a sleeve with its line, in centimetres. */
const SLEEVE_MARGIN_CM = 8.2;
/** Corners of what a hand covers, in millimetres of the drawn hand. */
const HAND_CORNERS: readonly Point[] = [[-85, -112], [200, -112], [200, 72], [-85, 72]];
/** The angle of the cuff against the hand is drawn in steps of this many degrees. */
const CUFF_STEP_DEG = 3;

export function paintSleeves(frame: Frame): void {
  for (const side of SIDES) paintOneSleeve(frame, side);
}

function paintOneSleeve(frame: Frame, side: Side): void {
  const { picture, markOf } = frame;
  const hand = picture.hands[side];
  if (!isGowned(picture)) {
    const sleeved = picture.gown!.arms[side].inM > 0;
    // Where the gown hangs, an arm in its sleeve is drawn before it.
    if (!sleeved || !hangsOpen(picture)) paintBareArm(frame.pen, hand, side, markOf);
    if (sleeved) paintSleeveOnArm(frame.pen, hand, picture.gown!.arms[side], markOf);
    return;
  }
  const sign = signOf(side) as -1 | 1;
  const cm = frame.pen.in(scaling(0.01), shift(picture.torsoX * 100, 0));
  const local = (x: number, y: number): Point => [(x - picture.torsoX) * 100, y * 100];
  const top = local(hand.shoulderX, hand.shoulderY);
  const shoulder: Point = [top[0] - sign * JOINT_IN_CM, top[1] - JOINT_DOWN_CM];
  const arm = { side: sign, shoulder, elbow: local(hand.elbowX, hand.elbowY), wrist: local(...applyTo(handFrame(frame, side).place, 0, 0)) };
  const marks: SleeveMarks = {
    lowerSleeve: markOf(hand.surfaces.lowerSleeve), upperSleeve: markOf(hand.surfaces.upperSleeve), outerSleeve: markOf(hand.surfaces.outerSleeve),
  };
  const corners = [shoulder, [shoulder[0] - sign * 5, shoulder[1] + 6] as Point, arm.elbow, arm.wrist];
  const pixels = corners.flatMap(([x, y]) => applyTo(cm.map, x, y)).map(Math.round).join();
  const margin = (SLEEVE_MARGIN_CM * frame.camera.pxPerM) / 100;
  frame.cache.draw(cm, `${side} sleeve`, `${pixels} ${Object.values(marks).join()} ${frame.camera.pxPerM}`, [0, 0], boxAround(cm, corners, margin),
    (own) => paintSleeve(own, arm, marks));
}

/** A hand with what it holds between its far and near fingers. */
export function paintHandWithThing(frame: Frame, side: Side): void {
  if (frame.picture.gown && frame.picture.gown.arms[side].glove !== 'on') {
    paintDressingHand(frame, side);
    return;
  }
  const { picture, pen, motion, markOf, nowMs } = frame;
  const hand = picture.hands[side];
  const { shape, place } = handFrame(frame, side);
  const held = picture.items.find((item) => item.heldBy === side && !item.gone);
  const wrist = applyTo(place, 0, 0);
  const arm = picture.gown?.arms[side];
  const turnedBack = arm !== undefined && arm.overlapM < picture.scenario.gown.knitM;
  const drawing: Omit<HandDrawing, 'tool'> = {
    shape, skin: 'glove', turnedBack,
    cuffDeg: CUFF_STEP_DEG * Math.round(angleInHand(place, wrist[0] - hand.elbowX, wrist[1] - hand.elbowY) / CUFF_STEP_DEG),
    active: motion[side].active(frame.activeHand === side, nowMs),
    marks: { fingers: markOf(hand.surfaces.fingers), palm: markOf(hand.surfaces.palm), back: markOf(hand.surfaces.back), cuff: markOf(hand.surfaces.cuff) },
  };
  const key = [motion[side].shapeKey(nowMs), drawing.cuffDeg, drawing.active, turnedBack, ...Object.values(drawing.marks), angleKey(hand.c, hand.s), frame.camera.pxPerM, thingKey(frame, held, hand)].join();
  if (turnedBack) paintCuffBehindHand(pen.in([hand.c / 1000, hand.s / 1000, -hand.s / 1000, hand.c / 1000, hand.x, hand.y]), arm.advanceM, drawing.marks.cuff);
  const at = applyTo(pen.map, hand.x, hand.y);
  const box = boxAround(pen, [...HAND_CORNERS.map(([x, y]) => applyTo(place, x, y)), ...reachOf(held)], 8);
  frame.cache.draw(pen, `${side} hand`, key, at, [box[0] - at[0], box[1] - at[1], box[2] - at[0], box[3] - at[1]], (own) =>
    paintHand(own.in(place), { ...drawing, ...(held === undefined ? {} : { tool: () => paintItem(own, held, markOf) }) }));
}

/** Direction in steps of 0.3 degrees: smaller turns are not seen. */
const angleKey = (c: number, s: number): string => `${Math.round(c * 200)} ${Math.round(s * 200)}`;

/** How the held thing lies in the hand and what it looks like. */
function thingKey({ markOf, camera }: Frame, held: ItemPicture | undefined, hand: { readonly x: number; readonly y: number }): string {
  if (held === undefined) return '';
  const px = (metres: number): number => Math.round(metres * camera.pxPerM);
  return [held.id, px(held.x - hand.x), px(held.y - hand.y), angleKey(held.c, held.s), itemLookKey(held, markOf)].join();
}

function reachOf(held: ItemPicture | undefined): Point[] {
  if (held === undefined) return [];
  const { along: reach, across: side } = ITEM_REACH_M[held.kind];
  return [-1, 1].flatMap((along) => [-1, 1].map((across): Point => [
    held.x + along * reach * held.c - across * side * held.s, held.y + along * reach * held.s + across * side * held.c,
  ]));
}

/** Angle of a direction of the room in the frame of the hand, in degrees. */
function angleInHand([a, b, c, d]: Affine, dx: number, dy: number): number {
  return (Math.atan2(c * dx + d * dy, a * dx + b * dy) * 180) / Math.PI;
}
