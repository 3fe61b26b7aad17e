import type { Difference } from './differences.ts';
import { judgeResult } from './judgeResult.ts';
import { HASH_STEPS, isSameSimulation, type MakeRun, type RunFile } from './recording.ts';
import { Replayer } from './Replayer.ts';

/** What playing a recording again came to. */
export type Verification =
  /** Every state hash and the whole result are what the recording says. */
  | { readonly verdict: 'verified' }
  /** The commands lead to other states: from the first step (at the grain of the hashes) at which they differ. */
  | { readonly verdict: 'diverged'; readonly firstDivergentStep: number; readonly fault?: string }
  /** The states agree but the written result is another than the one that follows; `differences` names the first few. */
  | { readonly verdict: 'resultDiffers'; readonly differences: readonly Difference[] }
  /** The result follows, but the score written beside it is not the one that follows from it. */
  | { readonly verdict: 'scoreDiffers'; readonly differences: readonly Difference[] }
  /** The result follows; its score was given under other rules of scoring, which this build does not have. */
  | { readonly verdict: 'otherRubric'; readonly rubricVersion: number }
  /** Recorded under another behaviour of the simulation: can be looked at, not verified. */
  | { readonly verdict: 'otherSimulation'; readonly simulation: number }
  /** Has no result; its states agree as far as it goes. */
  | { readonly verdict: 'brokenOff'; readonly steps: number };

/** Called with the steps done and the steps in all, once per recorded second. */
export type Progress = (done: number, steps: number) => void;

/** Plays the recording again from the beginning and compares. Never throws, whatever the recording holds. */
export function verifyRun(recording: RunFile, makeRun: MakeRun, onProgress?: Progress): Verification {
  const slices = verifyInSlices(recording, makeRun);
  for (;;) {
    const slice = slices.next();
    if (slice.done) return slice.value;
    onProgress?.(slice.value, recording.steps);
  }
}

/** The same in slices of one recorded second, for a page that must stay responsive: yields the steps done, returns the outcome. */
export function* verifyInSlices(recording: RunFile, makeRun: MakeRun): Generator<number, Verification, void> {
  if (!isSameSimulation(recording.header)) return { verdict: 'otherSimulation', simulation: recording.header.simulation };
  let step = 0;
  try {
    const replayer = new Replayer(recording, makeRun);
    while (!replayer.done) {
      replayer.step();
      step = replayer.run.stepCount;
      if (replayer.firstDivergentStep !== null) return { verdict: 'diverged', firstDivergentStep: step };
      if (step % HASH_STEPS === 0) yield step;
    }
    if (step < recording.steps) return { verdict: 'diverged', firstDivergentStep: step, fault: 'the run ends before its recording' };
    if (recording.result === null) return { verdict: 'brokenOff', steps: step };
    return judgeResult(recording.result, recording, replayer.run.result());
  } catch (error) {
    return { verdict: 'diverged', firstDivergentStep: step, fault: error instanceof Error ? error.message : String(error) };
  }
}
