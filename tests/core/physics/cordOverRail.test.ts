import { describe, expect, it } from 'vitest';
import { capstanRatio } from '../../support/physics/references.ts';
import { pullOverRail } from '../../support/physics/strandExperiments.ts';

const cases = [0.015, 0.05].flatMap((radius) => [0.2, 0.3].flatMap((friction) => [0.5, 2, 5].map((pullN) => [radius, friction, pullN] as const)));

describe('a cord over half a round rail', () => {
  it.each(cases)('(radius %f m, friction %f, %f N) slips within 5 % of the capstan ratio e^(µπ)', (radius, friction, pullN) => {
    const ratio = capstanRatio(friction);
    expect(Math.abs(pullOverRail(friction, 0.95 * ratio, radius, pullN))).toBeLessThan(0.008);
    expect(pullOverRail(friction, 1.05 * ratio, radius, pullN)).toBeGreaterThan(0.008);
  });
});
