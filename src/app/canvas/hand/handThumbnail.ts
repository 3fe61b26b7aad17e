import type { Side } from '../../../core/base/side.ts';
import type { ArmDressPicture, HandPose, ItemPicture, ProbeDress, RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { marksOf } from '../art/marks.ts';
import { paintClothOverHand } from '../gown/arm.ts';
import { paintLooseBand } from '../items/band.ts';
import { paintGelBottle } from '../items/gelBottle.ts';
import { paintGlove, paintGownPacket, paintTieCard } from '../items/gownThings.ts';
import { paintHeldEnd, paintHeldMouth } from '../items/heldFilm.ts';
import { paintProbe } from '../items/probe.ts';
import { paintSheathRoll } from '../items/sheathRoll.ts';
import { paintGauze, paintGelPacket } from '../items/softItems.ts';
import { paintSyringe } from '../items/syringe.ts';
import { compose, scaling, shift, turning } from '../pen/affine.ts';
import { Pen } from '../pen/pen.ts';
import { paintHand, type HandDrawing } from './paintHand.ts';
import { HAND_SHAPES } from './poses.ts';

export interface ThumbnailLook {
  readonly pose: HandPose;
  readonly side: Side;
  /** What the hand holds: a thing, the mouth of an opened sheath or its open end once it is on the probe; or null. */
  readonly holds: ItemPicture['kind'] | 'mouth' | 'end' | null;
  /** 0 full … 1 emptied. */
  readonly used?: number;
  /** What covers a held probe; null while it is bare and for other things. */
  readonly dress?: ProbeDress | null;
  readonly marks: HandDrawing['marks'];
  readonly thingMark?: SurfaceMark;
  readonly active: boolean;
  /** How far gown and glove are on that arm; null where they are on from the start. */
  readonly arm?: ArmDressPicture | null;
}

/** The middle of the palm from the wrist (mm). */
const PALM_MM = 95;
const FILM_HELD: Readonly<Record<string, 'mouth' | 'end'>> = { pocket: 'mouth', film: 'end' };

/** The part of a hand and of what it holds that a card shows, in millimetres of the hand. */
const SHOWN = { left: -78, top: -104, right: 212, bottom: 76 } as const;

/**
 * Drawn hand with what it holds, for a card of the side panel. The operator's right hand points to the right of the screen.
 * @param width, height size in CSS pixels
 */
export function handThumbnail(look: ThumbnailLook, width = 92, height = 70): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  Object.assign(canvas.style, { width: `${width}px`, height: `${height}px` });
  canvas.setAttribute('aria-hidden', 'true');
  const density = Math.min(2, globalThis.devicePixelRatio || 1);
  paintThumbnail(canvas, look, width, height, density);
  return canvas;
}

/** Draws one hand of a picture with what it holds into a canvas, as large as the canvas is shown. */
export function drawHand(canvas: HTMLCanvasElement, picture: RoomPicture, side: Side, look: { readonly active: boolean; readonly shown: boolean }): void {
  const hand = picture.hands[side];
  const markOf = marksOf(picture, look.shown);
  const held = picture.items.find((item) => item.heldBy === side && !item.gone);
  const { fingers, palm, back, cuff } = hand.surfaces;
  const density = Math.min(2, globalThis.devicePixelRatio || 1);
  const width = canvas.clientWidth || canvas.width;
  const height = canvas.clientHeight || canvas.height;
  paintThumbnail(canvas, {
    pose: hand.pose, side, holds: held?.kind ?? FILM_HELD[hand.holds ?? ''] ?? null, used: held?.used ?? 0, dress: held?.dress ?? null, active: look.active, arm: picture.gown?.arms[side] ?? null, thingMark: markOf(held?.surfaces[0]),
    marks: { fingers: markOf(fingers), palm: markOf(palm), back: markOf(back), cuff: markOf(cuff) },
  }, width, height, density);
}

function paintThumbnail(canvas: HTMLCanvasElement, look: ThumbnailLook, width: number, height: number, density: number): void {
  canvas.width = Math.round(width * density);
  canvas.height = Math.round(height * density);
  const scale = Math.min(width / (SHOWN.right - SHOWN.left), height / (SHOWN.bottom - SHOWN.top));
  const middle = shift(-(SHOWN.left + SHOWN.right) / 2, -(SHOWN.top + SHOWN.bottom) / 2);
  const frame = [shift(width / 2, height / 2), scaling(look.side === 'left' ? -scale : scale, scale), middle].reduce(compose);
  // The frame is in millimetres; line weights are those of the room seen at this size.
  const pen = Pen.over(canvas.getContext('2d')!, compose(frame, scaling(1000)), density).in(scaling(0.001)).weighted(0.8);
  const shape = HAND_SHAPES[look.pose];
  const { arm = null } = look;
  const isSleeved = arm !== null && arm.inM > 0 && arm.toCuffM >= 0 && arm.glove !== 'on';
  if (isSleeved) {
    if (look.holds !== null) paintTool(pen, look, shape.grip);
    paintClothOverHand(pen.in(shift(PALM_MM, 0)), arm, { cloth: look.marks.palm, knit: look.marks.fingers }, look.active ? 1 : 0);
    return;
  }
  paintHand(pen, {
    shape, skin: arm !== null && arm.glove !== 'on' ? 'operator' : 'glove', cuffDeg: 0, active: look.active ? 1 : 0, marks: look.marks,
    ...(look.holds === null ? {} : { tool: () => paintTool(pen, look, shape.grip) }),
  });
}

function paintTool(pen: Pen, { holds, used = 0, dress = null, thingMark = 'sterile' }: ThumbnailLook, [x, y]: readonly [number, number]): void {
  switch (holds) {
    case 'probe': paintProbe(pen.in(shift(x, y - 8)), thingMark, dress); break;
    case 'gelPacket': paintGelPacket(pen.in(shift(x + 12, y + 10), turning(50)), used, thingMark); break;
    case 'gauze': paintGauze(pen.in(shift(x + 14, y + 6), turning(35)), thingMark); break;
    case 'band': paintLooseBand(pen.in(shift(x + 4, y + 2), turning(35)), thingMark); break;
    case 'gelBottle': paintGelBottle(pen.in(shift(x + 6, y), turning(90)), used, thingMark); break;
    case 'mouth': paintHeldMouth(pen.in(shift(x, y))); break;
    case 'end': paintHeldEnd(pen.in(shift(x, y))); break;
    case 'gownPacket': paintGownPacket(pen.in(shift(x + 30, y)), thingMark); break;
    case 'glove': paintGlove(pen.in(shift(x + 60, y)), thingMark); break;
    case 'tieCard': paintTieCard(pen.in(shift(x + 24, y)), thingMark); break;
    case 'sheathRoll': paintSheathRoll(pen.in(shift(x + 14, y + 6), turning(80)), thingMark); break;
    case 'syringe':
    case 'needleSyringe':
      paintSyringe(pen.in(shift(x, y), turning(22)), { needleMm: 34, full: 0.4, liquid: '#DCEBF0', barrelMark: thingMark, needleMark: thingMark });
  }
}
