import type { Result } from '../core/base/result.ts';
import type { RemedyId } from '../core/commands/command.ts';
import type { DebriefSource } from '../core/debrief/debriefSource.ts';
import type { RunFile } from '../core/recording/recording.ts';
import type { Verification } from '../core/recording/verifyRun.ts';
import type { RunResult } from '../core/run/result.ts';
import type { Scenario } from '../core/scenario/schema.ts';
import type { StoredRun } from '../storage/storedRun.ts';
import type { LibraryService } from './library/libraryService.ts';
import type { QuerySwitches } from './querySwitches.ts';
import type { Coaching, LiveRun, Slowdown } from './run/LiveRun.ts';
import type { MountStage } from './run/stagePort.ts';

/** What a person chooses before a run. */
export interface RunChoice {
  readonly scenario: Scenario;
  readonly coaching: Coaching;
  readonly slowdown: Slowdown;
  readonly seed: number;
}

/** Runs that are kept in this browser: those that can go on where they were broken off, and the finished ones, the newest first. */
export interface KeptRuns {
  readonly brokenOff: readonly StoredRun[];
  readonly finished: readonly StoredRun[];
}

/** A rule of the rule book, as it is told to a person. */
export interface RuleWords {
  readonly title: string;
  readonly statement: string;
  /** How a break of it is told; `{surface}` and `{against}` stand for the words of the surfaces. */
  readonly sentence: string;
  readonly source: string;
  /** What answers a break of it, the most fitting first. */
  readonly remedies: readonly RemedyId[];
}

/** What an opened file turned out to be. */
export type OpenedFile = { readonly kind: 'run'; readonly file: RunFile } | { readonly kind: 'scenario'; readonly scenario: Scenario };

/** Long work on a recording that goes on beside the page. */
export interface Replaying<Outcome> {
  readonly outcome: Promise<Outcome>;
  stop(): void;
}

/** Share of the work done, 0 to 1. */
export type OnShare = (share: number) => void;

/** All that the pages need of the rest of the program; put together in main.tsx. */
export interface Services {
  readonly switches: QuerySwitches;
  readonly scenarios: readonly Scenario[];
  /** Does beforehand what a run of the scenario will need; to be called while nobody waits. */
  prepareRun(scenario: Scenario): void;
  startRun(choice: RunChoice): Promise<LiveRun>;
  keptRuns(): Promise<KeptRuns>;
  resumeRun(runId: string): Promise<Result<LiveRun, string>>;
  /** Recording of a kept run; a broken-off one is thereby closed. */
  openKept(key: string): Promise<Result<RunFile, string>>;
  deleteRun(key: string): Promise<void>;
  readonly library: LibraryService;
  readonly mountStage: MountStage;
  openFile(file: File): Promise<Result<OpenedFile, string>>;
  saveFile(file: RunFile): Promise<void>;
  ruleWords(rule: string): RuleWords;
  verify(file: RunFile, onShare: OnShare): Replaying<Verification>;
  /** What a recording without a result came to, by playing it again. */
  replayResult(file: RunFile, onShare: OnShare): Replaying<RunResult>;
  /** Begins to play a recording for its debrief; to be stopped when the page is left. */
  openDebrief(file: RunFile): Promise<DebriefSource>;
  isSameSimulation(file: RunFile): boolean;
}
