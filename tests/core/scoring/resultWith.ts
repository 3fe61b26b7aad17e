import type { TaskId, TaskReport } from '../../../src/core/procedure/observation.ts';
import type { RunResult } from '../../../src/core/run/result.ts';

interface Parts extends Partial<Omit<RunResult, 'progress'>> {
  readonly tasks?: readonly TaskReport[];
}

/** A result for tests; `parts` replace its defaults. */
export const resultWith = ({ tasks = [], ...parts }: Parts): RunResult => {
  const progress = { tasks, current: 'finished', hint: '', steadyShare: null, sharpsBinned: [] } as const;
  const handling = { pathM: { left: 0, right: 0 }, driftM: { left: 0, right: 0 }, dropped: [], measured: null };
  return { steps: 7200, breaks: [], words: {}, notices: [], remedies: [], cues: [], challenges: [], progress, handling, ...parts };
};

export const taskDone = (task: TaskId, doneStep: number | null): TaskReport => ({ task, critical: false, doneStep, outOfOrderAfter: null, progress: 1 });
