import type { Proportion, Rate } from '../../statistics/intervals.ts';

/** What became of one planted look-alike. */
export type TrialOutcome =
  /** Nothing was reported: a correct rejection. */
  | 'leftAlone'
  /** A report that answers no real break came within the window. */
  | 'falseAlarm'
  /** A real break was there unsaid, so that a report could mean either. */
  | 'droppedForBreak'
  /** The run ended within the window. */
  | 'droppedForEnd';

/** One planted look-alike of the run. */
export interface LookAlikeTrial {
  /** Step at which it happened, and the last step of its window. */
  readonly step: number;
  readonly untilStep: number;
  readonly words: string;
  readonly outcome: TrialOutcome;
}

/** How far real breaks and look-alikes were told apart, with the log-linear correction (Hautus 1995). */
export interface Discrimination {
  /** d′ = z(H) − z(F). */
  readonly dPrime: number;
  /** c = −(z(H) + z(F)) / 2; negative means quick to report. */
  readonly criterion: number;
  /** Corrected rates: (hits + 0.5) / (breaks + 1) and (false alarms + 0.5) / (trials + 1). */
  readonly hitRate: number;
  readonly falseAlarmRate: number;
  readonly breaks: number;
  readonly trials: number;
}

/** How well the operator noticed breaks; times in seconds of the run. */
export interface NoticingOfRun {
  /** Breaks noticed of breaks made, with Wilson's 95 % interval; share null when there was no break. */
  readonly sensitivity: Proportion;
  /** Numbers of breaks that were remedied without a word; they count as not noticed. */
  readonly remediedUnsaid: readonly number[];
  /** Steps of reports that answered no break. */
  readonly falseReports: readonly number[];
  /** Their number per run of this kind, with the exact 95 % Poisson interval. */
  readonly falseReportRate: Rate;
  /** Seconds from a break to its report, by number of the break; the others were not reported. */
  readonly timesToNotice: readonly { readonly break: number; readonly seconds: number }[];
  /** Median of these with unreported breaks as cut off (Kaplan–Meier); null when fewer than half came to be noticed. */
  readonly medianS: number | null;
  /** Planted look-alikes; empty when the scenario has none. */
  readonly trials: readonly LookAlikeTrial[];
  /** Null without a break, or without a look-alike that counts: false alarms then have no denominator. */
  readonly discrimination: Discrimination | null;
}
