import type { TaskId, TaskReport } from './observation.ts';

/** What the record of a task says once it is done. */
export interface Done<Task extends TaskId> {
  readonly step: number;
  /** The first task that should have been done before and was not. */
  readonly outOfOrderAfter: Task | null;
}

/** The record of a station: each of its tasks, null while it is open. */
export type DoneTasks<Task extends TaskId> = Readonly<Record<Task, Done<Task> | null>>;

export const nothingDone = <Task extends TaskId>(tasks: readonly Task[]): DoneTasks<Task> => Object.fromEntries(tasks.map((task) => [task, null])) as DoneTasks<Task>;

/** The record after `task` was done at `step`: out of order if something of what belongs `before` it was still open. */
export function withDone<Task extends TaskId>(done: DoneTasks<Task>, task: Task, step: number, before: readonly Task[]): DoneTasks<Task> {
  const missing = before.find((one) => done[one] === null) ?? null;
  return { ...done, [task]: { step, outOfOrderAfter: missing } };
}

/** A task as it is reported; `share` is the part of it that is done while it is open, 0 to 1. */
export const taskReport = <Task extends TaskId>(task: Task, critical: boolean, done: Done<Task> | null, share: () => number): TaskReport => ({
  task,
  critical,
  doneStep: done?.step ?? null,
  outOfOrderAfter: done?.outOfOrderAfter ?? null,
  progress: done === null ? share() : 1,
});
