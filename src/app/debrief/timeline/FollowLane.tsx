import type { Followed } from '../../../core/debrief/followTypes.ts';
import { xOf, type TimeScale } from './timeScale.ts';

interface FollowLaneProps {
  readonly followed: Followed;
  readonly scale: TimeScale;
  readonly y: number;
}

/** The state of what is followed along time, in the patterns of the room. */
export const FollowLane = ({ followed, scale, y }: FollowLaneProps) => (
  <g class="follow-lane">
    {followed.intervals
      .filter(({ fromStep, toStep }) => toStep >= scale.from && fromStep <= scale.to)
      .map(({ fromStep, toStep, mark }) => {
        const x = xOf(scale, Math.max(fromStep, scale.from));
        return <rect key={fromStep} class={`state state-${mark}`} x={x} y={y - 6} width={Math.max(1, xOf(scale, Math.min(toStep, scale.to)) - x)} height={12} rx={2} />;
      })}
  </g>
);
