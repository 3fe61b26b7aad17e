import type { PlannedLane, PlannedMark } from './lanePlan.ts';
import type { TimeScale } from './timeScale.ts';

interface LaneDrawingProps {
  readonly lane: PlannedLane;
  readonly scale: TimeScale;
  readonly selected: number | null;
}

/** One lane: its line and its marks, each kind with a shape of its own, told apart without colour. */
export const LaneDrawing = ({ lane, scale, selected }: LaneDrawingProps) => (
  <g>
    <path class="lane-line" d={`M${scale.left} ${lane.y}H${scale.right}`} />
    {lane.marks.map((planned, k) => (
      <g key={k} class={planned.mark.bad ? 'mark mark-bad' : 'mark'}>
        <title>{planned.mark.sentence}</title>
        <MarkShape planned={planned} scale={scale} selected={planned.mark.kind === 'break' && planned.mark.breakNumber === selected} />
        {planned.label && (
          <text x={planned.label === 'right' ? Math.max(planned.x, planned.mark.kind === 'remedy' ? planned.toX : planned.x) + 12 : planned.x - 12} y={planned.y + 5} text-anchor={planned.label === 'right' ? 'start' : 'end'}>
            {planned.mark.label}
          </text>
        )}
      </g>
    ))}
  </g>
);

function MarkShape({ planned: { mark, x, toX, y }, scale, selected }: { readonly planned: PlannedMark; readonly scale: TimeScale; readonly selected: boolean }) {
  switch (mark.kind) {
    case 'break': {
      const from = Math.max(x, scale.left);
      const wide = Math.max(2, Math.min(toX, scale.right) - from);
      return (
        <>
          <rect class={selected ? 'span span-selected' : 'span'} x={from} y={y - 5} width={wide} height={10} rx={2} fill="url(#tl-became)" />
          {x >= scale.left && <path class="diamond" d={`M${x} ${y - 9}l8.5 9-8.5 9-8.5-9Z`} />}
        </>
      );
    }
    case 'nearMiss':
      return <path class="hollow" d={`M${x} ${y - 7}l6.5 7-6.5 7-6.5-7Z`} />;
    case 'notice':
      return mark.breakNumber === 0 ? (
        <g class="hollow hollow-quiet">
          <circle cx={x} cy={y} r={7} />
          <path d={`M${x - 4.4} ${y + 4.4}l8.8-8.8`} />
        </g>
      ) : (
        <circle class="hollow" cx={x} cy={y} r={7} />
      );
    case 'remedy':
      return (
        <>
          {toX - x > 3 && <path class="lasting" d={`M${x} ${y}H${Math.min(toX, scale.right)}`} />}
          <rect class="filled" x={x - 6} y={y - 6} width={12} height={12} />
        </>
      );
    case 'cue':
      return <path class="hollow" d={`M${x - 7} ${y + 6}h14l-7-12Z`} />;
    case 'task':
      return <path class="tick" d={`M${x - 6} ${y}l4 5 8-10`} />;
  }
}

/** The patterns of the room, for spans of the timeline. */
export const StatePatterns = () => (
  <defs>
    <pattern id="tl-became" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect class="pat-tint" width="8" height="8" />
      <path class="pat-became" d="M0 0V8M0 0H8" />
    </pattern>
    <pattern id="tl-unsterile" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="pat-unsterile" d="M0 0V5" />
    </pattern>
    <pattern id="tl-unplayed" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <path class="pat-unplayed" d="M0 0V7" />
    </pattern>
  </defs>
);
