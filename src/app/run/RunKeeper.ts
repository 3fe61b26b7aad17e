import type { Recorder } from '../../core/recording/Recorder.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunContract } from '../../core/run/contract.ts';

/** Keeps a run safe while it is played: closing the page loses at most the last half second. */
export interface RunKeeper {
  /** One sentence while the run cannot be kept, or null. */
  readonly notice: string | null;
  afterStep(recorder: Recorder, run: RunContract): void;
  /** The page lets go of the run, which can be taken up again. */
  left(recorder: Recorder, run: RunContract): Promise<void>;
  /** The run came to its end. */
  finished(file: RunFile): Promise<void>;
}
