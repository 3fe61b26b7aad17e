import { FIELD_TASKS, GOWN_TASKS, SHEATH_TASKS, type Progress, type TaskId } from '../../core/procedure/observation.ts';
import type { Scenario, StationName } from '../../core/scenario/schema.ts';
import { stationsOf } from '../../core/scenario/station.ts';

const TASKS: Readonly<Record<StationName, readonly TaskId[]>> = { gown: GOWN_TASKS, sheath: SHEATH_TASKS, field: FIELD_TASKS };

/** The station at which a run is, and its tasks. */
export interface StationShown {
  readonly station: StationName;
  /** Its place among the stations of the run from 1 on, and how many there are. */
  readonly place: number;
  readonly of: number;
  readonly tasks: Progress['tasks'];
}

/** The station of the current task; the last one when all is done. */
export function stationShown({ current, tasks }: Pick<Progress, 'current' | 'tasks'>, scenario: Pick<Scenario, 'station' | 'followedBy'>): StationShown {
  const stations = stationsOf(scenario);
  const at = current === 'finished' ? stations.length - 1 : stations.findIndex((station) => TASKS[station].includes(current));
  const station = stations[at]!;
  return { station, place: at + 1, of: stations.length, tasks: tasks.filter(({ task }) => TASKS[station].includes(task)) };
}
