import { useRef, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Services } from '../services.ts';
import { useDroppedFile } from '../start/useDroppedFile.ts';
import { FilterRow } from './FilterRow.tsx';
import { filterRuns, NO_FILTER, scenariosOf } from './filterRuns.ts';
import { LibraryNewsBox } from './LibraryNewsBox.tsx';
import type { Library } from './libraryService.ts';
import { RunTable } from './RunTable.tsx';
import { StorageNotice } from './StorageNotice.tsx';
import { TrendChart } from './TrendChart.tsx';
import { UndoStrip } from './UndoStrip.tsx';
import { useLibrary, type LibraryState } from './useLibrary.ts';

interface LibraryPageProps {
  readonly services: Services;
  readonly onReport: (file: RunFile) => void;
  readonly onDebrief: (file: RunFile) => void;
  readonly onBack: () => void;
}

/** All runs of this browser: find, compare, open, export, import, delete. */
export function LibraryPage({ services, onReport, onDebrief, onBack }: LibraryPageProps) {
  const state = useLibrary(services.library);
  useDroppedFile((file) => state.importFiles([file]));
  const open = async (key: string, to: (file: RunFile) => void): Promise<void> => {
    const opened = await services.openKept(key);
    if (opened.ok) to(opened.value);
    else state.say(opened.error);
  };
  return (
    <div class="library">
      <header class="bar report-bar">
        <h1 class="bar-title">My runs</h1>
        <span class="report-summary" />
        <span class="report-actions">
          <button onClick={onBack}>Start page</button>
          <ImportButton busy={state.busy} onFiles={state.importFiles} />
        </span>
      </header>
      <main class="library-main">
        {state.library && <UndoStrip deleted={state.library.deleted} onTakeBack={(keys) => state.setDeleted(keys, false)} onDeleteForGood={state.deleteForGood} />}
        <LibraryNewsBox busy={state.busy} teller={state.teller} news={state.news} notes={state.library?.notes ?? []} />
        {state.library && <Runs state={state} library={state.library} onOpen={(key) => void open(key, onReport)} onDebrief={(key) => void open(key, onDebrief)} />}
      </main>
    </div>
  );
}

interface RunsProps {
  readonly state: LibraryState;
  readonly library: Library;
  readonly onOpen: (key: string) => void;
  readonly onDebrief: (key: string) => void;
}

function Runs({ state, library, onOpen, onDebrief }: RunsProps) {
  const [filter, setFilter] = useState(NO_FILTER);
  const [chosen, setChosen] = useState<ReadonlySet<string>>(new Set());
  const shown = filterRuns(library.runs, filter);
  const picked = library.runs.filter(({ key }) => chosen.has(key));
  const choose = (keys: readonly string[], isChosen: boolean): void => {
    const next = new Set(chosen);
    for (const key of keys) if (isChosen) next.add(key);
    else next.delete(key);
    setChosen(next);
  };
  const remove = (keys: readonly string[]): void => {
    choose(keys, false);
    state.setDeleted(keys, true);
  };
  const scenarios = scenariosOf(library.runs);
  return (
    <>
      {library.runs.length === 0 ? (
        library.notes.length === 0 && <p class="report-none">No runs yet. Every run that you end is kept here; archives and run files from elsewhere can be imported.</p>
      ) : (
        <>
          <TrendChart runs={shown} mixed={filter.scenario === '' && scenariosOf(shown).length > 1} />
          <FilterRow filter={filter} scenarios={scenarios} onChange={setFilter} />
          <p class="list-actions">
            <span role="status">
              {shown.length === library.runs.length ? `${shown.length} runs` : `${shown.length} of ${library.runs.length} runs`}
              {picked.length > 0 && `, ${picked.length} chosen`}
            </span>
            <button disabled={state.busy} onClick={() => state.exportRuns(picked.length > 0 ? picked : shown)}>
              {picked.length > 0 ? `Export the chosen (${picked.length})` : `Export all shown (${shown.length})`}
            </button>
            <button disabled={picked.length === 0} onClick={() => remove(picked.map(({ key }) => key))}>
              Delete the chosen
            </button>
          </p>
          <RunTable runs={shown} chosen={chosen} doubled={doubledIds(library)} onChoose={choose} onOpen={onOpen} onDebrief={onDebrief} onDelete={(key) => remove([key])} />
          {shown.length === 0 && <p class="report-none">No run passes these choices.</p>}
        </>
      )}
      {state.storage && <StorageNotice runs={library.runs} storage={state.storage} onAsk={state.askToKeep} />}
    </>
  );
}

/** Ids under which more than one recording is kept. */
function doubledIds({ runs, deleted }: Library): ReadonlySet<string> {
  const seen = new Set<string>();
  return new Set([...runs, ...deleted].flatMap(({ runId }) => (seen.has(runId) ? [runId] : (seen.add(runId), []))));
}

function ImportButton({ busy, onFiles }: { readonly busy: boolean; readonly onFiles: (files: readonly File[]) => void }) {
  const input = useRef<HTMLInputElement>(null);
  const chosen = (): void => {
    const files = [...(input.current?.files ?? [])];
    if (files.length > 0) onFiles(files);
    if (input.current) input.current.value = '';
  };
  return (
    <>
      <button disabled={busy} onClick={() => input.current?.click()}>
        Import
      </button>
      <input ref={input} type="file" multiple class="unseen" tabIndex={-1} aria-label="Archives or run files" accept=".zip,.json,.gz,application/zip,application/json,application/gzip" onChange={chosen} />
    </>
  );
}
