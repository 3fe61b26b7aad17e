import type { Score } from '../../../core/scoring/score.ts';
import { verdictWords } from '../scoreWords.ts';

/** The verdict with its conditions. */
export const PrintVerdict = ({ score }: { readonly score: Score }) => (
  <section class="print-verdict">
    <h2>
      Verdict: {verdictWords(score).toLowerCase()}
      <span class="print-score">
        {score.total.toFixed(1)} of 100 points, standard {score.standard}
      </span>
    </h2>
    <ul>
      {score.reasons.map(({ id, holds, words }) => (
        <li key={id}>
          <span class="print-mark">{holds ? '✓' : '✕'}</span> {words}
        </li>
      ))}
    </ul>
  </section>
);
