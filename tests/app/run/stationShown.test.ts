import { describe, expect, it } from 'vitest';
import { stationShown } from '../../../src/app/run/stationShown.ts';
import { FIELD_TASKS, SHEATH_TASKS, type TaskId } from '../../../src/core/procedure/observation.ts';
import { LOADING, scenarioWith } from '../support/scenario.ts';

const tasks = (ids: readonly TaskId[]) => ids.map((task) => ({ task, critical: false, doneStep: null, outOfOrderAfter: null, progress: 0 }));
const shown = (ids: readonly TaskId[], current: TaskId | 'finished', scenario: Parameters<typeof stationShown>[1]) => {
  const { station, place, of, tasks: some } = stationShown({ tasks: tasks(ids), current }, scenario);
  return [station, `${place} of ${of}`, some.map(({ task }) => task)];
};
const BOTH = { ...LOADING, followedBy: ['field' as const] };
const ALL = [...SHEATH_TASKS, ...FIELD_TASKS];

describe('The station that is shown', () => {
  it('is the one of a run that has no other', () => {
    expect(shown(FIELD_TASKS, 'view', scenarioWith())).toEqual(['field', '1 of 1', FIELD_TASKS]);
    expect(shown(FIELD_TASKS, 'finished', scenarioWith())).toEqual(['field', '1 of 1', FIELD_TASKS]);
    expect(shown(SHEATH_TASKS, 'banded', LOADING)).toEqual(['sheath', '1 of 1', SHEATH_TASKS]);
  });

  it('follows the current task, with the tasks of that station alone', () => {
    for (const task of SHEATH_TASKS) expect(shown(ALL, task, BOTH)).toEqual(['sheath', '1 of 2', SHEATH_TASKS]);
    for (const task of FIELD_TASKS) expect(shown(ALL, task, BOTH)).toEqual(['field', '2 of 2', FIELD_TASKS]);
  });

  it('stays the last one when all is done', () => {
    expect(shown(ALL, 'finished', BOTH)).toEqual(['field', '2 of 2', FIELD_TASKS]);
  });

  it('has only the tasks that the run has: no rubbish where there is none', () => {
    expect(shown(ALL.filter((task) => task !== 'rubbish'), 'ready', BOTH)[2]).toEqual(FIELD_TASKS.filter((task) => task !== 'rubbish'));
  });
});
