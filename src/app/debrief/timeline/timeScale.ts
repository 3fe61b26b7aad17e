import { STEPS_PER_SECOND } from '../../../core/base/time.ts';

/** Steps that a timeline shows, and where on the screen. */
export interface TimeScale {
  readonly from: number;
  readonly to: number;
  /** CSS pixels at `from` and `to`. */
  readonly left: number;
  readonly right: number;
}

export const xOf = ({ from, to, left, right }: TimeScale, step: number): number => left + ((step - from) / Math.max(1, to - from)) * (right - left);

export const stepAt = ({ from, to, left, right }: TimeScale, x: number): number => from + ((x - left) / Math.max(1, right - left)) * (to - from);

/** Distances between ticks, in seconds. */
const TICKS_S = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300];
const TICK_PX_MIN = 62;

/** Ticks of the time axis at round times, far enough apart for their words. */
export function ticksOf(scale: TimeScale): { readonly step: number; readonly seconds: number; readonly everyS: number }[] {
  const perSecond = ((scale.right - scale.left) / Math.max(1, scale.to - scale.from)) * STEPS_PER_SECOND;
  const everyS = TICKS_S.find((seconds) => seconds * perSecond >= TICK_PX_MIN) ?? 600;
  const first = Math.ceil(scale.from / STEPS_PER_SECOND / everyS - 1e-9);
  const last = Math.floor(scale.to / STEPS_PER_SECOND / everyS + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => ({ step: (first + k) * everyS * STEPS_PER_SECOND, seconds: (first + k) * everyS, everyS }));
}

/**
 * The stretch of a run that is shown when only `spanS` seconds of it are: it stays where it was while the instant is well inside, and
 * otherwise goes on so that the instant is.
 * @param spanS null for the whole run
 */
export function windowAround(step: number, end: number, spanS: number | null, before: { readonly from: number; readonly to: number } | null): { from: number; to: number } {
  if (spanS === null || spanS * STEPS_PER_SECOND >= end) return { from: 0, to: Math.max(1, end) };
  const span = spanS * STEPS_PER_SECOND;
  const rim = span * 0.08;
  if (before && Math.abs(before.to - before.from - span) < 1 && step >= before.from + (before.from > 0 ? rim : 0) && step <= before.to - (before.to < end ? rim : 0)) return { from: before.from, to: before.to };
  const from = Math.min(Math.max(0, step - span / 2), end - span);
  return { from, to: from + span };
}
