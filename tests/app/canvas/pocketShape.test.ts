import { describe, expect, it } from 'vitest';
import { alongLine, cutLine, lengthOf } from '../../../src/app/canvas/strands/along.ts';
import { bunchLength } from '../../../src/app/canvas/strands/filmBunch.ts';
import { collarHeight, edgeAt } from '../../../src/app/canvas/strands/pocketFolds.ts';
import { gelLevel } from '../../../src/app/canvas/strands/pocketGel.ts';
import { pocketShape } from '../../../src/app/canvas/strands/pocketShape.ts';
import type { Point } from '../../../src/app/canvas/pen/curves.ts';

/** A pocket 10 cm wide and 20 cm deep with square corners, a node every centimetre, in metres. */
const nodes: Point[] = [
  ...Array.from({ length: 20 }, (_, i): Point => [-0.05, 1.2 - i / 100]),
  ...Array.from({ length: 11 }, (_, i): Point => [-0.05 + i / 100, 1]),
  ...Array.from({ length: 20 }, (_, i): Point => [0.05, 1.01 + i / 100]),
];
const shape = pocketShape({ x: Float64Array.from(nodes, ([x]) => x), y: Float64Array.from(nodes, ([, y]) => y) });

describe('a line', () => {
  const line: Point[] = [[0, 0], [3, 4], [3, 10]];

  it('has the length of its stretches, and its places lie that far along it', () => {
    expect(lengthOf(line)).toBeCloseTo(11);
    expect(alongLine(line, 2.5).at).toEqual([1.5, 2]);
    expect(alongLine(line, 8).at[1]).toBeCloseTo(7);
    expect(alongLine(line, 8).t).toEqual([0, 1]);
    expect(alongLine(line, 99).at).toEqual([3, 10]);
  });

  it('is cut where it is said, within a stretch as well as at a node', () => {
    for (const stretches of [0, 0.4, 1, 1.75]) {
      const [one, other] = cutLine(line, stretches);
      expect(lengthOf(one) + lengthOf(other)).toBeCloseTo(11);
      expect(one.at(-1)).toEqual(other[0]);
    }
    expect(cutLine(line, 1)).toEqual([line.slice(0, 2), line.slice(1)]);
    expect(lengthOf(cutLine(line, 1.5)[0])).toBeCloseTo(8);
    expect(cutLine(line, 2)).toEqual([line, line.slice(2)]);
  });
});

describe('the opened sheath', () => {
  it('has two walls as long as each other that meet at the closed end', () => {
    const [one, other] = shape.walls.map(lengthOf);
    expect(one).toBeCloseTo(25);
    expect(other).toBeCloseTo(25);
    expect(shape.walls[0].at(-1)).toEqual(shape.walls[1].at(-1));
    expect(shape.down[1]).toBeCloseTo(-1);
  });

  it('opens towards the viewer: the near rim hangs below the far one', () => {
    const [left, right] = [shape.line[0]!, shape.line.at(-1)!];
    expect(shape.across(left, right)[4]![1]).toBeLessThan(120);
    expect(shape.across(left, right, -1)[4]![1]).toBeGreaterThan(120);
  });

  it('is filled by gel as a trough is: volume over width and depth', () => {
    // 1.2 cm is how far the walls stand apart in the drawing.
    for (const ml of [3, 6, 12]) expect(gelLevel(shape.line, ml) - 100).toBeCloseTo(ml / (10 * 1.2), 3);
  });

  it('has fewer folds the more is paid out, and never more than fit on a wall', () => {
    expect(collarHeight(shape, 0)).toBe(0);
    expect(collarHeight(shape, 0.5)).toBeLessThan(collarHeight(shape, 1));
    expect(collarHeight(shape, 50)).toBeLessThan(25 / 2);
    expect(bunchLength(0)).toBe(0);
    expect(bunchLength(0.4)).toBeLessThan(bunchLength(1));
  });

  it('has the fold over the fingers at the edge where the hand is', () => {
    const at = (x: number, c: number): 0 | 1 => edgeAt(shape.line, { x, y: 1.2, c, s: 0, gripAlong: 0.085 });
    expect(at(-0.14, 1)).toBe(0);
    expect(at(0.14, -1)).toBe(1);
  });
});
