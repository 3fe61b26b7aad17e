import { Progress } from './Progress.tsx';
import type { LibraryState } from './useLibrary.ts';

interface LibraryNewsBoxProps extends Pick<LibraryState, 'busy' | 'teller' | 'news'> {
  readonly notes: readonly string[];
}

/** Names of refused files that are shown at once. */
const REFUSED_SHOWN = 20;

/** How far an action is, what it came to, and what of the list is damaged. */
export const LibraryNewsBox = ({ busy, teller, news, notes }: LibraryNewsBoxProps) => (
  <div class="library-news">
    {busy && <Progress teller={teller} />}
    <p role="status">{!busy && news?.words}</p>
    {!busy && news !== null && news.refused.length > 0 && (
      <ul class="refused" aria-label="Refused files">
        {news.refused.slice(0, REFUSED_SHOWN).map(({ name, words }, k) => (
          <li key={k}>
            <strong>{name}</strong>: {words}
          </li>
        ))}
        {news.refused.length > REFUSED_SHOWN && <li>and {news.refused.length - REFUSED_SHOWN} more.</li>}
      </ul>
    )}
    {notes.map((note) => (
      <p key={note} class="trouble">
        {note}
      </p>
    ))}
  </div>
);
