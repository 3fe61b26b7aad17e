import type { Side } from '../../../core/base/side.ts';
import { HAND_IN_GLOVE_M, OUT_OF_CUFF_M } from '../../../core/room/gown/gownFacts.ts';
import type { Frame } from '../frame.ts';
import { handFrame } from '../hand/handFrame.ts';
import { paintHand } from '../hand/paintHand.ts';
import { paintItem } from '../items/paintItem.ts';
import { scaling, shift } from '../pen/affine.ts';
import { paintClothOverHand, paintCuffBehindHand } from './arm.ts';
import { paintLimpSleeve } from './limpSleeve.ts';

/** A hand while gown and gloves are put on: bare, under the cloth of its sleeve, or on its way into a glove. */
export function paintDressingHand(frame: Frame, side: Side): void {
  const { picture, pen, markOf, activeHand, nowMs, motion } = frame;
  const hand = picture.hands[side];
  const arm = picture.gown!.arms[side];
  const { shape, place } = handFrame(frame, side);
  const held = picture.items.find((item) => item.heldBy === side && !item.gone);
  const active = motion[side].active(activeHand === side, nowMs);
  const inMm = pen.in(place);
  const item = (): void => {
    if (held) paintItem(pen, held, markOf);
  };
  const { surfaces } = hand;
  const marks = { fingers: markOf(surfaces.fingers), palm: markOf(surfaces.palm), back: markOf(surfaces.back), cuff: markOf(surfaces.cuff) };
  const bare = arm.inM <= 0;
  const shows = bare || arm.toCuffM < 0;
  const inHand = pen.in([hand.c / 1000, hand.s / 1000, -hand.s / 1000, hand.c / 1000, hand.x, hand.y]);
  // A bare hand that came out of its cuff: the cuff stays at the wrist.
  const isOut = arm.toCuffM <= -OUT_OF_CUFF_M;
  if (isOut) paintCuffBehindHand(inHand, -arm.toCuffM, marks.cuff);
  if (shows && arm.glove !== 'over') paintHand(inMm, { shape, skin: 'operator', cuffDeg: 0, active, marks, tool: item });
  if (bare || isOut) return;
  const isLaid = arm.glove === 'laid';
  if (!shows && !isLaid) item();
  const cloth = { cloth: markOf(hand.surfaces.palm), knit: markOf(arm.glove === 'over' ? undefined : hand.surfaces.fingers) };
  paintLimpSleeve(pen.in(scaling(0.01)), picture, side, markOf);
  paintClothOverHand(inHand, arm, cloth, active);
  if (isLaid) item();
  if (arm.glove !== 'over') return;
  // The glove is over the end of the sleeve, its fingers still before the hand.
  paintHand(inMm.in(shift((HAND_IN_GLOVE_M - arm.advanceM) * 1000, 0)), { shape, skin: 'glove', cuffDeg: 0, active, marks });
}
