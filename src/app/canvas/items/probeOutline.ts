import type { Point } from '../pen/curves.ts';

/** Place of the middle of the face on the axis of the drawn probe, and millimetres of the drawing for a metre of the thing. */
const FACE_Y = 62;
const PER_M = 1000;
/** Of a way along the outline, which runs across as well, so many millimetres are drawn for a metre. */
const OUTLINE_PER_M = 1100;
/** The head and the handle end here; what is further from the face lies on the cord. Metres from the face. */
export const PROBE_ENDS_M = 0.155;
/** Where the cord begins. Metres from the face. */
export const CORD_FROM_FACE_M = 0.124;

/** Half widths of the film along the axis, from the cord to the face, in millimetres of the drawing. */
const FILM_HALVES: readonly Point[] = [[-112, 9], [-98, 12.4], [-84, 16.3], [-70, 20.2], [-62, 22.2], [-40, 25.6], [0, 28.6], [38, 27.2], [58, 24.5]];
/** Between housing and film, from the middle of the face up one flank to the cord. */
const GAP: readonly Point[] = [[0, 65.3], [10, 65.1], [18, 64.2], [21.4, 61], [22.2, 54], [23.4, 40], [25.4, 20], [25.8, 0], [24.8, -16], [21.6, -34], [18.2, -54], [14.4, -70], [10, -88], [7, -104]];

/** Height on the drawing of a place at that distance from the face along the probe (m). */
export const heightOf = (alongM: number): number => FACE_Y - alongM * PER_M;

/** Half width of the film at a height of the drawing (mm). */
export function filmHalf(y: number): number {
  const after = FILM_HALVES.findIndex(([height]) => height >= y);
  if (after <= 0) return FILM_HALVES.at(after)![1];
  const [[y0, a], [y1, b]] = [FILM_HALVES[after - 1]!, FILM_HALVES[after]!];
  return a + ((b - a) * (y - y0)) / (y1 - y0);
}

/**
 * Point in the gap between housing and film (mm of the drawing) at a distance from the middle of the face along the outline (m):
 * positive up the flank on the thing's +y side, negative up the other one.
 */
export function gapPoint(atM: number): Point {
  const side = atM < 0 ? 1 : -1;
  let left = Math.abs(atM) * OUTLINE_PER_M;
  for (let i = 1; i < GAP.length; i++) {
    const [[ax, ay], [bx, by]] = [GAP[i - 1]!, GAP[i]!];
    const length = Math.hypot(bx - ax, by - ay);
    if (left <= length) return [side * (ax + ((bx - ax) * left) / length), ay + ((by - ay) * left) / length];
    left -= length;
  }
  const [x, y] = GAP.at(-1)!;
  return [side * x, y];
}
