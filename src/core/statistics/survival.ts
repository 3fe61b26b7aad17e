/** One waiting time; `seen` false when it was cut off before the event came. */
export interface Waiting {
  readonly time: number;
  readonly seen: boolean;
}

/**
 * Median of waiting times of which some were cut off, by the product-limit estimate (Kaplan and Meier 1958): the first time at which
 * no more than half still wait. Null when that never comes. A time cut off at the moment of an event counts as waiting then.
 */
export function medianWaiting(waits: readonly Waiting[]): number | null {
  const times = [...new Set(waits.filter(({ seen }) => seen).map(({ time }) => time))].sort((a, b) => a - b);
  let waiting = 1;
  for (const time of times) {
    const atRisk = waits.filter((wait) => wait.time >= time).length;
    waiting *= 1 - waits.filter((wait) => wait.seen && wait.time === time).length / atRisk;
    // The product of a few fractions may miss one half by its last bit.
    if (waiting <= 0.5 + 1e-12) return time;
  }
  return null;
}
