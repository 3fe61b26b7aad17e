import type { RemedyRow } from '../../core/ledger/rules/remedyRow.ts';
import { ruleById } from '../../core/ledger/rules/ruleBook.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';
import { STATION_WORDS } from '../../core/ledger/rules/station.ts';
import { capital, counted } from '../parts/sentence.ts';
import { REMEDY_ADVICE, REQUEST_ADVICE } from '../run/words.ts';

interface RemedyTableProps {
  readonly rows: readonly RemedyRow[];
  readonly onRule: (id: string) => void;
}

/** Breaks and what answers them, and how far each can be practised here. */
export function RemedyTable({ rows, onRule }: RemedyTableProps) {
  if (rows.length === 0) return <p class="rules-none">No remedy fits. Clear the search or widen it.</p>;
  return (
    <section class="rules-part" aria-labelledby="remedies-head">
      <h2 id="remedies-head">Breaks and their remedies</h2>
      <p class="rules-principle">Stop, say it, contain it, replace or cover, then go on. In doubt it is contaminated.</p>
      <table class="table rules-table">
        <caption class="unseen">What happened, what must be done, and how far it can be practised here</caption>
        <thead>
          <tr>
            <th scope="col">What happened</th>
            <th scope="col">What must be done</th>
            <th scope="col">Here</th>
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.broken}</th>
              <td>{row.asked}</td>
              <td data-head="Here: ">
                <Here row={row} onRule={onRule} />
              </td>
              <td class="small" data-head="Source: ">{sourceWords(row.source, row.mark)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Here({ row: { practised }, onRule }: { readonly row: RemedyRow; readonly onRule: (id: string) => void }) {
  if (!('rules' in practised)) {
    return <span class="small">{practised.missing === undefined ? `Waits for the station “${STATION_WORDS[practised.station]}”.` : `Not shown yet in “${STATION_WORDS[practised.station]}”: ${practised.missing}.`}</span>;
  }
  const { rules, remedies, requests = [], without } = practised;
  return (
    <>
      {capital([...requests.map((request) => REQUEST_ADVICE[request]), ...remedies.map((remedy) => REMEDY_ADVICE[remedy])].join('; '))}.{' '}
      <details class="rule-links">
        <summary>{counted(rules.length, 'rule')}</summary>
        <ul>
          {rules.map((id) => (
            <li key={id}>
              <button class="quiet" onClick={() => onRule(id)}>
                {ruleById(id).title}
              </button>
            </li>
          ))}
        </ul>
      </details>
      {without !== undefined && <span class="small">Not shown: {without}.</span>}
    </>
  );
}
