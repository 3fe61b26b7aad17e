import type { RoomPicture } from '../../../core/room/picture.ts';
import { CASTOR, METAL, METAL_DARK, METAL_LINE, METAL_MID } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { boxPath } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { BAG_SHADE, METAL_SHADE } from '../pen/shades.ts';
import type { MarkOf } from './marks.ts';

/** Pole with its bag and line; the pen's frame is in metres. */
export function paintPole(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const { xM, topM, radiusM } = picture.scenario.room.pole;
  const cm = pen.in(scaling(0.01), shift(xM * 100, 0));
  for (const x of [-30, -14, 14, 30]) {
    const foot = `M0 11C${x * 0.5} 10.6 ${x * 0.9} 8.6 ${x} 6`;
    cm.path(foot, { line: METAL_LINE, weight: 5.4 });
    cm.path(foot, { line: METAL, weight: 3.4 });
    cm.ellipse(x, 3, 2.6, 3, { fill: CASTOR, line: METAL_LINE, weight: 'd' });
  }
  cm.ellipse(0, 3, 2.6, 3, { fill: CASTOR, line: METAL_LINE, weight: 'd' });
  cm.box(-1.6, 5, 1.6, 16, { fill: METAL_MID, line: METAL_LINE, weight: 'd' }, 1);
  const rod = boxPath(-radiusM * 100, 12, radiusM * 100, topM * 100, 1.1);
  cm.path(rod, { fill: METAL_SHADE, line: METAL_LINE });
  paintMark(cm, rod, markOf(picture.fixed['pole']));
  cm.box(-1.8, 118, 1.8, 123, { fill: METAL_DARK, line: METAL_LINE, weight: 'd' }, 1);
  const hooks = cm.in(shift(0, topM * 100 - 214));
  hooks.path('M0 213C0 216.4 -5 216.6 -9 215C-10.4 214.4 -10.6 212.4 -9.2 211.6M0 213C0 216.4 5 216.6 9 215C10.4 214.4 10.6 212.4 9.2 211.6', { line: METAL_LINE, weight: 3 });
  paintBag(hooks);
}

const LIQUID_LINE = '#6F8790';

function paintBag(cm: Pen): void {
  cm.path('M-13.4 208.5C-11 210.4 -7.6 210.4 -5.2 208.5L-4.4 187C-4.6 183.8 -6.6 183 -8 182.4L-10.6 182.4C-12 183 -14 183.8 -14.2 187Z', { fill: BAG_SHADE, line: LIQUID_LINE });
  cm.path('M-13.7 201C-11 200.2 -7.4 201.6 -4.7 201L-4.4 187C-4.6 183.8 -6.6 183 -8 182.4L-10.6 182.4C-12 183 -14 183.8 -14.2 187Z', { fill: '#CFE1E6', alpha: 0.85 });
  cm.path('M-13.6 203.6H-4.8M-6 206H-4.8M-6 198H-4.6M-6 194H-4.6M-6 190H-4.5', { line: LIQUID_LINE, weight: 'h' });
  cm.box(-12.2, 192, -7.4, 199, { fill: '#F7FAFA', line: '#8DA1A8', weight: 'h' }, 0.4);
  cm.path('M-11.4 197.4H-8.2M-11.4 195.8H-8.8M-11.4 194.2H-8.2', { line: '#A8B7BC', weight: 'h' });
  cm.box(-10.1, 173.5, -8.5, 182.4, { fill: '#EEF5F6', line: LIQUID_LINE, weight: 'd' }, 0.6);
  cm.box(-10.1, 173.5, -8.5, 176.6, { fill: '#CFE1E6' }, 0.5);
  cm.path('M-9.3 173.5C-9.4 160 -7 150 -4.6 146C-2 141 -2.6 133 -5.4 132C-8.4 131 -9 136 -6.6 140C-3 146 1.6 141 2.4 134C3.4 122 -3 106 -15 99', { line: '#8FA5AD', weight: 1.5 });
}
