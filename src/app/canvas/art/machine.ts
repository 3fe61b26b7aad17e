import type { RoomPicture } from '../../../core/room/picture.ts';
import { CASTOR, FLOOR_SHADOW, HUB, METAL_DARK, METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { DARK_SHADE } from '../pen/shades.ts';
import { paintMachineTrays } from './machineTray.ts';
import type { MarkOf } from './marks.ts';
import { paintProbeHolder } from './probeHolder.ts';

const CONSOLE = 'M-21 76C-22 80 -21 92 -18 95.4C-16 97.4 -11 98 0 98C11 98 16 97.4 18 95.4C21 92 22 80 21 76C19 73 14 72.6 0 72.6C-14 72.6 -19 73 -21 76Z';
const COLUMN = 'M-13 15H13L11 74H-11Z';
/** The picture on the screen, in centimetres of the machine. */
export const SCREEN_CM = { x0: -20.8, y0: 105.6, x1: 20.8, y1: 139.8 } as const;

/** Ultrasound machine without what its screen shows; the pen's frame is in metres. */
export function paintMachine(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const cm = pen.in(scaling(0.01), shift(picture.scenario.room.machine.xM * 100, 0));
  const mark = markOf(picture.fixed['machine']);
  paintColumn(cm);
  paintMark(cm, COLUMN, mark);
  paintConsole(cm);
  paintMark(cm, CONSOLE, mark);
  cm.path('M20.4 90H26V84C26 82.6 25 82 23.6 82C22 82 20.9 82.6 20.9 84Z', { fill: '#8C979D', line: METAL_LINE, weight: 'd' });
  cm.box(-2.4, 98, 2.4, 104, { fill: METAL_DARK, line: METAL_LINE, weight: 'd' });
  cm.box(-23, 102, 23, 142, { fill: '#3A464E', line: '#222C32' }, 2.4);
  cm.box(SCREEN_CM.x0, SCREEN_CM.y0, SCREEN_CM.x1, SCREEN_CM.y1, { fill: '#131A1F', line: '#0C1114' }, 0.6);
  cm.ellipse(0, 103.8, 0.5, 0.5, { fill: '#8FA0A8' });
  for (let i = 0; i < 4; i++) cm.ellipse(8 + i * 2.6, 103.8, 0.45, 0.45, { fill: '#6F7E86' });
  paintMachineTrays(pen, picture);
  paintProbeHolder(pen, picture);
}

function paintColumn(cm: Pen): void {
  cm.ellipse(0, 1.4, 27, 1.4, { fill: FLOOR_SHADOW, alpha: 0.6 });
  cm.path('M-24 9C-24 13 -19 15 -13 15H13C19 15 24 13 24 9Z', { fill: DARK_SHADE, line: METAL_LINE });
  for (const x of [-20, 20]) {
    cm.ellipse(x, 4.6, 4.6, 4.6, { fill: CASTOR, line: METAL_LINE });
    cm.ellipse(x, 4.6, 1.9, 1.9, { fill: HUB, line: METAL_LINE, weight: 'd' });
  }
  cm.path(COLUMN, { fill: '#D3D9DB', line: METAL_LINE });
  cm.path('M-9 20H9L8 62H-8Z', { fill: '#E3E7E8', line: METAL_DARK, weight: 'd' });
  for (let i = 0; i < 5; i++) cm.path(`M-5 ${24 + i * 2.4}H5`, { line: METAL_DARK, weight: 'h', alpha: 0.6 });
}

function paintConsole(cm: Pen): void {
  const key = { fill: '#C3CBCE', line: METAL_DARK, weight: 'h' } as const;
  const knob = { fill: '#B9C2C6', line: METAL_DARK, weight: 'd' } as const;
  cm.path(CONSOLE, { fill: '#E6EAEB', line: METAL_LINE });
  cm.path('M-18 95.4C-12 92.6 12 92.6 18 95.4', { line: METAL_LINE, weight: 'h' });
  for (let row = 0; row < 3; row++) {
    for (let i = 0; i < 9; i++) {
      const x = -11.6 + i * 2 + row * 0.2;
      cm.box(x, 90.3 - row * 2.4, x + 1.5, 91.7 - row * 2.4, key, 0.35);
    }
  }
  cm.ellipse(0, 80.4, 2.3, 2.1, { fill: '#8C979D', line: METAL_LINE, weight: 'd' });
  for (const x of [-10, -6.4, 6.6, 10.2]) cm.ellipse(x, 80.4, 1.25, 1.2, knob);
  for (let i = 0; i < 5; i++) cm.box(12.8, 78 + i * 2.5, 14.2, 79.8 + i * 2.5, key, 0.3);
}

/** Socket of the cord at (x, y) in metres. */
export function paintOutlet(pen: Pen, x: number, y: number): void {
  const cm = pen.in(scaling(0.01), shift(x * 100, y * 100));
  cm.box(-1.2, -3.6, 3.2, 3.6, { fill: CASTOR, line: METAL_LINE }, 1.2);
  cm.ellipse(0.6, 0, 1.3, 1.3, { fill: '#2F3A41', line: METAL_LINE, weight: 'h' });
}
