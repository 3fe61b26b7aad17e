import type { AnswerId, RemedyId } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import type { Progress } from '../procedure/observation.ts';
import type { Side } from '../base/side.ts';
import type { LeastClearance } from '../room/clearance.ts';
import type { Drop } from '../room/handling.ts';

export interface NoticeReport {
  readonly step: number;
  /** Numbers of the breaks that it answers; empty when nothing was broken and unsaid. */
  readonly breaks: readonly number[];
}

export interface RemedyReport {
  readonly remedy: RemedyId;
  readonly startStep: number;
  readonly endStep: number;
  readonly things: readonly string[];
}

export interface CueReport {
  readonly step: number;
  readonly kind: string;
  readonly words: string;
}

/** One time that the assistant spoke up about a break, and what became of it. */
export interface ChallengeReport {
  /** Step at which it was first said. */
  readonly step: number;
  /** Number of the break. */
  readonly break: number;
  /** Everything that was said about it: a question, and when that was not answered the same with its reason. */
  readonly said: readonly { readonly step: number; readonly words: string }[];
  /** `stop`: thanked and stopped; `fine`: shrugged off; null while nobody answered. */
  readonly answered: { readonly how: AnswerId; readonly step: number } | null;
  /** Both hands came to rest within two seconds of the first words; null while those are not over. */
  readonly stillInTime: boolean | null;
}

export interface HandlingReport {
  /** Length of the way of each hand in metres. */
  readonly pathM: Readonly<Record<Side, number>>;
  /** Farthest that each drape's edge moved from where it was laid, in metres. */
  readonly driftM: Readonly<Record<Side, number>>;
  /** What lies off the field at the end, by id. */
  readonly dropped: readonly string[];
  /** Null in a run that was saved before these were measured. */
  readonly measured: HandlingMeasures | null;
}

export interface HandlingMeasures {
  /** Step at which each drape's edge was farthest from where it was laid; null while it never moved. */
  readonly driftStep: Readonly<Record<Side, number | null>>;
  /** Everything that ever fell off the field, other than into the bin. */
  readonly drops: readonly Drop[];
  readonly smoothness: Readonly<Record<Side, SmoothnessReport>>;
  /** Smallest gap of each hand to each unsterile thing that it was ever near (0.3 m), in metres. */
  readonly clearance: readonly LeastClearance[];
}

/** How smoothly a hand moved: over its movements from rest to rest the log dimensionless jerk; about −6.6 for the smoothest reach, lower where it jerks. */
export interface SmoothnessReport {
  readonly movements: number;
  /** Of the typical movement; null before any. */
  readonly median: number | null;
  /** The least smooth movements, the worst first. */
  readonly roughest: readonly { readonly step: number; readonly value: number }[];
}

/** What a run came to: a pure function of scenario, seed and commands. Plain JSON. */
export interface RunResult {
  readonly steps: number;
  readonly breaks: readonly Break[];
  /** Words for every surface named in the breaks, by id. */
  readonly words: Readonly<Record<string, string>>;
  readonly notices: readonly NoticeReport[];
  readonly remedies: readonly RemedyReport[];
  readonly cues: readonly CueReport[];
  /** Empty in a run where nobody spoke up, or that was saved before an assistant could. */
  readonly challenges: readonly ChallengeReport[];
  readonly progress: Progress;
  readonly handling: HandlingReport;
}
