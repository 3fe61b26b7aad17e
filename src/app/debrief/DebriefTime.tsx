import { useMemo, useState } from 'preact/hooks';
import { followables } from '../../core/debrief/follow.ts';
import type { Followed } from '../../core/debrief/followTypes.ts';
import type { PlayHead } from './PlayHead.ts';
import { stateWords, type Lane } from './timeline/lanes.ts';
import { Timeline } from './timeline/Timeline.tsx';
import { Transport } from './transport/Transport.tsx';
import { momentText } from './timeText.ts';
import type { Debrief } from './useDebrief.ts';
import type { Navigation } from './useNavigation.ts';

interface DebriefTimeProps extends Navigation {
  readonly debrief: Debrief & { readonly head: PlayHead };
  readonly lanes: readonly Lane[];
  readonly selected: number | null;
  /** The thing that is followed, or '' for none. */
  readonly follow: string;
  readonly followed: Followed | null;
  readonly onFollow: (object: string) => void;
  readonly onHelp: () => void;
}

/** The lower part of the page: transport and timeline. */
export function DebriefTime({ debrief, lanes, selected, follow, followed, onFollow, onHelp, onEvent, onMark }: DebriefTimeProps) {
  const { head, log, result, timeline } = debrief;
  const [spanS, setSpanS] = useState<number | null>(null);
  const things = useMemo(() => (log ? followables(log) : []), [log]);
  const spoiling = useMemo(() => (result?.breaks ?? []).flatMap(({ spread }) => spread.filter(({ touch }) => touch !== null).map(({ step }) => step)), [result]);
  return (
    <section class="debrief-time" aria-label="Time">
      <Transport head={head} onEvent={onEvent} followables={things} follow={follow} onFollow={onFollow} spanS={spanS} onSpan={setSpanS} onHelp={onHelp} />
      <Timeline
        head={head}
        timeline={timeline}
        lanes={lanes}
        spoiling={spoiling}
        followed={followed}
        selected={selected}
        spanS={spanS}
        onMark={onMark}
        tell={(step) => tellInstant(step, timeline.breaks, followed)}
      />
    </section>
  );
}

/** A break begins within this many steps of an instant at which it is told to begin. */
const BEGINS_STEPS = 6;

/** What holds at an instant, for the timeline's reader. */
function tellInstant(step: number, breaks: Debrief['timeline']['breaks'], followed: Followed | null): string {
  const lasting = breaks.filter(({ fromStep, toStep }) => step >= fromStep && step <= toStep);
  const began = lasting.find(({ fromStep }) => Math.abs(step - fromStep) < BEGINS_STEPS);
  const words = began ? `break ${began.number} begins` : lasting.map(({ number, fromStep }) => `break ${number} since ${momentText(fromStep)}`).join(', ');
  return [words, followed ? `${followed.words} ${stateWords(followed.intervals, step)}` : ''].filter(Boolean).join(', ');
}
