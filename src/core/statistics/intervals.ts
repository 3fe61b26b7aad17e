import { exp } from '../base/portableMath.ts';
import { assert } from '../base/assert.ts';
import { probit } from './normal.ts';

/** A share with Wilson's interval. `share` is null for nothing of nothing; the interval then is all of 0 to 1. */
export interface Proportion {
  readonly count: number;
  readonly of: number;
  readonly share: number | null;
  readonly low: number;
  readonly high: number;
}

/** A number of events per unit of exposure with its exact interval. */
export interface Rate {
  readonly count: number;
  readonly exposure: number;
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

/** Part of the interval on both sides that is left out: 95 % intervals. */
const ALPHA = 0.05;

/**
 * Wilson's score interval: (p + z²/2n ± z √(pq/n + z²/4n²)) / (1 + z²/n) (Wilson 1927; method 3 of Newcombe 1998).
 * `count` and `of` are whole numbers with 0 ≤ count ≤ of.
 */
export function wilson(count: number, of: number, alpha: number = ALPHA): Proportion {
  assert(count >= 0 && count <= of, `${count} of ${of} is a share`);
  if (of === 0) return { count, of, share: null, low: 0, high: 1 };
  const z = probit(1 - alpha / 2);
  const p = count / of;
  const middle = p + (z * z) / (2 * of);
  const half = z * Math.sqrt((p * (1 - p)) / of + (z * z) / (4 * of * of));
  const scale = 1 + (z * z) / of;
  return { count, of, share: p, low: count === 0 ? 0 : (middle - half) / scale, high: count === of ? 1 : (middle + half) / scale };
}

/**
 * Exact interval of a Poisson rate (Garwood 1936): the means for which `count` or more, and `count` or fewer, have a chance of
 * alpha / 2, each divided by the exposure.
 */
export function garwood(count: number, exposure: number, alpha: number = ALPHA): Rate {
  assert(count >= 0 && exposure > 0, `${count} events in ${exposure} is a rate`);
  const top = 2 * count + 20;
  const low = count === 0 ? 0 : meanWhere((mean) => atMost(count - 1, mean) < 1 - alpha / 2, top);
  const high = meanWhere((mean) => atMost(count, mean) < alpha / 2, top);
  return { count, exposure, rate: count / exposure, low: low / exposure, high: high / exposure };
}

/** Chance of at most `count` events under a Poisson mean. */
function atMost(count: number, mean: number): number {
  let term = exp(-mean);
  let sum = term;
  for (let k = 1; k <= count; k++) {
    term *= mean / k;
    sum += term;
  }
  return sum;
}

/** Smallest mean at which `beyond` becomes true, by halving; it is true from there on. */
function meanWhere(beyond: (mean: number) => boolean, top: number): number {
  let [low, high] = [0, top];
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (beyond(middle)) high = middle;
    else low = middle;
  }
  return high;
}
