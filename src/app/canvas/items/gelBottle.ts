import type { SurfaceMark } from '../../../core/room/picture.ts';
import type { Affine } from '../pen/affine.ts';
import { ellipsePath, polygon } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import type { Shade } from '../pen/shade.ts';

const LINE = '#3F6079';
/** Drawn upright and 150 mm high; the thing has its nozzle along +x and is 160 mm long. */
const UPRIGHT: Affine = [0, -1, 16 / 15, 0, 0, 0];
const BODY = parsePath('M-25 -75C-27 -75 -28 -74 -28 -71V22C-28 34 -16 40 -11 47H11C16 40 28 34 28 22V-71C28 -74 27 -75 25 -75Z');
const BODY_SHADE: Shade = { stops: [[0, '#F3F8FBEE'], [0.5, '#E2EDF4CC'], [1, '#C3D6E3EE']], axis: 'across' };
const GEL_SHADE: Shade = { stops: [[0, '#9CC6E6'], [0.4, '#79AEDA'], [1, '#5A92C4']], axis: 'across' };
/** Height of the gel in a full and in an empty bottle. */
const GEL = { full: 26, empty: -70 } as const;

/** Squeeze bottle of gel, 160 mm high and 56 mm wide, with a long nozzle; it is not sterile. Millimetres, the nozzle at +x. */
export function paintGelBottle(thing: Pen, used: number, mark: SurfaceMark): void {
  const pen = thing.in(UPRIGHT);
  const level = GEL.full + (GEL.empty - GEL.full) * used;
  pen.path(BODY, { fill: '#EDF4F8' });
  pen.clipped(BODY, () => pen.path(polygon([[-30, -76], [30, -76], [30, level], [-30, level]]), { fill: GEL_SHADE }));
  pen.path(BODY, { fill: BODY_SHADE, fillAlpha: 0.32, line: LINE });
  pen.box(-20, -52, 20, 0, { fill: '#FBFCFC', line: '#8CA9BC', weight: 'd' }, 3);
  pen.path('M0 -6C6 -13 8.4 -17 8.4 -21.4C8.4 -26.4 4.6 -29.4 0 -29.4C-4.6 -29.4 -8.4 -26.4 -8.4 -21.4C-8.4 -17 -6 -13 0 -6Z', { fill: '#6C9FCB' });
  pen.path('M-13 -37H13M-13 -43H8', { line: '#9DB2C0', weight: 'd' });
  pen.path('M-23 -62V14C-23 22 -18 28 -14 33', { line: '#FFFFFF', weight: 'k', alpha: 0.75 });
  pen.box(-12.5, 45, 12.5, 54, { fill: '#F4F6F7', line: LINE }, 2);
  pen.path('M-9 47V52M-4.5 47V52M0 47V52M4.5 47V52M9 47V52', { line: LINE, weight: 'h', alpha: 0.7 });
  pen.path('M-8 54L-3 72C-2 75 2 75 3 72L8 54Z', { fill: '#F4F6F7', line: LINE });
  pen.path(ellipsePath(0, 74, 2, 0.8), { fill: '#5A92C4' });
  paintMark(pen, BODY, mark);
}
