import { useState } from 'preact/hooks';
import type { StoredRun } from '../../storage/storedRun.ts';
import { clockText } from '../parts/clockText.ts';
import { dateText } from '../parts/dateText.ts';

interface BrokenOffRunsProps {
  readonly runs: readonly StoredRun[];
  readonly onResume: (key: string) => void;
  readonly onClose: (key: string) => void;
  readonly onDelete: (key: string) => void;
}

/** Runs that were broken off by closing the page or leaving: go on, close with a report, or delete. */
export function BrokenOffRuns({ runs, onResume, onClose, onDelete }: BrokenOffRunsProps) {
  const [asked, setAsked] = useState<string | null>(null);
  if (runs.length === 0) return null;
  return (
    <section class="broken-off" aria-labelledby="broken-off-head">
      <h2 id="broken-off-head">Broken off</h2>
      <ul>
        {runs.map((run) => (
          <li key={run.key}>
            <span class="broken-off-words">
              <strong>{run.title || 'A run'}</strong>
              <span class="small">
                {run.fault ?? `${clockText(run.seconds)} played, begun ${dateText(run.startedAt)}`}
              </span>
            </span>
            <span class="broken-off-actions">
              {!run.fault && <button onClick={() => onResume(run.key)}>Go on</button>}
              {!run.fault && <button onClick={() => onClose(run.key)}>Close and see the report</button>}
              {asked === run.key ? (
                <button class="warn" onClick={() => onDelete(run.key)}>
                  Delete for good
                </button>
              ) : (
                <button onClick={() => setAsked(run.key)}>Delete</button>
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
