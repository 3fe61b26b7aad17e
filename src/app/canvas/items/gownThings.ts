import type { SurfaceMark } from '../../../core/room/picture.ts';
import { CLOTH_SHADE, INSIDE } from '../gown/colours.ts';
import { GLOVE_LINE, GOWN_LINE } from '../palette.ts';
import { paintMark } from '../pen/hatch.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { CUFF_SHADE, GLOVE_SHADE } from '../pen/shades.ts';

const PACKET = parsePath('M-148 -30C-152 -10 -152 14 -146 30H146C152 14 152 -10 148 -30Z');
const NECK = parsePath('M-58 30C-52 46 -26 50 0 50C26 50 52 46 58 30C36 20 20 17 0 17C-20 17 -36 20 -58 30Z');
const GLOVE = parsePath('M-60 -26C-30 -30 0 -34 24 -34C40 -40 62 -44 70 -38C74 -33 58 -29 46 -27C80 -29 118 -32 130 -27C134 -22 128 -17 96 -16C116 -16 136 -15 140 -8C141 -2 134 0 98 -1C116 0 134 3 136 10C136 16 126 17 94 14C108 17 120 21 120 27C118 32 108 31 84 27C60 32 10 31 -60 26Z');
const CUFF = parsePath('M-140 -33C-116 -37 -84 -33 -56 -28L-56 28C-84 33 -116 37 -140 33C-137 12 -137 -12 -140 -33Z');
const CARD = parsePath('M-50 -12H50V12H-50Z');

/** A gown folded with its inside out, the neck on top in the middle. Millimetres, 300 by 60. */
export function paintGownPacket(pen: Pen, mark: SurfaceMark): void {
  pen.path(PACKET, { fill: CLOTH_SHADE, line: GOWN_LINE });
  pen.path('M-146 -14C-60 -10 60 -10 146 -14M-148 2C-60 6 60 6 148 2M-146 17C-80 20 -60 21 -52 24M146 17C80 20 60 21 52 24', { line: GOWN_LINE, weight: 'd', alpha: 0.8 });
  pen.path(NECK, { fill: INSIDE, line: GOWN_LINE });
  pen.path('M-40 34C-20 25 20 25 40 34', { line: GOWN_LINE, weight: 'd' });
  pen.path('M58 30C76 26 88 30 96 24', { line: GOWN_LINE, weight: 2 });
  paintMark(pen, PACKET, mark);
}

/** A glove lying flat, its cuff folded back. Millimetres, 280 long, its fingers along +x. */
export function paintGlove(pen: Pen, mark: SurfaceMark): void {
  pen.path(GLOVE, { fill: GLOVE_SHADE, line: GLOVE_LINE });
  pen.path(CUFF, { fill: CUFF_SHADE, line: GLOVE_LINE });
  pen.path('M-132 -31C-129 -12 -129 12 -132 31M-64 -26C-61 -10 -61 10 -64 26', { line: GLOVE_LINE, weight: 'd', alpha: 0.7 });
  paintMark(pen, GLOVE, mark);
  paintMark(pen, CUFF, mark);
}

/** The card on the outer tie: the operator's half plain, the other printed over. Millimetres. */
export function paintTieCard(pen: Pen, mark: SurfaceMark): void {
  pen.path('M-50 0C-62 2 -68 -6 -78 -2M50 0C60 4 66 -4 74 1', { line: GOWN_LINE, weight: 3 });
  pen.path(CARD, { fill: '#FBFBF7', line: '#5E6E77' });
  pen.path('M4 -12H50V12H4Z', { fill: '#E9D6D2', line: '#5E6E77', weight: 'd' });
  pen.path('M14 0H40M33 -6L41 0L33 6', { line: '#7A3B30', weight: 'd' });
  paintMark(pen, CARD, mark);
}
