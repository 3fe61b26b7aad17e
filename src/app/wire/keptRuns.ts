import { success, type Result } from '../../core/base/result.ts';
import { STEPS_PER_SECOND } from '../../core/base/time.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunStore } from '../../storage/RunStore.ts';
import type { StoredRun } from '../../storage/storedRun.ts';
import type { KeptRun } from '../services.ts';
import { continueRun } from './beginRun.ts';

/** Runs in this browser: those broken off and those finished, the newest first. */
export async function keptRuns(store: RunStore): Promise<{ readonly brokenOff: readonly KeptRun[]; readonly finished: readonly KeptRun[] }> {
  const all = await store.list();
  return { brokenOff: all.filter((run) => !run.finished).map(keptRun), finished: all.filter((run) => run.finished).map(keptRun) };
}

const keptRun = ({ runId, title, startedAt, steps, fault }: StoredRun): KeptRun => ({ runId, title, startedAt, seconds: steps / STEPS_PER_SECOND, fault });

/** Recording of a kept run. One that was broken off is ended where it stopped; where that is not possible it is given as it is. */
export async function openKept(store: RunStore, runId: string): Promise<Result<RunFile, string>> {
  const loaded = await store.load(runId);
  if (!loaded.ok) return loaded;
  const { recording } = loaded.value;
  if (recording.result !== null) return success(recording);
  const continued = await continueRun(store, runId);
  return success(continued.ok ? await continued.value.end() : recording);
}
