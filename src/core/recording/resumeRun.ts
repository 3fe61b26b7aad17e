import { failure, success, type Result } from '../base/result.ts';
import type { RunContract, RunSnapshot } from '../run/contract.ts';
import { HASH_STEPS, isSameSimulation, type MakeRun, type RunFile } from './recording.ts';
import { Recorder } from './Recorder.ts';
import { Replayer } from './Replayer.ts';

/** A run taken up again at its last recorded step, with the recorder that goes on. */
export interface ResumedRun {
  readonly run: RunContract;
  readonly recorder: Recorder;
}

/** Why a broken-off run cannot be taken up again. */
export type ResumeError = { readonly kind: 'otherSimulation' } | { readonly kind: 'finished' } | { readonly kind: 'diverged'; readonly step: number };

/**
 * Takes a broken-off run up again. The snapshot saves time only: without one, when it is not of a step with a state hash (every 120th)
 * or when it does not fit, the whole recording is played from the beginning. All states on the way must be the recorded ones.
 */
export function resumeRun(recording: RunFile, makeRun: MakeRun, snapshot: RunSnapshot | null): Result<ResumedRun, ResumeError> {
  if (recording.result !== null) return failure({ kind: 'finished' });
  if (!isSameSimulation(recording.header)) return failure({ kind: 'otherSimulation' });
  const fromSnapshot = snapshot && snapshot.step % HASH_STEPS === 0 && snapshot.step <= recording.steps ? playOut(recording, makeRun, snapshot) : null;
  const played = fromSnapshot?.firstDivergentStep === null ? fromSnapshot : playOut(recording, makeRun, null);
  if (!played) return failure({ kind: 'diverged', step: 0 });
  if (played.firstDivergentStep !== null) return failure({ kind: 'diverged', step: played.firstDivergentStep });
  if (played.run.finished) return failure({ kind: 'finished' });
  return success({ run: played.run, recorder: new Recorder(recording.header, recording) });
}

/** Plays the recording to its end, or null when the run cannot be restored or refuses what was recorded. */
function playOut(recording: RunFile, makeRun: MakeRun, snapshot: RunSnapshot | null): Replayer | null {
  try {
    const run = makeRun(recording.header.scenario, recording.header.seed);
    if (snapshot) run.restore(snapshot);
    const replayer = new Replayer(recording, makeRun, run);
    while (!replayer.done) replayer.step();
    return replayer;
  } catch {
    return null;
  }
}

/** One sentence for a person. */
export function resumeErrorWords(error: ResumeError): string {
  switch (error.kind) {
    case 'otherSimulation':
      return 'This run was begun under another version of the trainer; it can be looked at and saved, but not continued.';
    case 'finished':
      return 'This run is finished; open it to look at it.';
    case 'diverged':
      return `This run cannot be continued exactly as it was from step ${error.step} on; it can be saved as it is.`;
  }
}
