import { describe, expect, it } from 'vitest';
import { medianWaiting, type Waiting } from '../../../src/core/statistics/survival.ts';

const seen = (...times: number[]): Waiting[] => times.map((time) => ({ time, seen: true }));
const cutOff = (...times: number[]): Waiting[] => times.map((time) => ({ time, seen: false }));

describe('The median of waiting times', () => {
  // Weeks of remission of 42 children (Freireich et al. 1963), the standard example of the product-limit estimate: medians 23 and 8
  // (from memory; the data are in every textbook on survival).
  it('is that of the published example', () => {
    expect(medianWaiting([...seen(6, 6, 6, 7, 10, 13, 16, 22, 23), ...cutOff(6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35)])).toBe(23);
    expect(medianWaiting(seen(1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23))).toBe(8);
  });

  it('is the ordinary one where nothing is cut off', () => {
    expect(medianWaiting(seen(5, 1, 3))).toBe(3);
    expect(medianWaiting(seen(4, 2, 3, 1))).toBe(2);
  });

  it('is unknown when fewer than half were seen to happen, and of nothing', () => {
    expect(medianWaiting([...seen(2), ...cutOff(9, 9)])).toBeNull();
    expect(medianWaiting(cutOff(3))).toBeNull();
    expect(medianWaiting([])).toBeNull();
  });

  it('is later than the mean of those that were seen, which leaves the unseen out', () => {
    expect(medianWaiting([...seen(2, 4, 30), ...cutOff(60, 60)])).toBe(30);
  });
});
