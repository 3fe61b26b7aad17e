import type { RunFile } from '../../core/recording/recording.ts';
import type { Verification } from '../../core/recording/verifyRun.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { OnShare, Replaying } from '../services.ts';
import type { ReplayReply, ReplayRequest } from './replayMessages.ts';

/** Verifies a recording in a worker. */
export const verifyBeside = (file: RunFile, onShare: OnShare): Replaying<Verification> =>
  beside({ task: 'verify', file }, onShare, (reply) => (reply.kind === 'verified' ? reply.verification : undefined));

/** Finds out in a worker what a recording comes to. */
export const resultBeside = (file: RunFile, onShare: OnShare): Replaying<RunResult> =>
  beside({ task: 'result', file }, onShare, (reply) => (reply.kind === 'result' ? reply.result : undefined));

function beside<Outcome>(request: ReplayRequest, onShare: OnShare, outcomeOf: (reply: ReplayReply) => Outcome | undefined): Replaying<Outcome> {
  const worker = new Worker(new URL('./replayWorker.ts', import.meta.url), { type: 'module' });
  const outcome = new Promise<Outcome>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<ReplayReply>) => {
      if (data.kind === 'share') return onShare(data.share);
      worker.terminate();
      const found = outcomeOf(data);
      if (found === undefined) reject(new Error(data.kind === 'failed' ? data.message : 'unexpected answer'));
      else resolve(found);
    });
    worker.addEventListener('error', () => reject(new Error('the worker could not be started')));
    worker.postMessage(request);
  });
  return { outcome, stop: () => worker.terminate() };
}
