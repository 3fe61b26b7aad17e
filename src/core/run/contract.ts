import type { Command, RequestId } from '../commands/command.ts';
import type { Side } from '../base/side.ts';
import type { Break } from '../ledger/break.ts';
import type { Fact } from '../ledger/fact.ts';
import type { NextHold } from '../procedure/nextHold.ts';
import type { Progress } from '../procedure/observation.ts';
import type { RoomPicture } from '../room/picture.ts';
import type { RemedyStatus } from '../room/remedyStatus.ts';

import type { Scenario } from '../scenario/schema.ts';
import type { ChallengeReport, CueReport, RunResult } from './result.ts';

export type { RemedyStatus };

/** One thing a hand touches now, in words: "left fingers: probe sheath". */
export interface TouchLine {
  readonly hand: Side | null;
  readonly words: string;
  /** The touch carries sterility away from something (shown coaching only). */
  readonly spoils: boolean;
}

export interface StepOutcome {
  readonly step: number;
  /** Facts of this step, in order. */
  readonly facts: readonly Fact[];
  /** Breaks that began in this step. */
  readonly newBreaks: readonly Break[];
  /** Cue that began in this step, if any. */
  readonly cue: CueReport | null;
  readonly finished: boolean;
}

/** All that a run must carry to be continued bit for bit; structured-clonable. */
export interface RunSnapshot {
  readonly step: number;
  readonly parts: Readonly<Record<string, unknown>>;
}

/** The one owner of the clock: the live page, the replay, the command line and the tests all go through `step`. */
export interface RunContract {
  readonly scenario: Scenario;
  readonly seed: number;
  /** Steps done so far (1/120 s each). */
  readonly stepCount: number;
  readonly finished: boolean;
  step(commands: readonly Command[]): StepOutcome;
  /** Everything that a view needs, copied. */
  picture(): RoomPicture;
  /** Items in each hand, words for the text twin. */
  touchLines(): readonly TouchLine[];
  heldWords(side: Side): { readonly what: string; readonly state: string; readonly broken: boolean };
  readonly progress: Progress;
  /** Holds of hands that come next, for coaching that shows them; none where the station tells none. */
  readonly nextHolds: readonly NextHold[];
  /** What the assistant is to be asked for next, for the same coaching; null where nothing is. */
  readonly nextRequest: RequestId | null;
  readonly breaks: readonly Break[];
  readonly cues: readonly CueReport[];
  /** What the assistant spoke up about, and how it was answered. */
  readonly challenges: readonly ChallengeReport[];
  readonly remedy: RemedyStatus | null;
  result(): RunResult;
  /** 16 hex digits over the whole state. */
  hash(): string;
  snapshot(): RunSnapshot;
  restore(snapshot: RunSnapshot): void;
}
