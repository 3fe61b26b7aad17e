import type { StrandPicture } from '../../../core/room/picture.ts';
import type { Point } from '../pen/curves.ts';
import { strandLine } from './strandLine.ts';

/** How far the two rims of the mouth stand off the line between its edges, as part of its width, and at most (cm). */
const RIM_SHARE = 0.17;
const RIM_MOST_CM = 2.2;

/** The opened sheath as it is drawn; everything in centimetres of the room. */
export interface PocketShape {
  /** From one edge of the mouth over the closed end to the other. */
  readonly line: readonly Point[];
  /** Index of the closed end. */
  readonly end: number;
  /** Both walls from the mouth to the closed end. */
  readonly walls: readonly [readonly Point[], readonly Point[]];
  /** Unit vector from the mouth to the closed end. */
  readonly down: Point;
  /** Arc between two points across the pocket, towards the closed end; with −1 away from it. */
  across(from: Point, to: Point, way?: 1 | -1): Point[];
}

/** The shape of a pocket from its strand. */
export function pocketShape(strand: Pick<StrandPicture, 'x' | 'y'>): PocketShape {
  const line = strandLine(strand);
  const end = (line.length - 1) >> 1;
  const walls = [line.slice(0, end + 1), line.slice(end).reverse()] as const;
  const [[ax, ay], [bx, by], [ex, ey]] = [line[0]!, line.at(-1)!, line[end]!];
  const [dx, dy] = [ex - (ax + bx) / 2, ey - (ay + by) / 2];
  const length = Math.hypot(dx, dy) || 1;
  const down: Point = [dx / length, dy / length];
  const across = (from: Point, to: Point, way: 1 | -1 = 1): Point[] => {
    const sag = way * Math.min(RIM_MOST_CM, RIM_SHARE * Math.hypot(to[0] - from[0], to[1] - from[1]));
    return Array.from({ length: 9 }, (_, i): Point => {
      const part = i / 8;
      const off = sag * 4 * part * (1 - part);
      return [from[0] + (to[0] - from[0]) * part + down[0] * off, from[1] + (to[1] - from[1]) * part + down[1] * off];
    });
  };
  return { line, end, walls, down, across };
}

/** Points all over the pocket, near enough to each other for the cells that it covers. */
export function pocketPoints({ line, across }: PocketShape): Point[] {
  const inner = line.slice(0, line.length >> 1).flatMap((point, i) => across(point, line.at(-1 - i)!));
  return [...line, ...inner, ...across(line[0]!, line.at(-1)!, -1)];
}
