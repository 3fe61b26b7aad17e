import type { Side } from '../base/side.ts';
import type { RemedyId } from '../commands/command.ts';
import type { Reach } from '../ledger/surface.ts';
import type { Severity } from '../ledger/break.ts';
import type { TaskId } from '../procedure/observation.ts';
import type { ClearanceThing } from '../room/clearanceThings.ts';

/** A break from its root until nothing of it was left, or the end of the log (`open`). */
export interface BreakSpan {
  readonly number: number;
  readonly rule: string;
  readonly words: string;
  readonly severity: Severity;
  readonly reach: Reach;
  readonly fromStep: number;
  readonly toStep: number;
  readonly open: boolean;
}

/** The operator said that sterility was broken. */
export interface NoticeMark {
  readonly step: number;
  readonly breaks: readonly number[];
  /** Steps since the earliest of those breaks began; null when nothing was broken and unsaid. */
  readonly lateSteps: number | null;
  /** "nothing was broken", "after 3 s", "43 s late" (later than 10 s, the policy of this page). */
  readonly words: string;
  readonly late: boolean;
}

export interface RemedySpan {
  readonly remedy: RemedyId;
  readonly things: readonly string[];
  /** "left glove", "sheath". */
  readonly words: string;
  readonly fromStep: number;
  readonly toStep: number;
  /** Breaks that it helped to answer. */
  readonly breaks: readonly number[];
}

export interface CueMark {
  readonly step: number;
  readonly kind: string;
  readonly words: string;
}

export interface TaskMark {
  readonly task: TaskId;
  readonly step: number;
  readonly critical: boolean;
  readonly outOfOrder: boolean;
}

/** One touch of the log; `toStep` is the end of the log while it lasts. */
export interface TouchMark {
  readonly touch: number;
  readonly fromStep: number;
  readonly toStep: number;
  readonly a: string;
  readonly b: string;
  readonly x: number;
  readonly y: number;
  /** Hand or arm that is part of it. */
  readonly side: Side | null;
  /** It made something unsterile, or would have, had it not been so already. */
  readonly spoils: boolean;
}

/** A sterile hand or forearm came near something unsterile and did not touch it: the nearest moment of that approach. */
export interface NearMiss {
  readonly step: number;
  readonly side: Side;
  /** What it came near, as in the trace's clearances, and in words. */
  readonly thing: ClearanceThing;
  readonly words: string;
  readonly metres: number;
}

/** All lanes under the room; each in order of steps. */
export interface Timeline {
  readonly breaks: readonly BreakSpan[];
  readonly notices: readonly NoticeMark[];
  readonly remedies: readonly RemedySpan[];
  readonly cues: readonly CueMark[];
  readonly tasks: readonly TaskMark[];
  readonly touches: readonly TouchMark[];
}
