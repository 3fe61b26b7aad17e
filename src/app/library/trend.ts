import type { Severity } from '../../core/ledger/break.ts';
import type { StoredRun } from '../../storage/storedRun.ts';

/** Breaks of one run by severity. */
export interface TrendBar {
  readonly key: string;
  readonly startedAt: string;
  readonly title: string;
  readonly counts: Readonly<Record<Severity, number>>;
  readonly total: number;
}

/** Runs that a chart shows, oldest first, with the height of its scale and the lines across it. */
export interface Trend {
  readonly bars: readonly TrendBar[];
  /** Finished runs that are older than the first bar. */
  readonly left: number;
  readonly top: number;
  readonly ticks: readonly number[];
}

const BARS_MAX = 40;
const TICKS_MAX = 4;

/** The last finished runs of a list that begins with the newest. The scale begins at nothing and ends at a whole tick. */
export function trendOf(runs: readonly StoredRun[]): Trend {
  const finished = runs.filter(({ finished: isFinished }) => isFinished);
  const bars = finished.slice(0, BARS_MAX).reverse().map(({ key, startedAt, title, breaks }) => ({ key, startedAt, title, counts: breaks, total: breaks.minor + breaks.major + breaks.critical }));
  const most = Math.max(1, ...bars.map(({ total }) => total));
  const each = tickFor(most);
  const top = Math.ceil(most / each) * each;
  return { bars, left: finished.length - bars.length, top, ticks: Array.from({ length: top / each + 1 }, (_, k) => k * each) };
}

/** Distance of the lines across the chart: 1, 2 or 5 times a power of ten, so that there are only a few. */
function tickFor(most: number): number {
  for (let power = 1; ; power *= 10) for (const step of [1, 2, 5]) if (most / (step * power) <= TICKS_MAX) return step * power;
}
