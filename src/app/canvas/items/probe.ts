import type { ProbeDress, SurfaceMark } from '../../../core/room/picture.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { PROBE_SHADE } from '../pen/shades.ts';
import { paintProbeFilm } from './probeFilm.ts';

const LINE = '#3E4A51';
const BODY = 'M-9 -70C-13 -66 -15 -58 -16 -48C-19 -30 -22.5 -20 -23 -4C-23.6 14 -22 26 -20.5 42L-19.5 54H19.5L20.5 42C22 26 23.6 14 23 -4C22.5 -20 19 -30 16 -48C15 -58 13 -66 9 -70Z';
const LENS = 'M-19.8 50L-19 61C-10 63.4 10 63.4 19 61L19.8 50Z';
const WHOLE = 'M-5 -96C-5.5 -88 -6.5 -78 -9 -70C-13 -66 -15 -58 -16 -48C-19 -30 -22.5 -20 -23 -4C-23.6 14 -22 26 -20.5 42L-19 61C-10 63.4 10 63.4 19 61L20.5 42C22 26 23.6 14 23 -4C22.5 -20 19 -30 16 -48C15 -58 13 -66 9 -70C6.5 -78 5.5 -88 5 -96Z';

/** Linear probe, bare or in its film; millimetres, the face at +y, the cord leaving at −y, the wide side to the viewer. */
export function paintProbe(pen: Pen, mark: SurfaceMark, dress: ProbeDress | null): void {
  pen.path('M-5 -96C-5.5 -88 -6.5 -78 -9 -70H9C6.5 -78 5.5 -88 5 -96Z', { fill: '#5A666D', line: LINE });
  for (let i = 0; i < 4; i++) pen.path(`M${-5.4 - i * 0.6} ${-92 + i * 6}H${5.4 + i * 0.6}`, { line: LINE, weight: 'h' });
  pen.path(BODY, { fill: PROBE_SHADE, line: LINE });
  pen.path(LENS, { fill: '#6B777E', line: LINE });
  pen.path('M-21.6 34C-10 37 10 37 21.6 34', { line: LINE, weight: 'h', alpha: 0.7 });
  pen.ellipse(-13, -12, 2.1, 2.1, { fill: '#6D7C86' });
  pen.path('M-11 -60C-14 -40 -17 -24 -17.6 -4', { line: '#FFFFFF', weight: 'd', alpha: 0.7 });
  if (dress === null) paintMark(pen, WHOLE, mark);
  else paintProbeFilm(pen, mark, dress);
}
