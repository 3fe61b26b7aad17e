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
          {event.kind === 'break' && event.number !== undefined ? <a href={`#break-${event.number}`}>{capital(event.words)}</a> : <span>{capital(event.words)}</span>}
        </li>
      ))}
  </ol>
);
