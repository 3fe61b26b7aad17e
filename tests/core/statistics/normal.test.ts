import { describe, expect, it } from 'vitest';
import { detection, logLinearRate } from '../../../src/core/statistics/detection.ts';
import { probit } from '../../../src/core/statistics/normal.ts';
import { jstat } from '../../support/jstat.ts';

describe('The quantile of the normal distribution', () => {
  // Tables of the normal distribution (Abramowitz and Stegun, table 26.5, and the test values that come with AS 241; from memory).
  it.each([
    [0.5, 0],
    [0.75, 0.6744897501960817],
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514722],
    [0.975, 1.959963984540054],
    [0.995, 2.5758293035489004],
    [0.001, -3.090232306167813],
    [1e-20, -9.262340089798409],
  ])('at %d', (p, z) => {
    expect(Math.abs(probit(p) - z)).toBeLessThan(4e-15 * Math.max(1, Math.abs(z) * 2));
  });

  it('agrees with another library, and undoes its distribution', () => {
    for (let k = 1; k < 200; k++) {
      const p = k / 200;
      expect(Math.abs(probit(p) - jstat.normal.inv(p, 0, 1)), `${p}`).toBeLessThan(1e-10);
      expect(jstat.normal.cdf(probit(p), 0, 1)).toBeCloseTo(p, 12);
    }
  });

  it('is odd about one half', () => {
    for (const p of [0.01, 0.1, 0.3, 0.49]) expect(probit(p) + probit(1 - p)).toBeCloseTo(0, 13);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('has none at %d', (p) => {
    expect(() => probit(p)).toThrow('lies between 0 and 1');
  });
});

describe('Signal detection', () => {
  // Macmillan and Creelman, Detection Theory, chapter 1 (from memory), and a lecture that gives 1.8 for .70 and .10.
  it.each([
    [0.69, 0.31, 0.992],
    [0.89, 0.59, 0.999],
    [0.7, 0.1, 1.806],
  ])('d′ of hits %d and false alarms %d', (hits, alarms, dPrime) => {
    expect(detection(hits, alarms).dPrime).toBeCloseTo(dPrime, 3);
  });

  it('has no bias where misses and false alarms are alike, and is quick to report where alarms are many', () => {
    expect(detection(0.69, 0.31).criterion).toBeCloseTo(0, 12);
    expect(detection(0.89, 0.59).criterion).toBeLessThan(0);
    expect(detection(0.4, 0.05).criterion).toBeGreaterThan(0);
  });

  // Hautus 1995: half a case is added to each count and one to each number of trials, always. 9 hits and 1 miss, 2 false alarms of 9
  // (own arithmetic on that formula; a package that divides by n + 1.5 gives 1.65 and is wrong).
  it('with the log-linear correction: 9 of 10 and 2 of 9', () => {
    expect(detection(logLinearRate(9, 10), logLinearRate(2, 9)).dPrime).toBeCloseTo(1.771, 3);
    expect(detection(logLinearRate(9, 10), logLinearRate(2, 9)).dPrime).not.toBeCloseTo(1.65, 1);
  });

  it('keeps none and all off 0 and 1', () => {
    expect([logLinearRate(0, 4), logLinearRate(4, 4)]).toEqual([0.1, 0.9]);
    expect(logLinearRate(0, 0)).toBe(0.5);
  });
});
