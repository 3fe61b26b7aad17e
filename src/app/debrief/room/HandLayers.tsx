import { STEPS_PER_SECOND } from '../../../core/base/time.ts';
import { SIDES, type Side } from '../../../core/base/side.ts';
import type { HandPath, HeatMap, TraceView } from '../../../core/debrief/traceTypes.ts';
import { onScreen, type RoomSight } from './RoomFrames.ts';

/** The ways of the hands are shown for so long before and after the instant, in seconds. */
const BEFORE_S = 8;
const AFTER_S = 3;

interface HandLayerProps {
  readonly sight: RoomSight;
  readonly trace: TraceView;
  readonly step: number;
}

/**
 * Ways of both palms around the instant, with a dot for each second. The right hand has a whole line and round dots, the left one a
 * dashed line and square dots; what is still to come is thin.
 */
export const HandPaths = ({ sight, trace, step }: HandLayerProps) => (
  <g class="hand-paths">
    {SIDES.map((side) => {
      const past = trace.handPath(side, Math.max(0, step - BEFORE_S * STEPS_PER_SECOND), step);
      const future = trace.handPath(side, step, step + AFTER_S * STEPS_PER_SECOND);
      const line = pathOf(sight, past);
      return (
        <g key={side} class={`hand-path hand-path-${side}`}>
          <path class="casing" d={line} />
          <path class="way" d={line} />
          <path class="way way-later" d={pathOf(sight, future)} />
          {secondsOf(past).map((k) => {
            const { x, y } = onScreen(sight, past.x[k]!, past.y[k]!);
            return side === 'right' ? <circle key={k} class="way-dot" cx={x} cy={y} r={3.4} /> : <rect key={k} class="way-dot" x={x - 3.2} y={y - 3.2} width={6.4} height={6.4} />;
          })}
          <PathName sight={sight} side={side} path={past} />
        </g>
      );
    })}
  </g>
);

function PathName({ sight, side, path }: { readonly sight: RoomSight; readonly side: Side; readonly path: HandPath }) {
  if (path.x.length === 0) return null;
  const { x, y } = onScreen(sight, path.x[0]!, path.y[0]!);
  return (
    <text class="path-name" x={x} y={y - 9} text-anchor="middle">
      {side}
    </text>
  );
}

function pathOf(sight: RoomSight, { x, y }: HandPath): string {
  return Array.from(x, (value, k) => {
    const at = onScreen(sight, value, y[k]!);
    return `${k === 0 ? 'M' : 'L'}${at.x.toFixed(1)} ${at.y.toFixed(1)}`;
  }).join('');
}

/** Places in a path of its whole seconds. */
function secondsOf({ steps }: HandPath): number[] {
  const found: number[] = [];
  for (let k = 1; k < steps.length; k++) if (Math.floor(steps[k]! / STEPS_PER_SECOND) !== Math.floor(steps[k - 1]! / STEPS_PER_SECOND)) found.push(k);
  return found;
}

/** Where the palms have been in the whole run: the larger a mark, the longer; round for the right hand, square for the left one. */
export const HandHeat = ({ sight, trace }: Omit<HandLayerProps, 'step'>) => (
  <g class="hand-heat">
    {SIDES.map((side) => (
      <path key={side} class={`heat heat-${side}`} d={heatPath(sight, trace.heatMap(side), side)} />
    ))}
  </g>
);

function heatPath(sight: RoomSight, map: HeatMap, side: Side): string {
  const most = map.seconds.reduce((largest, value) => Math.max(largest, value), 0);
  if (most === 0) return '';
  const halfMost = (map.cellM * sight.pxPerM) / 2;
  const marks: string[] = [];
  map.seconds.forEach((seconds, k) => {
    if (seconds === 0) return;
    const column = k % map.columns;
    const row = Math.floor(k / map.columns);
    const { x, y } = onScreen(sight, map.x + (column + 0.5) * map.cellM, map.y + (row + 0.5) * map.cellM);
    // The square root of the square root, so that a short stay is still seen beside a long one.
    const half = Math.max(1.2, halfMost * Math.sqrt(Math.sqrt(seconds / most)));
    marks.push(side === 'right' ? `M${x - half} ${y}a${half} ${half} 0 1 0 ${2 * half} 0a${half} ${half} 0 1 0 ${-2 * half} 0` : `M${x - half} ${y - half}h${2 * half}v${2 * half}h${-2 * half}Z`);
  });
  return marks.join('');
}
