import type { Break } from '../../core/ledger/break.ts';

/** Surfaces of the site and of the device, by their ids. */
const SITE = /^site#/;
const DEVICE = /^sheath#\d+:probe$|:needle$/;

/** Step at which a break had got as far as it did; of one that stayed on the field, when it spoiled the last thing. */
export function reachedStep({ spread, reach, step }: Break): number {
  const goal = reach === 'site' ? SITE : reach === 'device' ? DEVICE : null;
  const found = goal && spread.find(({ surface }) => goal.test(surface));
  return found ? found.step : (spread.at(-1)?.step ?? step);
}
