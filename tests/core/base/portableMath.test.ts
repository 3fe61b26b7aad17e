import { describe, expect, it } from 'vitest';
import { acos, atan, atan2, cos, exp, length, log, PI, sin } from '../../../src/core/base/portableMath.ts';
import { Rng } from '../../../src/core/base/rng.ts';

/** Largest absolute error of the series within a few turns: what the first left-out term of the sine comes to at 45 degrees. */
const TOLERANCE = 2.5e-14;
const near = (value: number, expected: number, tolerance = TOLERANCE): void => expect(Math.abs(value - expected), `${value}, expected ${expected}`).toBeLessThanOrEqual(tolerance);

describe('Published values', () => {
  // Decimal expansions of constants as mathematical tables give them, to the last digit that a double holds.
  it.each([
    [1, 0.8414709848078965, 0.5403023058681398],
    [0.5, 0.479425538604203, 0.8775825618903728],
    [2, 0.9092974268256817, -0.4161468365471424],
    [10, -0.5440211108893698, -0.8390715290764524],
    [100, -0.5063656411097588, 0.8623188722876839],
  ])('of sine and cosine at %d', (x, sine, cosine) => {
    near(sin(x), sine);
    near(cos(x), cosine);
  });

  it('of e to a power', () => {
    near(exp(1), 2.718281828459045);
    near(exp(-1), 0.36787944117144233);
    near(exp(0.5), 1.6487212707001282);
    near(exp(10) / 22026.465794806718, 1);
    near(exp(-20) / 2.061153622438558e-9, 1);
    expect(exp(0)).toBe(1);
  });

  it('of the natural logarithm', () => {
    near(log(2), 0.6931471805599453);
    near(log(10), 2.302585092994046);
    near(log(0.5), -0.6931471805599453);
    near(log(1e-20) / -46.05170185988092, 1);
    near(log(1e300) / 690.7755278982137, 1);
    near(log(1.0001), 0.000099995000333308, 1e-16);
    expect(log(1)).toBe(0);
  });

  it('of the arc functions', () => {
    near(atan(1), 0.7853981633974483);
    near(atan(0.5), 0.46364760900080615);
    near(atan(2), 1.1071487177940904);
    near(acos(0.5), 1.0471975511965979);
    near(acos(-1), 3.141592653589793);
    near(acos(0), 1.5707963267948966);
  });
});

describe('Exact cases', () => {
  it('at the quarters of the circle', () => {
    expect(sin(0)).toBe(0);
    expect(cos(0)).toBe(1);
    for (let quarter = -8; quarter <= 8; quarter++) {
      near(sin((quarter * PI) / 2), [0, 1, 0, -1][((quarter % 4) + 4) % 4]!);
      near(cos((quarter * PI) / 2), [1, 0, -1, 0][((quarter % 4) + 4) % 4]!);
    }
  });

  it('angles of points in every direction', () => {
    expect(atan2(0, 0)).toBe(0);
    expect(atan2(0, 1)).toBe(0);
    expect(atan2(0, -1)).toBe(PI);
    expect(atan2(1, 0)).toBe(PI / 2);
    expect(atan2(-1, 0)).toBe(-PI / 2);
    near(atan2(1, -1), (3 * PI) / 4);
    near(atan2(-1, -1), (-3 * PI) / 4);
  });

  it('beyond the range of a cosine', () => {
    expect(acos(1.0000001)).toBe(0);
    expect(acos(-1.0000001)).toBe(PI);
  });

  it('length of whole triangles', () => {
    expect(length(3, 4)).toBe(5);
    expect(length(-8, 15)).toBe(17);
  });
});

describe('Identities and the engine’s own functions', () => {
  const rng = new Rng(1);
  const some = (count: number, low: number, high: number): number[] => Array.from({ length: count }, () => rng.between(low, high));

  it('sine and cosine, for many turns', () => {
    for (const x of some(4000, -30, 30)) {
      near(sin(x), Math.sin(x));
      near(cos(x), Math.cos(x));
      near(sin(x) * sin(x) + cos(x) * cos(x), 1, 4 * TOLERANCE);
      expect(sin(-x) + sin(x)).toBeCloseTo(0, 14);
    }
    // Far out the reduction to one quarter costs digits.
    for (const x of some(1000, -1e4, 1e4)) {
      near(sin(x), Math.sin(x), 2e-12);
      near(cos(x), Math.cos(x), 2e-12);
    }
  });

  it('arc functions', () => {
    for (const x of some(2000, -50, 50)) {
      near(atan(x), Math.atan(x));
      expect(atan(-x)).toBe(-atan(x));
      const y = rng.between(-50, 50);
      near(atan2(y, x), Math.atan2(y, x));
    }
    for (const x of some(2000, -1, 1)) near(acos(x), Math.acos(x));
  });

  it('logarithm, relative to its size', () => {
    for (const x of some(2000, 1e-6, 1)) near(log(x) / Math.log(x), 1, 1e-14);
    for (const x of some(2000, 1.5, 1e9)) near(log(x) / Math.log(x), 1, 1e-14);
    for (const x of some(200, -20, 20)) near(log(exp(x)), x);
  });

  it('e to a power, relative to its size', () => {
    for (const x of some(2000, -100, 100)) near(exp(x) / Math.exp(x), 1, 1e-13);
    for (const x of some(200, -10, 10)) near(exp(x) * exp(-x), 1);
  });
});
