import { useMemo } from 'preact/hooks';
import type { Followed } from '../../../core/debrief/followTypes.ts';
import { stateWords } from '../timeline/lanes.ts';
import type { PlayHead } from '../PlayHead.ts';
import { momentText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';
import { followRows, rowAt } from './followRows.ts';

/** So many rows around the instant are listed at once. */
const ROWS_MAX = 160;

interface FollowPanelProps {
  readonly head: PlayHead;
  readonly followed: Followed | null;
  readonly onGo: (step: number) => void;
}

/** What the followed thing was and what it touched, in order; each row leads to its instant. */
export function FollowPanel({ head, followed, onGo }: FollowPanelProps) {
  const rows = useMemo(() => (followed ? followRows(followed) : []), [followed]);
  const now = usePlayHead(head, ({ step }) => rowAt(rows, step));
  const state = usePlayHead(head, ({ step }) => (followed ? stateWords(followed.intervals, step) : ''));
  if (!followed) return <p>Choose under “follow” what to follow through the run: a glove, a sleeve, the drape, the sheath, an item.</p>;
  const first = Math.max(0, Math.min(now - ROWS_MAX / 2, rows.length - ROWS_MAX));
  const listed = rows.slice(first, first + ROWS_MAX);
  return (
    <>
      <h2 class="panel-title">{followed.words}</h2>
      <p class={state === 'became unsterile' ? 'broken-words' : 'small'}>Now {state}.</p>
      {rows.length === 0 && <p>It touched nothing so far.</p>}
      {first > 0 && <p class="small">{first} touches before these</p>}
      <ol class="follow-rows">
        {listed.map((row, k) => (
          <li key={`${row.fromStep} ${first + k}`}>
            <button class={`row-button${first + k === now ? ' row-now' : ''}`} aria-current={first + k === now ? 'step' : undefined} onClick={() => onGo(row.fromStep)}>
              <span class="row-time">{momentText(row.fromStep)}</span>
              <span>
                {row.other} <span class="small">{[row.part, row.count > 1 ? `${row.count} times` : ''].filter(Boolean).join(', ')}</span>
                {row.changed && <strong class="broken-words row-fate">became unsterile here</strong>}
                {row.spoils && !row.changed && <strong class="broken-words row-fate">an unsterile contact</strong>}
              </span>
            </button>
          </li>
        ))}
      </ol>
      {first + listed.length < rows.length && <p class="small">{rows.length - first - listed.length} touches after these</p>}
    </>
  );
}
