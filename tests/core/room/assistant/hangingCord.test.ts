import { describe, expect, it } from 'vitest';
import { hangingAt } from '../../../../src/core/room/assistant/hangingCord.ts';

/** The catenary y = a cosh(x / a), with s = a sinh(x / a) from its lowest point (textbook statics). */
const catenary = (a: number, x: number): { x: number; y: number; s: number } => ({ x, y: a * Math.cosh(x / a), s: a * Math.sinh(x / a) });

describe('A cord that hangs between two places', () => {
  it.each([
    [1, -1, 1],
    [0.2, -0.3, 0.15],
    [0.05, -0.12, 0.2],
    [0.4, 0.1, 0.5],
  ])('is the catenary with a = %f from x = %f to %f', (a, left, right) => {
    const [from, to] = [catenary(a, left), catenary(a, right)];
    for (const share of [0, 0.2, 0.5, 0.9, 1]) {
      const at = catenary(a, left + (right - left) * share);
      const rightwards = hangingAt(from, to, to.s - from.s, at.s - from.s);
      expect(rightwards.x).toBeCloseTo(at.x, 9);
      expect(rightwards.y).toBeCloseTo(at.y, 9);
      const back = hangingAt(to, from, to.s - from.s, to.s - at.s);
      expect(back.x).toBeCloseTo(at.x, 9);
      expect(back.y).toBeCloseTo(at.y, 9);
    }
  });

  it('is straight where it is no longer than the way, and a loop under ends at one place', () => {
    expect(hangingAt({ x: 0, y: 0 }, { x: 0.3, y: 0.4 }, 0.5, 0.25)).toEqual({ x: 0.15, y: 0.2 });
    const middle = hangingAt({ x: 1, y: 1 }, { x: 1, y: 1 }, 1, 0.5);
    expect(middle.x).toBeCloseTo(1, 2);
    expect(middle.y).toBeCloseTo(0.5, 2);
  });
});
