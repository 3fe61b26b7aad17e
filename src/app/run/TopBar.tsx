import { clockText } from '../parts/clockText.ts';
import type { LiveRun } from './LiveRun.ts';
import { TaskRow } from './TaskRow.tsx';

const PACE_WORDS = { 1: null, 2: 'half pace', 4: 'quarter pace' } as const;

/** Where we are: station, tasks, coaching, clock. */
export function TopBar({ live }: { readonly live: LiveRun }) {
  const pace = PACE_WORDS[live.clock.slowdown];
  return (
    <header class="bar">
      <h1 class="bar-title">Work the field</h1>
      <span class="bar-scenario">{live.run.scenario.title}</span>
      <TaskRow progress={live.run.progress} />
      <span class="bar-fact">{pace ? `${live.coaching}, ${pace}` : `coaching: ${live.coaching}`}</span>
      <span class="clock" role="timer" aria-label={`Time in the run ${clockText(live.seconds)}`}>
        {clockText(live.seconds)}
      </span>
    </header>
  );
}
