import type { Progress } from '../../core/procedure/observation.ts';
import { TASK_WORDS } from './words.ts';

/** The tasks of the station in their order: done, now, to come. */
export function TaskRow({ progress }: { readonly progress: Progress }) {
  return (
    <ol class="tasks" aria-label="Tasks">
      {progress.tasks.map(({ task, doneStep }) => {
        const state = doneStep !== null ? 'done' : progress.current === task ? 'now' : 'to come';
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
