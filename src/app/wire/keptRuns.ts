import { success, type Result } from '../../core/base/result.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunStore } from '../../storage/RunStore.ts';
import { isBrokenOff } from '../../storage/storedRun.ts';
import type { KeptRuns } from '../services.ts';
import { continueRun } from './beginRun.ts';
import type { SettleAhead } from './SettleAhead.ts';

/** Runs in this browser: those that can go on, and the finished ones, the newest first. */
export async function keptRuns(store: RunStore): Promise<KeptRuns> {
  const all = await store.list();
  return { brokenOff: all.filter(isBrokenOff), finished: all.filter(({ finished }) => finished) };
}

/** Recording of a kept run. One that was broken off here is ended where it stopped; where that is not possible it is given as it is. */
export async function openKept(store: RunStore, ahead: SettleAhead, key: string): Promise<Result<RunFile, string>> {
  const loaded = await store.load(key);
  if (!loaded.ok) return loaded;
  const { recording } = loaded.value;
  const isOpen = recording.result === null && (await store.list()).some((run) => run.key === key && run.inParts);
  if (!isOpen) return success(recording);
  const continued = await continueRun(store, ahead, key);
  return success(continued.ok ? await continued.value.end() : recording);
}
