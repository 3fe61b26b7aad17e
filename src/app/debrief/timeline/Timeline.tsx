import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Followed } from '../../../core/debrief/followTypes.ts';
import type { Timeline as TimelineData } from '../../../core/debrief/timelineTypes.ts';
import { STEPS_PER_SECOND } from '../../../core/base/time.ts';
import type { PlayHead } from '../PlayHead.ts';
import { instantText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';
import { LaneDrawing, StatePatterns } from './LaneDrawing.tsx';
import { lanePlan, type LanePlan } from './lanePlan.ts';
import type { Lane, LaneMark } from './lanes.ts';
import { Axis, PlayLine, UnplayedPart } from './PlayLine.tsx';
import { TouchLane } from './TouchLane.tsx';
import { FollowLane } from './FollowLane.tsx';
import { stepAt, windowAround, type TimeScale } from './timeScale.ts';
import { useScrub } from './useScrub.ts';

/** Where the lanes begin and end, from the sides of the timeline, in CSS pixels. */
const NAMES_PX = 118;
const RIGHT_PX = 26;

export interface TimelineProps {
  readonly head: PlayHead;
  readonly timeline: TimelineData;
  readonly lanes: readonly Lane[];
  /** Steps at which something became unsterile by a touch. */
  readonly spoiling: readonly number[];
  readonly followed: Followed | null;
  /** Number of the break that the page is about. */
  readonly selected: number | null;
  /** Seconds that are shown at once, or null for the whole run. */
  readonly spanS: number | null;
  readonly onMark: (mark: LaneMark) => void;
  /** What can be said of an instant besides its time. */
  readonly tell: (step: number) => string;
}

/** The run along time: lanes of events with a line at the instant that is shown. A slider: dragged, tapped, or moved by keys. */
export function Timeline({ head, timeline, lanes, spoiling, followed, selected, spanS, onMark, tell }: TimelineProps) {
  const host = useRef<HTMLDivElement>(null);
  const wide = useWidth(host);
  const scale = useScale(head, wide, spanS);
  const plan = useMemo(() => lanePlan(lanes, scale, followed !== null), [lanes, scale, followed]);
  const scrub = useScrub({ host, head, plan, toStep: (x) => stepAt(scale, x), onMark });
  const drawing = useMemo(
    () => (
      <>
        <StatePatterns />
        <Axis scale={scale} bottom={plan.axisY} />
        <LaneNames plan={plan} followed={followed} />
        <TouchLane touches={timeline.touches} spoiling={spoiling} scale={scale} y={plan.touchesY} />
        {plan.lanes.map((lane) => (
          <LaneDrawing key={lane.name} lane={lane} scale={scale} selected={selected} />
        ))}
        {followed && plan.followY !== null && <FollowLane followed={followed} scale={scale} y={plan.followY} />}
      </>
    ),
    [plan, scale, timeline, spoiling, followed, selected],
  );
  const said = usePlayHead(head, ({ step, playing }) => (playing ? Math.floor(step / STEPS_PER_SECOND) * STEPS_PER_SECOND : Math.round(step)));
  return (
    <div
      ref={host}
      class="timeline"
      role="slider"
      tabIndex={0}
      aria-label="Time in the run"
      aria-valuemin={0}
      aria-valuemax={head.end}
      aria-valuenow={said}
      aria-valuetext={[instantText(said), tell(said)].filter(Boolean).join(', ')}
      aria-describedby="timeline-help"
      {...scrub}
    >
      <svg width={wide} height={plan.height} aria-hidden="true" focusable="false">
        {drawing}
        <UnplayedPart head={head} scale={scale} bottom={plan.axisY} />
        <PlayLine head={head} scale={scale} bottom={plan.axisY} />
      </svg>
      <span id="timeline-help" class="unseen">
        Left and right arrows move by a tenth of a second, with Shift by a second; Home and End go to the ends.
      </span>
    </div>
  );
}

function LaneNames({ plan, followed }: { readonly plan: LanePlan; readonly followed: Followed | null }) {
  return (
    <g class="lane-names">
      <text x={0} y={plan.touchesY + 5}>
        touches
      </text>
      {plan.lanes.map(({ name, y }) => (
        <text key={name} x={0} y={y + 5}>
          {name}
        </text>
      ))}
      {followed && plan.followY !== null && (
        <text x={0} y={plan.followY + 5}>
          {followed.words.length > 17 ? `${followed.words.slice(0, 16)}…` : followed.words}
        </text>
      )}
    </g>
  );
}

/** Width of an element in CSS pixels, kept up to date. */
function useWidth(host: { readonly current: HTMLElement | null }): number {
  const [wide, setWide] = useState(1000);
  useLayoutEffect(() => {
    const element = host.current!;
    const measure = (): void => setWide(Math.max(320, element.clientWidth));
    measure();
    const sizes = new ResizeObserver(measure);
    sizes.observe(element);
    return () => sizes.disconnect();
  }, []);
  return wide;
}

/** The stretch of the run that is shown; it changes only when the instant leaves it. */
function useScale(head: PlayHead, wide: number, spanS: number | null): TimeScale {
  const before = useRef<{ from: number; to: number } | null>(null);
  const key = usePlayHead(head, ({ step, end }) => {
    before.current = windowAround(step, end, spanS, before.current);
    return `${before.current.from} ${before.current.to}`;
  });
  return useMemo(() => ({ ...before.current!, left: NAMES_PX, right: Math.max(NAMES_PX + 100, wide - RIGHT_PX) }), [key, wide]);
}
