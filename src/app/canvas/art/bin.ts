import type { RoomPicture } from '../../../core/room/picture.ts';
import { FLOOR_SHADOW, METAL_DARK, METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { METAL_SHADE } from '../pen/shades.ts';
import type { MarkOf } from './marks.ts';

const BODY = 'M-15 58C-14 40 -12.6 20 -11.4 1.2C-4 .4 4 .4 11.4 1.2C12.6 20 14 40 15 58Z';
const LINER = 'M-16 61C-16.6 57 -16 53 -14.6 51C-11 49.4 -9 52.4 -5.6 50.6C-2 49 .4 52 4 50.4C7.4 49 10.4 52 14.6 50.8C16 53 16.6 57 16 61C10 58.6 -10 58.6 -16 61Z';
const LINER_LINE = '#6B5722';

/** Bin with its liner folded over the rim; the pen's frame is in metres. */
export function paintBin(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const { xM, rimM, widthM } = picture.scenario.room.bin;
  const cm = pen.in(scaling(0.01), shift(xM * 100, 0), scaling((widthM * 100) / 32, (rimM * 100) / 61));
  cm.ellipse(0, 1.2, 18, 1.2, { fill: FLOOR_SHADOW, alpha: 0.6 });
  cm.path(BODY, { fill: METAL_SHADE, line: METAL_LINE });
  cm.path('M-8 52C-7.4 36 -6.4 20 -5.8 6M8 52C7.4 36 6.4 20 5.8 6', { line: METAL_LINE, weight: 'h', alpha: 0.45 });
  cm.box(-6, 0, 6, 2.6, { fill: METAL_DARK, line: METAL_LINE, weight: 'd' }, 1);
  paintMark(cm, BODY, markOf(picture.fixed['bin']));
  cm.ellipse(0, 61, 15.8, 2.2, { fill: '#A58B4A', line: LINER_LINE, weight: 'd' });
  cm.path(LINER, { fill: '#E2CE92', line: LINER_LINE });
  cm.path('M-10 58.6C-10.4 56 -10 54 -9 52M-1 58C-1.6 55.6 -1.2 53.6 -.4 52M8.4 58.4C9 56 8.6 54 8 52', { line: LINER_LINE, weight: 'h', alpha: 0.6 });
}
