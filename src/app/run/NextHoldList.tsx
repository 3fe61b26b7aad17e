import { holdLines } from './holdLines.ts';
import type { LiveRun } from './LiveRun.ts';

/** The holds that are marked in the room, in words. Nothing while none is marked. */
export function NextHoldList({ live }: { readonly live: LiveRun }) {
  const lines = holdLines(live);
  if (lines.length === 0) return null;
  return (
    <section class="panel-part touching" aria-labelledby="next-hold-head">
      <h2 id="next-hold-head">Next hold</h2>
      <ul class="small">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
