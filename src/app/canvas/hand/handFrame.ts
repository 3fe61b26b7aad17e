import type { Side } from '../../../core/base/side.ts';
import type { Frame } from '../frame.ts';
import { placeHand } from './placeHand.ts';

/** Where the drawn hand's frame lies in the room, for the pose that it shows now. */
export function handFrame({ picture, motion, nowMs }: Frame, side: Side) {
  const hand = picture.hands[side];
  const shape = motion[side].shape(hand.pose, nowMs);
  return { shape, place: placeHand(hand, shape.grip, picture.scenario.operator.handM) };
}
