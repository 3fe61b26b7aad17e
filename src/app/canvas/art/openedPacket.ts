import { HAND } from '../../../core/room/handShape.ts';
import type { AssistantHandPicture } from '../../../core/room/picture.ts';
import { scaling, shift } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';

const FILM = 'rgba(214, 230, 235, .45)';
const PAPER = '#F6F5EF';
const EDGE = '#8C9497';

/** A peeled packet in the fingers of an assistant who offers what is in it: clear film before the item, the edges of its paper turned back. The pen's frame is in metres. */
export function paintOpenedPacket(pen: Pen, { x, y, c, s }: AssistantHandPicture): void {
  const tip = [(x + c * HAND.gripU) * 100, (y + s * HAND.gripU) * 100] as const;
  const cm = pen.in(scaling(0.01), shift(...tip), scaling(c < 0 ? -1 : 1, 1));
  cm.path('M-1 .4C3 3.4 8 5 12.6 5.6C11.2 2 11.2 -2 12.6 -5.6C8 -5 3 -3.4 -1 -.4Z', { fill: FILM, line: EDGE });
  cm.path('M12.6 5.6C13.8 5.4 14.6 4.6 14.8 3.4C13.6 4 12.6 3.8 12 3.2Z', { fill: PAPER, line: EDGE });
  cm.path('M12.6 -5.6C14 -5.6 15 -4.8 15.4 -3.4C14 -4 12.8 -3.8 12 -3.2Z', { fill: PAPER, line: EDGE });
}
