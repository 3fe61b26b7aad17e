import type { Progress } from '../../core/procedure/observation.ts';
import { TASK_WORDS } from './words.ts';

/** The tasks of a station in their order: done, now, to come. */
export function TaskRow({ tasks, current }: Pick<Progress, 'tasks' | 'current'>) {
  return (
    <ol class="tasks" aria-label="Tasks">
      {tasks.map(({ task, doneStep }) => {
        const state = doneStep !== null ? 'done' : current === task ? 'now' : 'to come';
        return (
          <li key={task} class={`task task-${state.replace(' ', '-')}`} aria-current={state === 'now' ? 'step' : undefined}>
            {TASK_WORDS[task]}
            <span class="unseen">, {state}</span>
          </li>
        );
      })}
    </ol>
  );
}
