import { KeyCap } from '../parts/KeyCap.tsx';
import { askLine } from './askLine.ts';
import { holdLines } from './holdLines.ts';
import type { LiveRun } from './LiveRun.ts';

/** Id of the heading, by which a marked button is described. */
export const NEXT_HEAD = 'next-head';

/** The holds that are marked in the room and the request that is marked beside it, in words. Nothing while nothing is marked. */
export function NextList({ live }: { readonly live: LiveRun }) {
  const lines = holdLines(live);
  const ask = askLine(live);
  if (lines.length === 0 && !ask) return null;
  return (
    <section class="panel-part touching" aria-labelledby={NEXT_HEAD}>
      <h2 id={NEXT_HEAD}>Next</h2>
      <ul class="small">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        {ask && (
          <li key="ask">
            {ask.words} <KeyCap>{ask.cap}</KeyCap>
          </li>
        )}
      </ul>
    </section>
  );
}
