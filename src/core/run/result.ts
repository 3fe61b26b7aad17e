import type { RemedyId } from '../commands/command.ts';
import type { Break } from '../ledger/break.ts';
import type { FieldProgress } from '../procedure/observation.ts';
import type { Side } from '../base/side.ts';

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

export interface HandlingReport {
  /** Length of the way of each hand in metres. */
  readonly pathM: Readonly<Record<Side, number>>;
  /** Farthest that each drape's edge moved from where it was laid, in metres. */
  readonly driftM: Readonly<Record<Side, number>>;
  readonly dropped: readonly string[];
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
  readonly progress: FieldProgress;
  readonly handling: HandlingReport;
}
