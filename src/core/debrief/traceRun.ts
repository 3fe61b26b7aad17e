import { judgeResult } from '../recording/judgeResult.ts';
import { isSameSimulation, type RunFile } from '../recording/recording.ts';
import { Replayer } from '../recording/Replayer.ts';
import type { Verification } from '../recording/verifyRun.ts';
import type { Run } from '../run/run.ts';
import type { Scenario } from '../scenario/schema.ts';
import { SAMPLE_STEPS, type TraceChunk } from './traceChunk.ts';
import { TracePacker } from './TracePacker.ts';

/** Samples in a chunk: two seconds. */
const CHUNK_SAMPLES = 60;

/** A chunk, with what the comparison has come to as far as it is known: a divergence at once, anything else at the end. */
export interface TraceNews {
  readonly chunk: TraceChunk | null;
  readonly verification: Verification | null;
}

/**
 * Plays a recording once and gives it piece by piece, comparing the state hashes on the way and the result at the end. It goes on
 * after a divergence, as far as the run can: what this version makes of the commands can be looked at. Never throws.
 */
export function* traceRun(recording: RunFile, makeRun: (scenario: Scenario, seed: number) => Run): Generator<TraceNews, void, void> {
  const packer = new TracePacker();
  let run: Run | null = null;
  let known: Verification | null = isSameSimulation(recording.header) ? null : { verdict: 'otherSimulation', simulation: recording.header.simulation };
  try {
    run = makeRun(recording.header.scenario, recording.header.seed);
    const replayer = new Replayer(recording, makeRun, run);
    packer.note(run.openingFacts);
    let samples = 0;
    while (!replayer.done) {
      const { step, facts } = replayer.step();
      packer.note(facts);
      if (step % SAMPLE_STEPS === 0 || replayer.done) {
        packer.sample(step, run.picture(), run.room.clearances());
        samples++;
      }
      if (replayer.firstDivergentStep !== null) known ??= { verdict: 'diverged', firstDivergentStep: replayer.firstDivergentStep };
      if (samples < CHUNK_SAMPLES && !replayer.done) continue;
      samples = 0;
      known ??= replayer.done ? comparedAtEnd(recording, run) : null;
      yield { chunk: packer.close(run.stepCount, run.result()), verification: known };
    }
    if (recording.steps === 0) yield { chunk: null, verification: known ?? comparedAtEnd(recording, run) };
  } catch (error) {
    const fault = error instanceof Error ? error.message : String(error);
    yield { chunk: null, verification: known ?? { verdict: 'diverged', firstDivergentStep: run?.stepCount ?? 0, fault } };
  }
}

function comparedAtEnd(recording: RunFile, run: Run): Verification {
  if (run.stepCount < recording.steps) return { verdict: 'diverged', firstDivergentStep: run.stepCount, fault: 'the run ends before its recording' };
  if (recording.result === null) return { verdict: 'brokenOff', steps: run.stepCount };
  return judgeResult(recording.result, recording, run.result());
}
