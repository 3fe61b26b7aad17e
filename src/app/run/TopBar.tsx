import { STATION_WORDS } from '../../core/ledger/rules/station.ts';
import { clockText } from '../parts/clockText.ts';
import type { LiveRun } from './LiveRun.ts';
import { stationShown } from './stationShown.ts';
import { TaskRow } from './TaskRow.tsx';

const PACE_WORDS = { 1: null, 2: 'half pace', 4: 'quarter pace' } as const;

/** Where we are: station, tasks, coaching, clock. */
export function TopBar({ live }: { readonly live: LiveRun }) {
  const pace = PACE_WORDS[live.clock.slowdown];
  const { progress, scenario } = live.run;
  const shown = stationShown(progress, scenario);
  return (
    <header class="bar">
      <h1 class="bar-title">{STATION_WORDS[shown.station]}</h1>
      {shown.of > 1 && (
        <span class="bar-part">
          <span class="unseen">station </span>
          {shown.place} of {shown.of}
        </span>
      )}
      <span class="bar-scenario">{scenario.title}</span>
      <TaskRow tasks={shown.tasks} current={progress.current} />
      <span class="bar-fact">{pace ? `${live.coaching}, ${pace}` : `coaching: ${live.coaching}`}</span>
      <span class="clock" role="timer" aria-label={`Time in the run ${clockText(live.seconds)}`}>
        {clockText(live.seconds)}
      </span>
    </header>
  );
}
