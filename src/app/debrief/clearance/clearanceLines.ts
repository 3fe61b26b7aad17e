import type { ClearanceSeries } from '../../../core/debrief/traceTypes.ts';
import type { Side } from '../../../core/base/side.ts';

/** Clearances above this are drawn at the top, in metres: farther away nothing can be learned. */
export const CLEARANCE_TOP_M = 0.2;
/** Guide: whoever keeps this far away has room for a slip, in metres (a policy of this page). */
export const GUIDE_M = 0.03;

/** Clearances of both hands to one unsterile thing. */
export interface ClearanceChart {
  readonly thing: string;
  readonly series: Readonly<Partial<Record<Side, ClearanceSeries>>>;
  /** Nearest approach and its step, of either hand. */
  readonly least: { readonly metres: number; readonly step: number; readonly side: Side };
}

/** One chart for each thing, the most nearly touched first. */
export function clearanceCharts(all: readonly ClearanceSeries[]): readonly ClearanceChart[] {
  const things = new Map<string, Partial<Record<Side, ClearanceSeries>>>();
  for (const series of all) {
    const both = things.get(series.thing) ?? {};
    both[series.side] = series;
    things.set(series.thing, both);
  }
  return [...things]
    .map(([thing, series]) => ({ thing, series, least: leastOf(Object.values(series)) }))
    .filter(({ least }) => Number.isFinite(least.metres))
    .sort((a, b) => a.least.metres - b.least.metres || a.least.step - b.least.step);
}

function leastOf(all: readonly ClearanceSeries[]): ClearanceChart['least'] {
  let least: ClearanceChart['least'] = { metres: Infinity, step: 0, side: 'right' };
  for (const { side, steps, metres } of all) {
    for (let k = 0; k < metres.length; k++) if (metres[k]! < least.metres) least = { metres: metres[k]!, step: steps[k]!, side };
  }
  return least;
}

/** A line of a chart as an SVG path: the least clearance of each pixel column, so that no short approach is lost. */
export function clearancePath({ steps, metres }: ClearanceSeries, end: number, wide: number, high: number): string {
  const columns = new Map<number, number>();
  for (let k = 0; k < metres.length; k++) {
    const x = Math.round((steps[k]! / Math.max(1, end)) * wide);
    columns.set(x, Math.min(metres[k]!, columns.get(x) ?? Infinity));
  }
  const points = [...columns].sort(([a], [b]) => a - b).map(([x, value]) => `${x} ${yOf(value, high).toFixed(1)}`);
  return points.length === 0 ? '' : `M${points.join('L')}`;
}

/** Pixels from the upper edge of a chart. */
export const yOf = (metres: number, high: number): number => high - (Math.min(Math.max(0, metres), CLEARANCE_TOP_M) / CLEARANCE_TOP_M) * high;
