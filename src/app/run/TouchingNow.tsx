import type { LiveRun } from './LiveRun.ts';

/** The drawn room in words: what touches what at this moment. */
export function TouchingNow({ live }: { readonly live: LiveRun }) {
  const lines = live.run.touchLines();
  const shown = live.coaching === 'shown';
  return (
    <section class="panel-part touching" aria-labelledby="touching-head">
      <h2 id="touching-head">Touching now</h2>
      {lines.length === 0 ? (
        <p class="small">nothing</p>
      ) : (
        <ul class="small">
          {lines.map((line) => (
            <li key={line.words} class={shown && line.spoils ? 'broken-words' : undefined}>
              {line.words}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
