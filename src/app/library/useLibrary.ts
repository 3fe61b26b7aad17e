import { useEffect, useRef, useState } from 'preact/hooks';
import type { StoredRun } from '../../storage/storedRun.ts';
import type { Library, LibraryService, Refusal, StorageState } from './libraryService.ts';
import { exportWords, importWords } from './libraryWords.ts';
import { ShareTeller } from './Progress.tsx';

/** What the last action came to. */
export interface LibraryNews {
  readonly words: string;
  readonly refused: readonly Refusal[];
}

export interface LibraryState {
  /** Null until the first look. */
  readonly library: Library | null;
  readonly storage: StorageState | null;
  readonly news: LibraryNews | null;
  /** An action is under way; `teller` says how far it is. */
  readonly busy: boolean;
  readonly teller: ShareTeller;
  setDeleted(keys: readonly string[], deleted: boolean): void;
  deleteForGood(keys: readonly string[]): void;
  exportRuns(runs: readonly StoredRun[]): void;
  importFiles(files: readonly File[]): void;
  askToKeep(): void;
  say(words: string): void;
}

/** The runs of this browser and what can be done with them; one action after the other. */
export function useLibrary(service: LibraryService): LibraryState {
  const [library, setLibrary] = useState<Library | null>(null);
  const [storage, setStorage] = useState<StorageState | null>(null);
  const [news, setNews] = useState<LibraryNews | null>(null);
  const [busy, setBusy] = useState(false);
  const [teller] = useState(() => new ShareTeller());
  const last = useRef(Promise.resolve());
  const refresh = async (): Promise<void> => {
    setLibrary(await service.list());
    setStorage(await service.storage());
  };
  useEffect(() => void refresh(), [service]);

  /** Does an action after those before it, tells what came of it, and looks again. */
  const act = (action: () => Promise<LibraryNews | null>): void => {
    last.current = last.current.then(async () => {
      setBusy(true);
      setNews(await action().catch((error: unknown) => ({ words: `That did not work: ${error instanceof Error ? error.message : String(error)}`, refused: [] })));
      await refresh();
      setBusy(false);
    });
  };
  const told = async (words: Promise<string | null>): Promise<LibraryNews | null> => {
    const trouble = await words;
    return trouble === null ? null : { words: trouble, refused: [] };
  };
  return {
    library,
    storage,
    news,
    busy,
    teller,
    setDeleted: (keys, deleted) => act(() => told(service.setDeleted(keys, deleted))),
    deleteForGood: (keys) => act(() => told(service.deleteForGood(keys))),
    exportRuns: (runs) =>
      act(async () => {
        const outcome = await service.exportRuns(runs, teller.tell);
        return { words: exportWords(outcome), refused: outcome.failed };
      }),
    importFiles: (files) =>
      act(async () => {
        const outcome = await service.importFiles(files, teller.tell);
        return { words: importWords(outcome), refused: outcome.refused };
      }),
    askToKeep: () => void service.askToKeep().then(setStorage),
    say: (words) => setNews({ words, refused: [] }),
  };
}
