import { DebriefOfRun } from '../../core/debrief/DebriefOfRun.ts';
import type { DebriefSource } from '../../core/debrief/debriefSource.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { SettledState } from '../../core/room/settle.ts';
import type { DebriefReply, DebriefRequest } from './debriefMessages.ts';

/**
 * Plays a recording in a worker for its debrief; the first seconds can be shown at once.
 * @param settled how the scene of its scenario comes to rest; without it the worker finds out first
 */
export function openDebrief(file: RunFile, settled?: SettledState): DebriefSource {
  const worker = new Worker(new URL('./debriefWorker.ts', import.meta.url), { type: 'module' });
  const debrief = new DebriefOfRun(file, () => worker.terminate());
  worker.addEventListener('message', ({ data }: MessageEvent<DebriefReply>) => {
    if (data.kind === 'news') debrief.take(data.news);
    else debrief.end();
  });
  worker.addEventListener('error', () => debrief.fail('The run could not be played again in this browser.'));
  worker.postMessage({ file, settled } satisfies DebriefRequest);
  return debrief;
}
