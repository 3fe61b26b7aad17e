import type { Point } from '../pen/curves.ts';

/** Things go back towards this point, in centimetres of the room. */
const VANISHING: Point = [0, 150];
/** Size of the far edge as part of the near one. */
const FAR = 0.932;

export function recede(points: readonly Point[], factor = FAR): Point[] {
  return points.map(([x, y]) => [VANISHING[0] + (x - VANISHING[0]) * factor, VANISHING[1] + (y - VANISHING[1]) * factor]);
}
