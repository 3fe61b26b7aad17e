import { useEffect, useState } from 'preact/hooks';
import type { StoredRun } from '../../storage/storedRun.ts';
import type { Library, LibraryService, Refusal, StorageState } from './libraryService.ts';
import { exportWords, importWords } from './libraryWords.ts';

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
  /** Share of a long action that is done, or null. */
  readonly share: number | null;
  setDeleted(keys: readonly string[], deleted: boolean): void;
  deleteForGood(keys: readonly string[]): void;
  exportRuns(runs: readonly StoredRun[]): void;
  importFiles(files: readonly File[]): void;
  askToKeep(): void;
  say(words: string): void;
}

/** The runs of this browser and what can be done with them; one action at a time. */
export function useLibrary(service: LibraryService): LibraryState {
  const [library, setLibrary] = useState<Library | null>(null);
  const [storage, setStorage] = useState<StorageState | null>(null);
  const [news, setNews] = useState<LibraryNews | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const refresh = async (): Promise<void> => {
    setLibrary(await service.list());
    setStorage(await service.storage());
  };
  useEffect(() => void refresh(), [service]);

  /** Does an action, tells what came of it, and looks again. */
  const act = async (action: () => Promise<LibraryNews | null>): Promise<void> => {
    if (share !== null) return;
    setShare(0);
    setNews(await action().catch((error: unknown) => ({ words: `That did not work: ${error instanceof Error ? error.message : String(error)}`, refused: [] })));
    setShare(null);
    await refresh();
  };
  const told = async (words: Promise<string | null>): Promise<LibraryNews | null> => {
    const trouble = await words;
    return trouble === null ? null : { words: trouble, refused: [] };
  };
  return {
    library,
    storage,
    news,
    share,
    setDeleted: (keys, deleted) => void act(() => told(service.setDeleted(keys, deleted))),
    deleteForGood: (keys) => void act(() => told(service.deleteForGood(keys))),
    exportRuns: (runs) =>
      void act(async () => {
        const outcome = await service.exportRuns(runs, setShare);
        return { words: exportWords(outcome), refused: outcome.failed };
      }),
    importFiles: (files) =>
      void act(async () => {
        const outcome = await service.importFiles(files, setShare);
        return { words: importWords(outcome), refused: outcome.refused };
      }),
    askToKeep: () => void service.askToKeep().then(setStorage),
    say: (words) => setNews({ words, refused: [] }),
  };
}
