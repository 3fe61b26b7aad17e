import { useState } from 'preact/hooks';
import type { StoredRun } from '../../storage/storedRun.ts';
import { RunRow } from './RunRow.tsx';

interface RunTableProps {
  readonly runs: readonly StoredRun[];
  readonly chosen: ReadonlySet<string>;
  /** Ids under which there is more than one recording. */
  readonly doubled: ReadonlySet<string>;
  readonly onChoose: (keys: readonly string[], chosen: boolean) => void;
  readonly onOpen: (key: string) => void;
  readonly onDebrief: (key: string) => void;
  readonly onDelete: (key: string) => void;
}

/** Rows that are drawn at first, and more each time it is asked for. */
const ROWS = 50;

/** The runs that pass the filter, the newest first. */
export function RunTable({ runs, chosen, doubled, onChoose, onOpen, onDebrief, onDelete }: RunTableProps) {
  const [rows, setRows] = useState(ROWS);
  const all = runs.length > 0 && runs.every(({ key }) => chosen.has(key));
  return (
    <>
      <table class="table run-table">
        <caption class="unseen">Runs</caption>
        <thead>
          <tr>
            <th scope="col">
              <input type="checkbox" aria-label="Choose all runs shown" checked={all} onChange={() => onChoose(runs.map(({ key }) => key), !all)} />
            </th>
            <th scope="col">Date</th>
            <th scope="col">Scenario</th>
            <th scope="col">Verdict</th>
            <th scope="col">Score</th>
            <th scope="col">Breaks</th>
            <th scope="col">Time</th>
            <th scope="col">
              <span class="unseen">Actions</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {runs.slice(0, rows).map((run) => (
            <RunRow
              key={run.key}
              run={run}
              chosen={chosen.has(run.key)}
              doubled={doubled.has(run.runId)}
              onChoose={(isChosen) => onChoose([run.key], isChosen)}
              onOpen={() => onOpen(run.key)}
              onDebrief={() => onDebrief(run.key)}
              onDelete={() => onDelete(run.key)}
            />
          ))}
        </tbody>
      </table>
      {runs.length > rows && <button onClick={() => setRows(rows + 4 * ROWS)}>Show more ({runs.length - rows} not shown)</button>}
    </>
  );
}
