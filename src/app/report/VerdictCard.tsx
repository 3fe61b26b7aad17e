import type { Score, VerdictReason } from '../../core/scoring/score.ts';
import { EventList } from './EventList.tsx';
import { verdictWords } from './scoreWords.ts';

/** The verdict, the conditions that it rests on, and the score beside it. */
export const VerdictCard = ({ score }: { readonly score: Score }) => (
  <section class={`verdict-card verdict-${score.verdict}`} aria-labelledby="verdict-head">
    <header class="verdict-head">
      <h2 id="verdict-head">{verdictWords(score)}</h2>
      <p class="verdict-score">
        <strong>{score.total.toFixed(1)}</strong> of 100, standard {score.standard}
      </p>
    </header>
    <ul class="reasons">
      {score.reasons.map((reason) => (
        <Reason key={reason.id} reason={reason} />
      ))}
    </ul>
    <p class="small verdict-note">Every condition must hold; points do not make up for one that does not.</p>
  </section>
);

const Reason = ({ reason }: { readonly reason: VerdictReason }) => (
  <li class={reason.holds ? 'reason' : 'reason reason-fails'}>
    <span class="reason-mark" role="img" aria-label={reason.holds ? 'holds' : 'does not hold'}>
      {reason.holds ? '✓' : '✕'}
    </span>
    {reason.events.length === 0 ? (
      <span>{reason.words}</span>
    ) : (
      <details>
        <summary>{reason.words}</summary>
        <EventList events={reason.events} />
      </details>
    )}
  </li>
);
