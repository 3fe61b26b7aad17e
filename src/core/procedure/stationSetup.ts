import { assign, setup } from 'xstate';
import { withDone, type DoneTasks } from './done.ts';
import type { TaskId } from './observation.ts';

/** What the machine of a station keeps of its tasks and does with them. `before` is what must come before a task; events carry the step. */
export const stationSetup = <Task extends TaskId, Event extends { readonly type: string; readonly step: number }>(before: (task: Task) => readonly Task[]) =>
  setup({
    types: {} as { context: { done: DoneTasks<Task> }; events: Event },
    actions: {
      'record as done': assign({ done: ({ context, event }, { task }: { task: Task }) => withDone(context.done, task, event.step, before(task)) }),
      'take back': assign({ done: ({ context }, { task }: { task: Task }) => ({ ...context.done, [task]: null }) }),
    },
  });

/** The action that records a task as done. */
export const record = <Task extends TaskId>(task: Task) => ({ type: 'record as done', params: { task } }) as const;

/** The action that opens a task again. */
export const takeBack = <Task extends TaskId>(task: Task) => ({ type: 'take back', params: { task } }) as const;
