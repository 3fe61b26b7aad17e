import type { StoredRun } from '../../storage/storedRun.ts';
import { verdictText } from '../library/runWords.ts';
import { clockText } from '../parts/clockText.ts';
import { dateText } from '../parts/dateText.ts';

/** Runs that are shown at once; the page of runs has the rest. */
const SHOWN = 3;

interface EarlierRunsProps {
  readonly runs: readonly StoredRun[];
  readonly onOpen: (key: string) => void;
  readonly onAll: () => void;
}

/** The latest finished runs of this browser, and the way to all of them. */
export const EarlierRuns = ({ runs, onOpen, onAll }: EarlierRunsProps) => (
  <section class="earlier" aria-labelledby="earlier-head">
    <h2 id="earlier-head">My runs</h2>
    <ul>
      {runs.slice(0, SHOWN).map((run) => (
        <li key={run.key}>
          <span>
            {run.title}, {clockText(run.seconds)}, {verdictText(run)} <span class="small">{dateText(run.startedAt)}</span>
          </span>
          <button onClick={() => onOpen(run.key)} aria-label={`Report of the run of ${dateText(run.startedAt)}`}>
            Report
          </button>
        </li>
      ))}
    </ul>
    <p class="open-row">
      <button onClick={onAll}>My runs</button>
      <span class="small">{runs.length === 0 ? 'Every run that you end is kept in this browser. Runs from elsewhere can be brought in there.' : `All ${runs.length} runs in this browser: compare, export, import, delete.`}</span>
    </p>
  </section>
);
