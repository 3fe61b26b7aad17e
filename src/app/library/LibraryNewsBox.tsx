import type { LibraryNews } from './useLibrary.ts';

interface LibraryNewsBoxProps {
  readonly share: number | null;
  readonly news: LibraryNews | null;
  readonly notes: readonly string[];
}

/** Names of refused files that are shown at once. */
const REFUSED_SHOWN = 20;

/** How far an action is, what it came to, and what of the list is damaged. */
export const LibraryNewsBox = ({ share, news, notes }: LibraryNewsBoxProps) => (
  <div class="library-news">
    {share !== null && (
      <label>
        Working <progress max={1} value={share} />
      </label>
    )}
    <p role="status">{share === null && news?.words}</p>
    {share === null && news !== null && news.refused.length > 0 && (
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
