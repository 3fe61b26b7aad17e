import type { ProbeDress, SurfaceMark } from '../../../core/room/picture.ts';
import { BAND, BAND_LINE, FILM_LINE } from '../palette.ts';
import { limb, smooth, type Point, type WidePoint } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { FILM_SHADE } from '../pen/shades.ts';
import { filmHalf, gapPoint, heightOf, PROBE_ENDS_M } from './probeOutline.ts';

const FILM_PATH = parsePath('M-9 -112C-12 -98 -16 -84 -20 -70C-25 -48 -29 -24 -28.5 0C-28.5 22 -27 42 -24.5 58C-24 66 -14 67.5 0 67.5C14 67.5 24 66 24.5 58C27 42 28.5 22 28.5 0C29 -24 25 -48 20 -70C16 -84 12 -98 9 -112Z');
/** Half the height of a bubble in the middle and at its ends (mm), and how many points its outline is made from. */
const BUBBLE = { middle: 2.7, end: 1.1, points: 7 } as const;
const TEAR_LINE = '#2C6673';

/** The film over the probe with what holds it and what is wrong under it; millimetres, as the probe. */
export function paintProbeFilm(pen: Pen, mark: SurfaceMark, { bands, bubbles, torn }: ProbeDress): void {
  pen.path(FILM_PATH, { fill: FILM_SHADE, line: FILM_LINE });
  paintMark(pen, FILM_PATH, mark, [0, 0], 0.66);
  pen.path('M-13 -100C-16 -84 -24 -60 -26 -34M12 -96C16 -82 23 -62 25.5 -40M-25 20C-22 34 -22.5 46 -21 57M8 -66C13 -52 17 -40 18 -26', { line: FILM_LINE, weight: 'h', alpha: 0.75 });
  pen.path('M-23 -14C-20 -30 -15 -50 -13 -66', { line: '#FFFFFF', weight: 'd', alpha: 0.8 });
  for (const { at, lengthM } of bubbles) paintBubble(pen, at, lengthM);
  for (const band of bands) if (band <= PROBE_ENDS_M) paintBand(pen, heightOf(band));
  if (torn) paintTear(pen);
}

function paintBand(pen: Pen, y: number): void {
  const half = filmHalf(y);
  pen.path(`M${-half} ${y - 3.2}C${-half / 2} ${y + 1.4} ${half / 2} ${y + 1.4} ${half} ${y - 3.2}V${y + 2.6}C${half / 2} ${y + 7} ${-half / 2} ${y + 7} ${-half} ${y + 2.6}Z`,
    { fill: BAND, line: BAND_LINE, weight: 'd' });
}

/** Air shows pale, with a bright streak on its upper side. */
function paintBubble(pen: Pen, atM: number, lengthM: number): void {
  const half = lengthM / 2;
  const along = (share: number): Point => gapPoint(atM + half * share);
  const centre = Array.from({ length: BUBBLE.points }, (_, i): WidePoint => {
    const share = (2 * i) / (BUBBLE.points - 1) - 1;
    return [...along(share * 0.9), BUBBLE.end + (BUBBLE.middle - BUBBLE.end) * Math.sqrt(1 - share * share)];
  });
  pen.path(limb(centre, 2), { fill: '#FDFEFE', fillAlpha: 0.92, line: FILM_LINE, weight: 'd' });
  pen.path(smooth([along(-0.6), along(-0.2), along(0.1)].map(([x, y]): Point => [x * 0.985, y - 0.9])), { line: '#B9D9E2', weight: 'd' });
}

/** The film has burst over the face and hangs in two tongues. */
function paintTear(pen: Pen): void {
  pen.path('M-14 66.8L-9.5 60.5L-6 63.2L-1.5 57.5L3 62L6.5 59.5L12 66.9C4 68 -6 68 -14 66.8Z', { fill: '#66737B', line: TEAR_LINE });
  pen.path('M-14 66.8L-9.5 60.5L-8.6 68.6C-9.6 72.2 -12.4 71.4 -14 66.8Z', { fill: '#E3F1F5', fillAlpha: 0.9, line: TEAR_LINE, weight: 'd' });
  pen.path('M12 66.9L6.5 59.5L6.2 68.4C7.6 72.8 10.6 71.8 12 66.9Z', { fill: '#E3F1F5', fillAlpha: 0.9, line: TEAR_LINE, weight: 'd' });
  pen.path('M-1.5 57.5L-2.6 49.5M3 62L7 53', { line: TEAR_LINE, weight: 'd' });
}
