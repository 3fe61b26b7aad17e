import { describe, expect, it } from 'vitest';
import { dimensionlessJerk, median, MovementMeter } from '../../../src/core/room/handlingMovement.ts';
import { minimumJerk } from '../../../src/core/room/patient.ts';

/** Points of a movement, the share of the way at each share of the time as `profile` says. */
const points = (profile: (t: number) => number, samples: number): number[] => Array.from({ length: samples + 1 }, (_, k) => profile(k / samples));
const zeros = (xs: readonly number[]): number[] => xs.map(() => 0);
const jerkOf = (profile: (t: number) => number, samples = 2000): number => {
  const xs = points(profile, samples);
  return dimensionlessJerk(xs, zeros(xs));
};

describe('Dimensionless jerk', () => {
  it('of a minimum-jerk movement is 720 (∫ (60 − 360τ + 360τ²)² dτ, textbook)', () => {
    expect(jerkOf(minimumJerk)).toBeGreaterThan(720 * 0.99);
    expect(jerkOf(minimumJerk)).toBeLessThan(720 * 1.01);
  });

  it('of half a cosine is π⁶/8 between its ends, where the acceleration jumps', () => {
    const value = jerkOf((t) => (1 - Math.cos(Math.PI * t)) / 2);
    expect(value / (Math.PI ** 6 / 8)).toBeCloseTo(1, 2);
  });

  it('does not depend on how far, how fast or which way the hand goes', () => {
    const xs = points(minimumJerk, 50);
    const plain = dimensionlessJerk(xs, zeros(xs));
    expect(dimensionlessJerk(xs.map((x) => 0.3 * x), xs.map((x) => 0.4 * x - 2))).toBeCloseTo(plain, 6);
  });

  it('grows when one reach is made of two: 720 × 2⁵ / 2² × 2 for two halves', () => {
    // Each half: (A/2)² · 720 / (D/2)⁵ of squared jerk, twice, times D⁵ / A²: 720 × 2 × 2⁵ / 2².
    const two = jerkOf((t) => (t < 0.5 ? minimumJerk(2 * t) / 2 : 0.5 + minimumJerk(2 * t - 1) / 2), 4000);
    expect(two / (720 * 16)).toBeCloseTo(1, 1);
  });
});

/** A hand that reaches 0.3 m and back, resting between for so many seconds. */
function reachAndBack(restS: number): [number, number][] {
  const way: [number, number][] = [];
  const hold = (x: number, seconds: number): void => void way.push(...Array.from({ length: seconds * 120 }, (): [number, number] => [x, 1]));
  const reach = (from: number, to: number): void => void way.push(...Array.from({ length: 144 }, (_, k): [number, number] => [from + (to - from) * minimumJerk((k + 1) / 144), 1]));
  hold(0, 1);
  reach(0, 0.3);
  hold(0.3, restS);
  reach(0.3, 0);
  hold(0, 1);
  return way;
}

const metered = (way: readonly [number, number][], from = new MovementMeter(), first = 0): MovementMeter => {
  way.forEach(([x, y], k) => from.step(first + k, x, y));
  return from;
};

describe('A hand’s way', () => {
  it('is cut into movements at its rests, each about as smooth as can be', () => {
    const found = metered(reachAndBack(2)).movements;
    expect(found).toHaveLength(2);
    for (const { pathM, logJerk } of found) {
      expect(pathM).toBeCloseTo(0.3, 3);
      // 720 in some twenty points: the ends weigh more or less as they fall between them.
      expect(Math.abs(logJerk - Math.log(720))).toBeLessThan(0.6);
    }
    expect(found[0]!.startStep).toBeGreaterThanOrEqual(120 - 16);
    expect(found[0]!.endStep).toBeLessThanOrEqual(120 + 144 + 24);
  });

  it('is judged alike however long it rests', () => {
    const [short, long] = [metered(reachAndBack(1)), metered(reachAndBack(30))].map(({ movements }) => movements.map(({ logJerk }) => logJerk));
    expect(long).toEqual(short);
  });

  it('holds no movement while it only creeps or twitches', () => {
    const creep = Array.from({ length: 1200 }, (_, k): [number, number] => [k * 0.00004, 1]);
    const twitch = Array.from({ length: 1200 }, (_, k): [number, number] => [Math.floor(k / 200) * 0.02, 1]);
    expect([metered(creep).movements, metered(twitch).movements]).toEqual([[], []]);
  });

  it('goes on from a snapshot as if nothing had been between', () => {
    const way = reachAndBack(1);
    for (const at of [100, 131, 200, 333]) {
      const before = metered(way.slice(0, at));
      const after = new MovementMeter();
      after.restore(structuredClone(before.save()));
      metered(way.slice(at), after, at);
      expect(after.save()).toEqual(metered(way).save());
    }
  });

  it('is told by its middle movement', () => {
    expect([median([]), median([3]), median([4, 1]), median([9, 1, 5])]).toEqual([null, 3, 2.5, 5]);
  });
});
