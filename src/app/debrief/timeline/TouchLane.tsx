import type { Timeline } from '../../../core/debrief/timelineTypes.ts';
import { spoilingColumns, touchColumns } from './lanes.ts';
import { xOf, type TimeScale } from './timeScale.ts';

interface TouchLaneProps {
  readonly touches: Timeline['touches'];
  /** Steps at which something became unsterile by a touch. */
  readonly spoiling: readonly number[];
  readonly scale: TimeScale;
  readonly y: number;
}

/** Touches of hands and arms as strokes, longer where several began at once; where something became unsterile by one, it stands out. */
export function TouchLane({ touches, spoiling, scale, y }: TouchLaneProps) {
  const px = (step: number): number => xOf(scale, step);
  const stroke = (x: number, half: number): string => `M${x} ${y - half}v${2 * half}`;
  return (
    <g>
      <path class="lane-line" d={`M${scale.left} ${y}H${scale.right}`} />
      <path class="touch" d={touchColumns(touches, px, scale.from, scale.to).map(({ x, count }) => stroke(x, Math.min(8, 3 + count))).join('')} />
      <path class="touch touch-spoils" d={spoilingColumns(spoiling, px, scale.from, scale.to).map((x) => stroke(x, 9)).join('')} />
    </g>
  );
}
