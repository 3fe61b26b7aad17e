import type { Progress } from '../../core/procedure/observation.ts';
import { clockText } from '../parts/clockText.ts';
import { TASK_SENTENCES, TASK_WORDS } from '../run/words.ts';
import { secondsAt } from './reportFacts.ts';

/** Tasks of the station: when each was done, and what was out of order. */
export const TaskTable = ({ progress }: { readonly progress: Progress }) => (
  <table class="facts">
    <caption>Tasks</caption>
    <tbody>
      {progress.tasks.map((task) => (
        <tr key={task.task}>
          <th scope="row">
            {TASK_SENTENCES[task.task]}
            {task.critical && <span class="small"> (critical)</span>}
            {task.outOfOrderAfter && <span class="small row-note">before “{TASK_WORDS[task.outOfOrderAfter]}”, which comes first</span>}
          </th>
          <td>{task.doneStep === null ? notDone(task.progress) : clockText(secondsAt(task.doneStep))}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

const notDone = (progress: number): string => (progress > 0 ? `${Math.round(progress * 100)} % done` : 'not done');
