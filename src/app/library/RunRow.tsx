import { SIMULATION_VERSION } from '../../core/recording/simulationVersion.ts';
import type { StoredRun } from '../../storage/storedRun.ts';
import { clockText } from '../parts/clockText.ts';
import { dateText } from '../parts/dateText.ts';
import { breaksText, verdictText } from './runWords.ts';

interface RunRowProps {
  readonly run: StoredRun;
  readonly chosen: boolean;
  readonly doubled: boolean;
  readonly onChoose: (chosen: boolean) => void;
  readonly onOpen: () => void;
  readonly onDebrief: () => void;
  readonly onDelete: () => void;
}

/** One run of the list: what it came to, what is to be known about its recording, and what can be done with it. */
export function RunRow({ run, chosen, doubled, onChoose, onOpen, onDebrief, onDelete }: RunRowProps) {
  const name = run.startedAt === '' ? `the run ${run.runId}` : `the run of ${dateText(run.startedAt)}`;
  return (
    <tr class={chosen ? 'run-row run-row-chosen' : 'run-row'}>
      <td>
        <input type="checkbox" aria-label={`Choose ${name}`} checked={chosen} onChange={() => onChoose(!chosen)} />
      </td>
      <td class="run-date">{run.startedAt === '' ? 'unknown' : dateText(run.startedAt)}</td>
      <th scope="row">
        {run.title || `Run ${run.runId}`}
        <Remarks run={run} doubled={doubled} />
      </th>
      <td class={run.verdict === 'notYet' ? 'broken-words' : run.verdict === 'met' ? 'run-met' : undefined}>{verdictText(run)}</td>
      <td>{run.total === null ? '–' : run.total.toFixed(1)}</td>
      <td>{breaksText(run)}</td>
      <td>{clockText(run.seconds)}</td>
      <td class="run-actions-cell">
        {!run.fault && (
          <button onClick={onOpen} aria-label={`Report of ${name}`}>
            {run.inParts && !run.finished ? 'Close, report' : 'Report'}
          </button>
        )}
        {!run.fault && run.finished && (
          <button onClick={onDebrief} aria-label={`Debrief of ${name}`}>
            Debrief
          </button>
        )}
        <button onClick={onDelete} aria-label={`Delete ${name}`}>
          Delete
        </button>
      </td>
    </tr>
  );
}

function Remarks({ run, doubled }: { readonly run: StoredRun; readonly doubled: boolean }) {
  const remarks: string[] = [];
  if (run.fault) remarks.push(run.fault);
  else if (!run.finished) remarks.push('Broken off before its end.');
  if (doubled) remarks.push('There is another recording under the same id with another content; verify both.');
  if (!run.fault && run.simulation !== SIMULATION_VERSION) remarks.push(`Recorded under version ${run.simulation} of the simulation: it can be looked at here, not verified.`);
  return (
    <>
      {remarks.map((remark) => (
        <span key={remark} class="small run-remark">
          {remark}
        </span>
      ))}
    </>
  );
}
