import type { Command } from '../commands/command.ts';
import { STEPS_PER_SECOND } from '../base/time.ts';
import type { RunContract } from '../run/contract.ts';
import type { RunResult } from '../run/result.ts';
import type { Score } from '../scoring/score.ts';
import { scenarioHash } from '../scenario/scenarioHash.ts';
import type { Scenario } from '../scenario/schema.ts';
import { SIMULATION_VERSION } from './simulationVersion.ts';

/** Steps between two state hashes of a recording: one second. */
export const HASH_STEPS = 120;

/** Everything that is fixed when a run begins, apart from `resumedAt`. */
export interface RunHeader {
  /** Letters, digits and hyphens, at most 64; unique among runs. */
  readonly runId: string;
  readonly simulation: number;
  readonly stepsPerSecond: number;
  /** Name and version of the JavaScript engine that recorded the run, as its caller names it. */
  readonly engine: string;
  /** Start in ISO 8601, as its caller's clock told it. */
  readonly startedAt: string;
  readonly scenarioHash: string;
  readonly scenario: Scenario;
  readonly seed: number;
  /** Steps at which the run was taken up again after it had been broken off. */
  readonly resumedAt: readonly number[];
}

/** Commands given before one step; `step` counts the steps done before them, so the first step of a run is 0. */
export interface StepCommands {
  readonly step: number;
  readonly commands: readonly Command[];
}

/**
 * A run as it was played. `hashes[k]` is the state after (k + 1) × 120 steps; a finished run ends with one more, after its last
 * step, unless that falls on a multiple of 120. `result` is null for a run that was broken off.
 */
export interface RunFile {
  readonly header: RunHeader;
  /** Steps played. */
  readonly steps: number;
  /** In rising order of steps, only steps that had commands. */
  readonly commands: readonly StepCommands[];
  readonly hashes: readonly string[];
  readonly result: RunResult | null;
  /** What the result is worth under the scenario's rubric; null without a result, or with one that lacks what the rubric weighs. */
  readonly score: Score | null;
}

/** Makes the run that a recording is played into. */
export type MakeRun = (scenario: Scenario, seed: number) => RunContract;

export interface RunStart {
  readonly runId: string;
  readonly engine: string;
  readonly startedAt: string;
  readonly scenario: Scenario;
  readonly seed: number;
}

/** Header of a run that begins now, under the present simulation. */
export const runHeader = (start: RunStart): RunHeader => ({
  ...start,
  simulation: SIMULATION_VERSION,
  stepsPerSecond: STEPS_PER_SECOND,
  scenarioHash: scenarioHash(start.scenario),
  resumedAt: [],
});

/** Number of state hashes in a recording of so many steps. */
export const hashCount = (steps: number, finished: boolean): number =>
  finished ? Math.ceil(steps / HASH_STEPS) : Math.floor(steps / HASH_STEPS);

/** Whether this build can play the recording to the same bits. */
export const isSameSimulation = (header: RunHeader): boolean =>
  header.simulation === SIMULATION_VERSION && header.stepsPerSecond === STEPS_PER_SECOND;
