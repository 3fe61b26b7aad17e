import { describe, expect, it } from 'vitest';
import { garwood, wilson } from '../../../src/core/statistics/intervals.ts';
import { jstat } from '../../support/jstat.ts';

describe('Wilson’s interval of a share', () => {
  // Newcombe, Statistics in Medicine 1998;17:857-872, table I, method 3 (figures from memory).
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%d of %d: Newcombe 1998', (count, of, low, high) => {
    const interval = wilson(count, of);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
    expect(interval.share).toBe(count / of);
  });

  // Two shares as a paper prints them with their intervals: PMC8990194, abstract: 36 % to 45 % and 30 % to 41 %.
  it.each([
    [174, 432, 36, 45],
    [103, 294, 30, 41],
  ])('%d of %d as a paper gives it', (count, of, low, high) => {
    const interval = wilson(count, of);
    expect([Math.round(interval.low * 100), Math.round(interval.high * 100)]).toEqual([low, high]);
  });

  it('of ten clean out of ten is still only above 72 %', () => {
    expect(wilson(10, 10).low).toBeCloseTo(0.7225, 4);
    expect(wilson(10, 10).high).toBe(1);
  });

  it('of nothing is everything, and of none or all never leaves 0 to 1', () => {
    expect(wilson(0, 0)).toEqual({ count: 0, of: 0, share: null, low: 0, high: 1 });
    for (let of = 1; of < 40; of++)
      for (let count = 0; count <= of; count++) {
        const { low, high, share } = wilson(count, of);
        expect(low >= 0 && low <= share! && share! <= high && high <= 1, `${count} of ${of}`).toBe(true);
      }
  });

  it('is the score interval: at its ends the z test just rejects', () => {
    const z = jstat.normal.inv(0.975, 0, 1);
    for (const [count, of] of [[3, 7], [12, 40], [1, 9]] as const)
      for (const p of [wilson(count, of).low, wilson(count, of).high]) expect(Math.abs(count / of - p) / Math.sqrt((p * (1 - p)) / of)).toBeCloseTo(z, 8);
  });
});

describe('The exact interval of a rate', () => {
  // Tables of exact Poisson limits (Garwood, Biometrika 1936;28:437-442; figures from memory).
  it.each([
    [0, 0, 3.689],
    [3, 0.619, 8.767],
    [10, 4.795, 18.39],
  ])('%d events: Garwood 1936', (count, low, high) => {
    const rate = garwood(count, 1);
    expect(rate.low).toBeCloseTo(low, 3);
    expect(rate.high).toBeCloseTo(high, 3);
  });

  // The same limits as quantiles of chi squared: χ²(α/2; 2x)/2 and χ²(1 − α/2; 2x + 2)/2, from another library.
  it.each([0, 1, 2, 3, 5, 8, 21, 60, 150])('%d events agree with quantiles of chi squared', (count) => {
    const { low, high } = garwood(count, 1);
    expect(low).toBeCloseTo(count === 0 ? 0 : jstat.chisquare.inv(0.025, 2 * count) / 2, 6);
    expect(high).toBeCloseTo(jstat.chisquare.inv(0.975, 2 * count + 2) / 2, 6);
  });

  it('is divided by the exposure', () => {
    const [one, four] = [garwood(3, 1), garwood(3, 4)];
    expect(four.rate).toBe(0.75);
    expect([four.low, four.high]).toEqual([one.low / 4, one.high / 4]);
  });

  it('widens with the confidence asked for', () => {
    const [usual, wide] = [garwood(3, 1), garwood(3, 1, 0.01)];
    expect(wide.low).toBeCloseTo(jstat.chisquare.inv(0.005, 6) / 2, 6);
    expect(wide.high).toBeGreaterThan(usual.high);
  });
});
