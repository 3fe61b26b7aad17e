import { assert } from '../base/assert.ts';
import type { Command } from '../commands/command.ts';
import type { RunResult } from '../run/result.ts';
import { scoreOf } from '../scoring/scoreRun.ts';
import { HASH_STEPS, type RunFile, type RunHeader, type StepCommands } from './recording.ts';

/** What was played since the last increment; a run's increments in order are its recording. */
export interface RunIncrement {
  /** Steps done before and after it. */
  readonly fromStep: number;
  readonly toStep: number;
  readonly commands: readonly StepCommands[];
  readonly hashes: readonly string[];
}

/** The part of a run that is recorded after each step. */
export interface RecordedRun {
  readonly stepCount: number;
  hash(): string;
}

/**
 * Keeps the commands of a run as they are played, with a state hash every 120 steps. Call `played` once after every step; take
 * increments for a journal as often as wanted; `finish` gives the whole.
 */
export class Recorder {
  readonly header: RunHeader;
  private steps: number;
  private readonly commands: StepCommands[];
  private readonly hashes: string[];
  private taken: { steps: number; commands: number; hashes: number };

  /** Begins a recording, or with `before` goes on with one that was broken off, noting in its header where. */
  constructor(header: RunHeader, before?: Pick<RunFile, 'steps' | 'commands' | 'hashes'>) {
    this.header = before ? { ...header, resumedAt: [...header.resumedAt, before.steps] } : header;
    this.steps = before?.steps ?? 0;
    this.commands = [...(before?.commands ?? [])];
    this.hashes = [...(before?.hashes ?? [])];
    this.taken = this.lengths();
  }

  /** Notes the commands of the step that the run has just done. */
  played(commands: readonly Command[], run: RecordedRun): void {
    assert(run.stepCount === this.steps + 1, `step ${this.steps + 1} is to be recorded, the run is at ${run.stepCount}`);
    if (commands.length > 0) this.commands.push({ step: this.steps, commands: [...commands] });
    this.steps = run.stepCount;
    if (this.steps % HASH_STEPS === 0) this.hashes.push(run.hash());
  }

  /** What was played since the last call, or null when nothing was. */
  takeIncrement(): RunIncrement | null {
    if (this.steps === this.taken.steps) return null;
    const from = this.taken;
    this.taken = this.lengths();
    return { fromStep: from.steps, toStep: this.steps, commands: this.commands.slice(from.commands), hashes: this.hashes.slice(from.hashes) };
  }

  /** The recording of a run that came to its end. */
  finish(run: RecordedRun & { result(): RunResult }): RunFile {
    assert(run.stepCount === this.steps, `recorded ${this.steps} steps, the run is at ${run.stepCount}`);
    const tail = this.steps % HASH_STEPS === 0 ? [] : [run.hash()];
    const result = run.result();
    return { ...this.soFar(), hashes: [...this.hashes, ...tail], result, score: scoreOf(result, this.header.scenario) };
  }

  /** The recording up to now, as of a run that is broken off here. */
  soFar(): RunFile {
    return { header: this.header, steps: this.steps, commands: [...this.commands], hashes: [...this.hashes], result: null, score: null };
  }

  private lengths(): { steps: number; commands: number; hashes: number } {
    return { steps: this.steps, commands: this.commands.length, hashes: this.hashes.length };
  }
}
