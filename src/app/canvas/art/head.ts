import type { SurfaceMark } from '../../../core/room/picture.ts';
import { GOWN_LINE } from '../palette.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { down, type Shade } from '../pen/shade.ts';
import { CAP_SHADE, MASK_SHADE } from '../pen/shades.ts';

/** Colours of one person's face. */
export interface Complexion {
  readonly shade: Shade;
  readonly line: string;
  readonly brow: string;
}
export const OPERATOR_FACE: Complexion = { shade: down('#B58660', '#966542'), line: '#5F3B25', brow: '#2E1E14' };
export const ASSISTANT_FACE: Complexion = { shade: down('#E8C7AB', '#D3A988'), line: '#855E45', brow: '#6B4B34' };

const CAP = 'M-8 3.4C-8.6 9.5 -5.4 13.6 0 13.6C5.4 13.6 8.6 9.5 8 3.4C5 5.2 -5 5.2 -8 3.4Z';
const MASK = 'M-6.7 -1.6C-4 -.6 -2.2 .4 0 .6C2.2 .4 4 -.6 6.7 -1.6C6.9 -4.4 6 -7.6 4.4 -9.6C3 -11.2 1.6 -11.9 0 -11.9C-1.6 -11.9 -3 -11.2 -4.4 -9.6C-6 -7.6 -6.9 -4.4 -6.7 -1.6Z';
const MASK_LINE = '#5F7C88';
const SHIELD_LINE = '#5E7884';

/** Head with cap, mask and eye shield; the pen's frame is in centimetres with the origin in the middle of the face. */
export function paintHead(pen: Pen, face: Complexion, mark: SurfaceMark): void {
  paintNeckAndFace(pen, face);
  for (const side of [-1, 1]) paintEye(pen, face, side);
  paintMask(pen);
  paintMark(pen, MASK, mark);
  paintCap(pen);
  paintMark(pen, CAP, mark);
  pen.path('M-6.8 3C-4.6 3.9 -1.2 3.6 0 2.8C1.2 3.6 4.6 3.9 6.8 3C7.1 1 6.4 -.7 4.4 -1C2.4 -1.2 1 -.4 0 .8C-1 -.4 -2.4 -1.2 -4.4 -1C-6.4 -.7 -7.1 1 -6.8 3Z',
    { fill: '#DDEBF0', fillAlpha: 0.28, line: SHIELD_LINE, weight: 'd' });
  pen.path('M-6.8 2.6L-8.2 2.2M6.8 2.6L8.2 2.2', { line: SHIELD_LINE, weight: 'd' });
}

function paintNeckAndFace(pen: Pen, { shade, line }: Complexion): void {
  pen.path('M-5.2 -8C-5.4 -12 -6 -14.4 -7.6 -15.4C-6 -18.6 -3 -20.4 0 -20.4C3 -20.4 6 -18.6 7.6 -15.4C6 -14.4 5.4 -12 5.2 -8Z', { fill: shade, line });
  pen.path('M-5 -9.6C-2 -12.6 2 -12.6 5 -9.6L5.6 -14C2 -11.6 -2 -11.6 -5.6 -14Z', { fill: line, alpha: 0.28 });
  for (const side of [-1, 1]) {
    pen.path(`M${side * 7.2} 1.6C${side * 8.8} 2.4 ${side * 9} -.6 ${side * 8.4} -2.6C${side * 8} -3.8 ${side * 7.2} -3.6 ${side * 7} -2.6Z`, { fill: shade, line, weight: 'd' });
  }
  pen.path('M-7.5 6C-7.8 1 -7.4 -3 -6.2 -6C-5 -9 -2.6 -11.2 0 -11.2C2.6 -11.2 5 -9 6.2 -6C7.4 -3 7.8 1 7.5 6Z', { fill: shade, line });
}

/** Brow and lowered lid: the person looks at the field. */
function paintEye(pen: Pen, { line, brow }: Complexion, side: number): void {
  const x = (value: number): number => side * value;
  pen.path(`M${x(1.5)} 3.1C${x(2.6)} 3.9 ${x(4.4)} 3.9 ${x(5.4)} 3`, { line: brow });
  pen.path(`M${x(1.7)} .9C${x(2.6)} 1.7 ${x(4.2)} 1.7 ${x(5)} .8C${x(4.2)} .1 ${x(2.6)} 0 ${x(1.7)} .9Z`, { fill: '#F4EFE8' });
  pen.ellipse(x(3.3), 0.62, 0.62, 0.6, { fill: '#33241A' });
  pen.path(`M${x(1.6)} .9C${x(2.6)} 1.75 ${x(4.2)} 1.75 ${x(5.1)} .8`, { line: '#2A1C13', weight: 'd' });
  pen.path(`M${x(2)} 2C${x(3)} 2.4 ${x(4)} 2.4 ${x(4.8)} 1.9`, { line, weight: 'h', alpha: 0.7 });
}

function paintMask(pen: Pen): void {
  pen.path('M-6.5 -4.2C-8 -2.4 -8.2 -1 -8.3 0M6.5 -4.2C8 -2.4 8.2 -1 8.3 0', { line: '#8FA5AE', weight: 'd' });
  pen.path(MASK, { fill: MASK_SHADE, line: MASK_LINE });
  pen.path('M-6.5 -4C-3 -3 3 -3 6.5 -4M-5.9 -6.6C-3 -5.8 3 -5.8 5.9 -6.6M-4.6 -9.2C-2 -8.6 2 -8.6 4.6 -9.2', { line: '#7B97A2', weight: 'h' });
  pen.path('M-2.6 -.2C-1 .5 1 .5 2.6 -.2', { line: MASK_LINE });
}

function paintCap(pen: Pen): void {
  pen.path(CAP, { fill: CAP_SHADE, line: GOWN_LINE });
  pen.path('M-8 3.4C-5 5.2 5 5.2 8 3.4L8.1 5C5 6.9 -5 6.9 -8.1 5Z', { fill: '#97B3C2', line: GOWN_LINE, weight: 'd' });
  pen.path('M-5 12C-3.6 10.4 -3.4 8.8 -3.8 7.2M3.4 12.6C2.8 10.8 3 9 3.8 7.4M0 13.4C-.4 12 -.2 11 0 10', { line: GOWN_LINE, weight: 'h', alpha: 0.6 });
}
