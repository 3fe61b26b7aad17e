import './noEval.ts';
import { HASH_STEPS, type MakeRun, type RunFile } from '../../core/recording/recording.ts';
import { Replayer } from '../../core/recording/Replayer.ts';
import { verifyRun } from '../../core/recording/verifyRun.ts';
import { Run } from '../../core/run/run.ts';
import type { ReplayReply, ReplayRequest } from './replayMessages.ts';

const makeRun: MakeRun = (scenario, seed) => new Run(scenario, seed);
const reply = (message: ReplayReply): void => postMessage(message);
const share = (done: number, steps: number): void => reply({ kind: 'share', share: steps === 0 ? 1 : done / steps });

/** Plays recordings beside the page, which stays responsive. */
addEventListener('message', ({ data }: MessageEvent<ReplayRequest>) => {
  try {
    if (data.task === 'verify') reply({ kind: 'verified', verification: verifyRun(data.file, makeRun, share) });
    else reply({ kind: 'result', result: resultOf(data.file) });
  } catch (error) {
    reply({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
});

function resultOf(file: RunFile) {
  const replayer = new Replayer(file, makeRun);
  while (!replayer.done) {
    replayer.step();
    if (replayer.run.stepCount % HASH_STEPS === 0) share(replayer.run.stepCount, file.steps);
  }
  return replayer.run.result();
}
