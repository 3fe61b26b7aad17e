import { clockText } from '../parts/clockText.ts';
import { dateText } from '../parts/dateText.ts';
import type { KeptRun } from '../services.ts';

/** Finished runs that this browser still keeps. */
export function EarlierRuns({ runs, onOpen }: { readonly runs: readonly KeptRun[]; readonly onOpen: (runId: string) => void }) {
  if (runs.length === 0) return null;
  return (
    <details class="earlier">
      <summary>Earlier runs in this browser ({runs.length})</summary>
      <ul>
        {runs.map((run) => (
          <li key={run.runId}>
            <span>
              {run.title || 'A run'}, {clockText(run.seconds)}, <span class="small">{dateText(run.startedAt)}</span>
            </span>
            <button onClick={() => onOpen(run.runId)}>Report</button>
          </li>
        ))}
      </ul>
    </details>
  );
}
