import type { EventRef } from '../../core/scoring/score.ts';
import { clockText } from '../parts/clockText.ts';
import { capital } from '../parts/sentence.ts';
import { secondsAt } from './reportFacts.ts';

/** Events behind a number, in order of time; a break leads to its card. */
export const EventList = ({ events }: { readonly events: readonly EventRef[] }) => (
  <ol class="event-list">
    {[...events]
      .sort((a, b) => a.step - b.step)
      .map((event, k) => (
        <li key={k}>
          <span class="event-time">{clockText(secondsAt(event.step))}</span>
          {event.kind === 'break' && event.number !== undefined ? <BreakLink number={event.number} words={event.words} /> : <span>{capital(event.words)}</span>}
        </li>
      ))}
  </ol>
);

/** Goes to the card of a break on the same page, without a step in the browser's history. */
function BreakLink({ number, words }: { readonly number: number; readonly words: string }) {
  const id = `break-${number}`;
  const follow = (event: MouseEvent): void => {
    event.preventDefault();
    const card = document.getElementById(id);
    card?.focus({ preventScroll: true });
    card?.scrollIntoView({ block: 'start' });
  };
  return (
    <a href={`#${id}`} onClick={follow}>
      {capital(words)}
    </a>
  );
}
