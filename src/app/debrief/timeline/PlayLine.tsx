import { clockText } from '../../parts/clockText.ts';
import type { PlayHead } from '../PlayHead.ts';
import { usePlayHead } from '../usePlayHead.ts';
import { ticksOf, xOf, type TimeScale } from './timeScale.ts';

interface OnTime {
  readonly scale: TimeScale;
  /** Lower end of the lanes. */
  readonly bottom: number;
}

/** Times below the lanes, and thin lines up through them. */
export const Axis = ({ scale, bottom }: OnTime) => (
  <g class="axis">
    {ticksOf(scale).map(({ step, seconds, everyS }) => (
      <g key={step}>
        <path d={`M${xOf(scale, step)} 14V${bottom}`} />
        <text x={xOf(scale, step)} y={bottom + 16} text-anchor="middle">
          {everyS < 1 ? `${clockText(seconds + 1e-6)}.${Math.round(seconds * 10) % 10}` : clockText(seconds + 1e-6)}
        </text>
      </g>
    ))}
  </g>
);

/** The line at the instant that is shown. */
export function PlayLine({ head, scale, bottom }: OnTime & { readonly head: PlayHead }) {
  const x = usePlayHead(head, ({ step }) => Math.round(xOf(scale, step) * 2) / 2);
  if (x < scale.left - 1 || x > scale.right + 1) return null;
  return (
    <g class="play-line" transform={`translate(${x} 0)`}>
      <path class="play-stem" d={`M0 8V${bottom}`} />
      <path class="play-grip" d="M-8 1h16v7l-8 8-8-8Z" />
    </g>
  );
}

/** What of the run cannot be shown yet, because it has not been played again so far. */
export function UnplayedPart({ head, scale, bottom }: OnTime & { readonly head: PlayHead }) {
  const from = usePlayHead(head, ({ playable, end }) => (playable >= end ? Infinity : Math.round(Math.max(scale.left, xOf(scale, playable)))));
  if (from >= scale.right) return null;
  return <rect class="unplayed" x={from} y={14} width={scale.right - from} height={bottom - 14} fill="url(#tl-unplayed)" />;
}
