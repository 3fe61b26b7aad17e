import type { Point } from '../pen/curves.ts';

/** A place on a line, and the unit vector along it there. */
export interface Along {
  readonly at: Point;
  readonly t: Point;
}

/** Length of each stretch of a line. */
const lengths = (line: readonly Point[]): number[] => line.slice(1).map(([x, y], i) => Math.hypot(x - line[i]![0], y - line[i]![1]));

/** Length of a line. */
export const lengthOf = (line: readonly Point[]): number => lengths(line).reduce((sum, length) => sum + length, 0);

/** The place so far from the beginning of a line, at most its end; before its beginning where `far` is negative. */
export function alongLine(line: readonly Point[], far: number): Along {
  const all = lengths(line);
  let left = far;
  let i = 0;
  while (i < all.length - 1 && left > all[i]!) left -= all[i++]!;
  const [[ax, ay], [bx, by]] = [line[i]!, line[Math.min(i + 1, line.length - 1)]!];
  const length = all[i] || 1;
  const t: Point = [(bx - ax) / length, (by - ay) / length];
  const way = Math.min(left, length);
  return { at: [ax + t[0] * way, ay + t[1] * way], t };
}

/** A line in two, cut after so many stretches, which may be a fraction. Both have the point of the cut. */
export function cutLine(line: readonly Point[], stretches: number): readonly [Point[], Point[]] {
  const whole = Math.floor(stretches + 1e-6);
  const part = Math.max(0, stretches - whole);
  const [from, to] = [line[whole], line[whole + 1]];
  if (from === undefined || to === undefined) return [[...line], line.slice(-1)];
  if (part < 1e-6) return [line.slice(0, whole + 1), line.slice(whole)];
  const cut: Point = [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part];
  return [[...line.slice(0, whole + 1), cut], [cut, ...line.slice(whole + 1)]];
}
