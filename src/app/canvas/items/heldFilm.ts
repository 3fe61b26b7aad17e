import { CORD, FILM_LINE } from '../palette.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';

/** The opened sheath as it hangs from the fingers that hold its mouth, 50 mm wide. Millimetres, from the fingertips. */
export function paintHeldMouth(pen: Pen): void {
  pen.path('M-6 -2C-4 22 2 44 10 62C16 72 28 72 33 62C40 44 46 22 48 -2Z', { fill: down('#EAF6F9', '#C4DEE6'), fillAlpha: 0.85, line: FILM_LINE });
  pen.path('M-6 -2C2 -12 40 -12 48 -2C40 6 2 6 -6 -2Z', { fill: '#A9CBD6', fillAlpha: 0.6, line: FILM_LINE });
  pen.path('M-6 -2C2 6 40 6 48 -2L47 5C39 13 3 13 -5 5ZM-5 5L-4.4 12C4 20 38 20 46.4 12L47 5C39 13 3 13 -5 5Z', { fill: down('#F1F8FA', '#C4DEE6'), line: FILM_LINE, weight: 'd' });
  pen.path('M8 24C10 38 14 50 18 60', { line: '#FFFFFF', weight: 'd', alpha: 0.9 });
}

/** The open end of a film that is on the probe: its folds round the cord, which goes on above. Millimetres, from the fingertips. */
export function paintHeldEnd(pen: Pen): void {
  pen.path('M6 -16C8 -36 4 -58 12 -78', { line: CORD, weight: pen.weights.k * 2.4 });
  pen.path('M-8 -16H20C18 -8 22 0 19 8C23 16 18 24 20 32L17 66H-5L-8 32C-6 24 -11 16 -7 8C-10 0 -6 -8 -8 -16Z', { fill: down('#F1F8FA', '#C4DEE6'), fillAlpha: 0.9, line: FILM_LINE });
  pen.path('M-7 -8C0 -5 12 -5 19 -8M-8 8C0 11 12 11 19 8M-8 24C0 27 12 27 19 24', { line: FILM_LINE, weight: 'd', alpha: 0.8 });
  pen.path('M-8 -16C0 -20 12 -20 20 -16C12 -12 0 -12 -8 -16Z', { fill: '#A9CBD6', fillAlpha: 0.7, line: FILM_LINE, weight: 'd' });
}
