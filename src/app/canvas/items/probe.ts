import type { SurfaceMark } from '../../../core/room/picture.ts';
import { BAND, BAND_LINE, FILM_LINE } from '../palette.ts';
import { paintMark } from '../pen/hatch.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { FILM_SHADE, PROBE_SHADE } from '../pen/shades.ts';

const LINE = '#3E4A51';
const BODY = 'M-9 -70C-13 -66 -15 -58 -16 -48C-19 -30 -22.5 -20 -23 -4C-23.6 14 -22 26 -20.5 42L-19.5 54H19.5L20.5 42C22 26 23.6 14 23 -4C22.5 -20 19 -30 16 -48C15 -58 13 -66 9 -70Z';
const FILM_PATH = parsePath('M-9 -112C-12 -98 -16 -84 -20 -70C-25 -48 -29 -24 -28.5 0C-28.5 22 -27 42 -24.5 58C-24 66 -14 67.5 0 67.5C14 67.5 24 66 24.5 58C27 42 28.5 22 28.5 0C29 -24 25 -48 20 -70C16 -84 12 -98 9 -112Z');

/** Linear probe in its sheath; millimetres, the face at +y, the cord leaving at −y, the wide side to the viewer. */
export function paintProbe(pen: Pen, mark: SurfaceMark): void {
  pen.path('M-5 -96C-5.5 -88 -6.5 -78 -9 -70H9C6.5 -78 5.5 -88 5 -96Z', { fill: '#5A666D', line: LINE });
  for (let i = 0; i < 4; i++) pen.path(`M${-5.4 - i * 0.6} ${-92 + i * 6}H${5.4 + i * 0.6}`, { line: LINE, weight: 'h' });
  pen.path(BODY, { fill: PROBE_SHADE, line: LINE });
  pen.path('M-19.8 50L-19 61C-10 63.4 10 63.4 19 61L19.8 50Z', { fill: '#6B777E', line: LINE });
  pen.path('M-21.6 34C-10 37 10 37 21.6 34', { line: LINE, weight: 'h', alpha: 0.7 });
  pen.ellipse(-13, -12, 2.1, 2.1, { fill: '#6D7C86' });
  pen.path('M-11 -60C-14 -40 -17 -24 -17.6 -4', { line: '#FFFFFF', weight: 'd', alpha: 0.7 });
  pen.path(FILM_PATH, { fill: FILM_SHADE, line: FILM_LINE });
  paintMark(pen, FILM_PATH, mark, [0, 0], 0.66);
  pen.path('M-13 -100C-16 -84 -24 -60 -26 -34M12 -96C16 -82 23 -62 25.5 -40M-25 20C-22 34 -22.5 46 -21 57M8 -66C13 -52 17 -40 18 -26', { line: FILM_LINE, weight: 'h', alpha: 0.75 });
  pen.path('M-23 -14C-20 -30 -15 -50 -13 -66', { line: '#FFFFFF', weight: 'd', alpha: 0.8 });
  for (const [y, half] of [[38, 27.2], [-62, 22.2]] as const) paintBand(pen, y, half);
}

function paintBand(pen: Pen, y: number, half: number): void {
  pen.path(`M${-half} ${y - 3.2}C${-half / 2} ${y + 1.4} ${half / 2} ${y + 1.4} ${half} ${y - 3.2}V${y + 2.6}C${half / 2} ${y + 7} ${-half / 2} ${y + 7} ${-half} ${y + 2.6}Z`,
    { fill: BAND, line: BAND_LINE, weight: 'd' });
}
