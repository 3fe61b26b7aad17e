import { describe, expect, it } from 'vitest';
import { Rng } from '../../../../src/core/base/rng.ts';
import { alongReach, planReach, type ReachPath } from '../../../../src/core/room/assistant/reachPath.ts';

const straight = (steps: number): ReachPath => ({ startX: 0, startY: 0, startStep: 0, steps, bendM: 0 });

describe('A reach', () => {
  // Flash and Hogan 1985: x(t) = x0 + d (10 t³ − 15 t⁴ + 6 t⁵); the peak speed, at half time, is 15/8 of the mean.
  it('follows the minimum-jerk profile, with a peak of 1.875 times the mean speed', () => {
    const path = straight(600);
    let peak = 0;
    for (let k = 1; k <= 600; k++) {
      const t = k / 600;
      const [x] = alongReach(path, k, 0.3, 0.4);
      expect(x).toBeCloseTo(0.3 * (10 * t ** 3 - 15 * t ** 4 + 6 * t ** 5), 12);
      const before = alongReach(path, k - 1, 0.3, 0.4);
      const now = alongReach(path, k, 0.3, 0.4);
      peak = Math.max(peak, Math.hypot(now[0] - before[0], now[1] - before[1]) * 600);
    }
    expect(peak / 0.5).toBeCloseTo(15 / 8, 4);
  });

  it('meets what it goes for wherever that has moved meanwhile', () => {
    const path = { ...straight(120), bendM: 0.05 };
    expect(alongReach(path, 0, 9, 9)).toEqual([0, 0]);
    const end = alongReach(path, 120, 0.31, -0.2);
    expect(end[0]).toBeCloseTo(0.31, 12);
    expect(end[1]).toBeCloseTo(-0.2, 12);
  });

  it('differs from one to the next, and the clumsier the more, but not for the same seed', () => {
    const bends = (skill: number, seed: number): number[] => {
      const rng = new Rng(seed);
      return Array.from({ length: 40 }, () => planReach(rng, skill, 0, [0, 0], [0.4, 0]).bendM);
    };
    const widest = (skill: number): number => Math.max(...bends(skill, 5).map(Math.abs));
    expect(new Set(bends(0.9, 5)).size).toBe(40);
    expect(bends(0.9, 5)).toEqual(bends(0.9, 5));
    expect(widest(0)).toBeGreaterThan(2 * widest(0.9));
    expect(widest(1)).toBeLessThan(0.025);
  });
});
