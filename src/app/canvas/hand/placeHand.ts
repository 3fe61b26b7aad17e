import type { HandPicture } from '../../../core/room/picture.ts';
import { signOf } from '../../../core/base/side.ts';
import { compose, turning, type Affine } from '../pen/affine.ts';

/** The hand was drawn for this length from wrist to fingertip, in metres. */
const DRAWN_LENGTH_M = 0.184;

/**
 * From millimetres of the drawn hand to metres of the room: the point where its fingertips meet comes to where the hand grips.
 * @param grip that point, in millimetres of the drawing
 */
export function placeHand(hand: Pick<HandPicture, 'x' | 'y' | 'c' | 's' | 'side' | 'gripAlong'>, grip: readonly [number, number], handM: number): Affine {
  const scale = handM / DRAWN_LENGTH_M / 1000;
  const turn = (-Math.atan2(grip[1], grip[0]) * 180) / Math.PI;
  const fingers = hand.gripAlong - Math.hypot(grip[0], grip[1]) * scale;
  const { x, y, c, s } = hand;
  const up = -signOf(hand.side);
  const frame: Affine = [c * scale, s * scale, up * s * scale, -up * c * scale, x + c * fingers, y + s * fingers];
  return compose(frame, turning(turn));
}
