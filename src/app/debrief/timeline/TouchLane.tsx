import type { Timeline } from '../../../core/debrief/timelineTypes.ts';
import { touchColumns } from './lanes.ts';
import { xOf, type TimeScale } from './timeScale.ts';

interface TouchLaneProps {
  readonly touches: Timeline['touches'];
  /** Touches by which something became unsterile. */
  readonly spoiling: ReadonlySet<number>;
  readonly scale: TimeScale;
  readonly y: number;
}

/** Touches of hands and arms as strokes, longer where several began at once; touches that spoiled something stand out. */
export function TouchLane({ touches, spoiling, scale, y }: TouchLaneProps) {
  const columns = touchColumns(touches, spoiling, (step) => xOf(scale, step), scale.from, scale.to);
  const stroke = (half: number) => (x: number) => `M${x} ${y - half}v${2 * half}`;
  const plain = columns.map(({ x, count }) => stroke(Math.min(8, 3 + count))(x)).join('');
  const marked = columns.filter(({ spoils }) => spoils).map(({ x }) => stroke(9)(x)).join('');
  return (
    <g>
      <path class="lane-line" d={`M${scale.left} ${y}H${scale.right}`} />
      <path class="touch" d={plain} />
      <path class="touch touch-spoils" d={marked} />
    </g>
  );
}
