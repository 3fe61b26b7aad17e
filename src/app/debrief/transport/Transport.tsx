import type { EventKind } from '../../../core/debrief/events.ts';
import type { Followable } from '../../../core/debrief/followTypes.ts';
import { SPEEDS, type PlayHead, type Speed } from '../PlayHead.ts';
import { instantText } from '../timeText.ts';
import { usePlayHead } from '../usePlayHead.ts';

interface TransportProps {
  readonly head: PlayHead;
  readonly onEvent: (event: EventKind, direction: 1 | -1) => void;
  readonly followables: readonly Followable[];
  readonly follow: string;
  readonly onFollow: (object: string) => void;
  readonly spanS: number | null;
  readonly onSpan: (spanS: number | null) => void;
  readonly onHelp: () => void;
}

const SPEED_WORDS: Readonly<Record<Speed, string>> = { 0.125: '⅛', 0.25: '¼', 0.5: '½', 1: '1', 2: '2', 4: '4', 8: '8' };
const STEPPERS: readonly (readonly [EventKind, string])[] = [['break', 'break'], ['touch', 'touch'], ['command', 'action'], ['tenth', '0.1 s']];
const SPANS: readonly (readonly [number | null, string])[] = [[null, 'whole run'], [60, '1 minute'], [10, '10 seconds']];

/** Play, speed, steps from event to event, what is followed, how much of the run is seen at once, the time. */
export const Transport = (props: TransportProps) => (
  <div class="transport">
    <PlayButton head={props.head} />
    <SpeedChoice head={props.head} />
    {STEPPERS.map(([event, words]) => (
      <span key={event} class="stepper" role="group" aria-label={words === 'action' ? 'what you did' : words}>
        <button aria-label={`Previous ${words}`} onClick={() => props.onEvent(event, -1)}>
          ‹
        </button>
        <span aria-hidden="true">{words}</span>
        <button aria-label={`Next ${words}`} onClick={() => props.onEvent(event, 1)}>
          ›
        </button>
      </span>
    ))}
    <label class="transport-choice">
      <span class="follow-word">follow</span>
      <select id="follow-choice" value={props.follow} onChange={(event) => props.onFollow(event.currentTarget.value)}>
        <option value="">nothing</option>
        <FollowGroup label="Became unsterile" things={props.followables.filter(({ spoiled }) => spoiled)} />
        <FollowGroup label="Stayed as it should be" things={props.followables.filter(({ spoiled }) => !spoiled)} />
      </select>
    </label>
    <label class="transport-choice">
      <span class="unseen">Stretch of time shown</span>
      <select value={String(props.spanS)} onChange={(event) => props.onSpan(event.currentTarget.value === 'null' ? null : Number(event.currentTarget.value))}>
        {SPANS.map(([spanS, words]) => (
          <option key={words} value={String(spanS)}>
            {words}
          </option>
        ))}
      </select>
    </label>
    <button aria-label="Keys" class="keys-button" onClick={props.onHelp}>
      ?
    </button>
    <Instant head={props.head} />
  </div>
);

const FollowGroup = ({ label, things }: { readonly label: string; readonly things: readonly Followable[] }) =>
  things.length === 0 ? null : (
    <optgroup label={label}>
      {things.map(({ object, words }) => (
        <option key={object} value={object}>
          {words}
        </option>
      ))}
    </optgroup>
  );

function PlayButton({ head }: { readonly head: PlayHead }) {
  const playing = usePlayHead(head, (now) => now.playing);
  return (
    <button class="main-button play-button" onClick={() => head.toggle()}>
      {playing ? 'Pause' : 'Play'}
    </button>
  );
}

function SpeedChoice({ head }: { readonly head: PlayHead }) {
  const speed = usePlayHead(head, (now) => now.speed);
  return (
    <label class="transport-choice">
      <span class="unseen">Speed</span>
      <select value={String(speed)} onChange={(event) => head.setSpeed(Number(event.currentTarget.value) as Speed)}>
        {SPEEDS.map((one) => (
          <option key={one} value={String(one)}>
            {SPEED_WORDS[one]} ×
          </option>
        ))}
      </select>
    </label>
  );
}

function Instant({ head }: { readonly head: PlayHead }) {
  const words = usePlayHead(head, ({ step }) => instantText(step));
  return <output class="clock debrief-clock">{words}</output>;
}
