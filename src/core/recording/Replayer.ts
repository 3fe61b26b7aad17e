import { assert } from '../base/assert.ts';
import type { Command } from '../commands/command.ts';
import type { RunContract, StepOutcome } from '../run/contract.ts';
import { HASH_STEPS, type MakeRun, type RunFile } from './recording.ts';

/**
 * Plays a recording step by step into a run. It compares the state hashes on the way and remembers the first step at which they
 * differ, but goes on, so that a viewer can show what happens next.
 */
export class Replayer {
  readonly run: RunContract;
  /** First step after which the state was not the recorded one, at the grain of the recording's hashes; null so far. */
  firstDivergentStep: number | null = null;
  private readonly recording: RunFile;
  private next = 0;

  /** With `run`, goes on from that run's present step, which is compared as well. */
  constructor(recording: RunFile, makeRun: MakeRun, run?: RunContract) {
    this.recording = recording;
    this.run = run ?? makeRun(recording.header.scenario, recording.header.seed);
    const found = recording.commands.findIndex(({ step }) => step >= this.run.stepCount);
    this.next = found < 0 ? recording.commands.length : found;
    if (this.run.stepCount > 0) this.compare(this.run.stepCount);
  }

  /** All recorded steps are done, or the run ended before them. */
  get done(): boolean {
    return this.run.stepCount >= this.recording.steps || this.run.finished;
  }

  /** Plays one step. */
  step(): StepOutcome {
    assert(!this.done, `all ${this.recording.steps} steps are played`);
    const outcome = this.run.step(this.commandsOf(this.run.stepCount));
    this.compare(this.run.stepCount);
    return outcome;
  }

  private commandsOf(step: number): readonly Command[] {
    const recorded = this.recording.commands[this.next];
    if (recorded?.step !== step) return [];
    this.next++;
    return recorded.commands;
  }

  private compare(step: number): void {
    const { steps, hashes } = this.recording;
    const recorded = step % HASH_STEPS === 0 ? hashes[step / HASH_STEPS - 1] : step === steps ? hashes[Math.floor(step / HASH_STEPS)] : undefined;
    if (this.firstDivergentStep === null && recorded !== undefined && recorded !== this.run.hash()) this.firstDivergentStep = step;
  }
}

/** The run as it stood after `step` steps of the recording (or at its end, when that comes first). */
export function replayTo(recording: RunFile, makeRun: MakeRun, step: number): RunContract {
  const replayer = new Replayer(recording, makeRun);
  while (!replayer.done && replayer.run.stepCount < step) replayer.step();
  return replayer.run;
}
