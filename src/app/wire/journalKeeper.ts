import type { Recorder } from '../../core/recording/Recorder.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunContract } from '../../core/run/contract.ts';
import type { RunJournal } from '../../storage/RunJournal.ts';
import type { RunKeeper } from '../run/RunKeeper.ts';
import { askToKeepNewRun } from './library/browserStorage.ts';

const APPEND_STEPS = 60;
const SNAPSHOT_STEPS = 1200;

/** Keeps a run through the journal of this browser: twice a second what was played, every ten seconds a snapshot. */
export function journalKeeper(journal: RunJournal): RunKeeper {
  const append = (recorder: Recorder, run: RunContract): Promise<unknown> => {
    const increment = recorder.takeIncrement();
    if (!increment) return Promise.resolve();
    return journal.append(increment, run.stepCount % SNAPSHOT_STEPS === 0 ? run.snapshot() : null);
  };
  return {
    get notice() {
      return journal.notice;
    },
    afterStep(recorder, run) {
      if (run.stepCount % APPEND_STEPS === 0) void append(recorder, run);
    },
    async left(recorder, run) {
      await append(recorder, run);
      await journal.close();
    },
    async finished(file: RunFile) {
      await journal.finish(file);
      // A run has just been made that is worth keeping: the moment to ask.
      void askToKeepNewRun();
    },
  };
}
