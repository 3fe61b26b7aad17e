import type { StoredRun } from '../../storage/storedRun.ts';
import type { StorageState } from './libraryService.ts';
import { exportReminder, keepingWords, roomWords } from './libraryWords.ts';

interface StorageNoticeProps {
  readonly runs: readonly StoredRun[];
  readonly storage: StorageState;
  readonly onAsk: () => void;
}

/** Where the runs are, how safe they are there, and what makes them safer. */
export const StorageNotice = ({ runs, storage, onAsk }: StorageNoticeProps) => (
  <section class="storage-notice" aria-labelledby="storage-head">
    <h2 id="storage-head">Where they are kept</h2>
    <p>
      In this browser on this machine, nowhere else. {keepingWords(storage)} {roomWords(storage)}
    </p>
    {storage.persisted === false && <button onClick={onAsk}>Ask the browser to keep them</button>}
    <p>{exportReminder(runs)}</p>
  </section>
);
