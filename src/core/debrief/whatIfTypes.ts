import type { RemedyId } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import type { Reach } from '../ledger/surface.ts';
import type { RunResult } from '../run/result.ts';
import type { Score } from '../scoring/score.ts';

/** One thing that is thought to have gone otherwise. */
export type Change =
  | { readonly kind: 'nothing' }
  /** Those two surfaces had not met then. */
  | { readonly kind: 'undoTouch'; readonly touch: number }
  /** That mishap had not happened: without all facts that are its roots. */
  | { readonly kind: 'undoBreak'; readonly number: number }
  /** The remedy had been done by the end of that step; things with their generation (`glove.left#1`). */
  | { readonly kind: 'remedy'; readonly remedy: RemedyId; readonly things: readonly string[]; readonly step: number };

/** A surface, with the thing it is part of: "left glove, fingers", "the left glove". After an inserted remedy it also stands for what takes its place. */
export interface Spared {
  readonly surface: string;
  readonly thing: string;
  readonly words: string;
  readonly prose: string;
}

/** What would then have become of the run. Nothing else is thought to change: the hands make the same movements. */
export interface WhatIfOutcome {
  readonly change: Change;
  readonly breaks: readonly Break[];
  /** Largest reach of all breaks. */
  readonly reach: Reach;
  /** Became unsterile in the run, and would not have. */
  readonly spared: readonly Spared[];
  /** Became unsterile in the run, and would have all the same. */
  readonly stillSpoiled: readonly Spared[];
  /** Did not become unsterile in the run, and would have. */
  readonly newlySpoiled: readonly Spared[];
  /** The result of that run: breaks, notices and remedies as they would be. */
  readonly result: RunResult;
  /** What that result is worth; null when it lacks something that the rubric weighs. The run's own is that of `nothing`. */
  readonly score: Score | null;
}

/** A change with its outcome, told. */
export interface Alternative {
  readonly change: Change;
  /** "Drape covered by 07:01." */
  readonly title: string;
  /** "The probe sheath and the site stay sterile. Reach: the field." */
  readonly sentence: string;
  readonly outcome: WhatIfOutcome;
}
