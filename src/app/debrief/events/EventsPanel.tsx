import { useMemo } from 'preact/hooks';
import type { PlayHead } from '../PlayHead.ts';
import type { Lane, LaneMark } from '../timeline/lanes.ts';
import { momentText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';

interface EventsPanelProps {
  readonly head: PlayHead;
  readonly lanes: readonly Lane[];
  readonly onMark: (mark: LaneMark) => void;
}

/** Everything that happened, in order of time: the timeline as a list. */
export function EventsPanel({ head, lanes, onMark }: EventsPanelProps) {
  const marks = useMemo(() => lanes.flatMap((lane) => lane.marks).sort((a, b) => a.step - b.step), [lanes]);
  const now = usePlayHead(head, ({ step }) => marks.filter((mark) => mark.step <= step).length - 1);
  return (
    <>
      <h2 class="panel-title">All events</h2>
      {marks.length === 0 && <p>Nothing happened besides touches.</p>}
      <ol class="follow-rows">
        {marks.map((mark, k) => (
          <li key={k}>
            <button class={`row-button${k === now ? ' row-now' : ''}`} aria-current={k === now ? 'step' : undefined} onClick={() => onMark(mark)}>
              <span class="row-time">{momentText(mark.step)}</span>
              <span class={mark.bad ? 'broken-words' : undefined}>{mark.sentence}</span>
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}
