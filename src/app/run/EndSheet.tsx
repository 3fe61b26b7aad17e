import type { Progress } from '../../core/procedure/observation.ts';
import { Sheet } from '../parts/Sheet.tsx';
import { counted } from '../parts/sentence.ts';

interface EndSheetProps {
  readonly progress: Progress;
  readonly onEnd: () => void;
  readonly onBack: () => void;
}

/** Asks once before a run is ended. */
export function EndSheet({ progress, onEnd, onBack }: EndSheetProps) {
  const open = progress.tasks.filter((task) => task.doneStep === null).length;
  return (
    <Sheet title="End this run?" onClose={onBack}>
      <p>{open === 0 ? 'All tasks are done.' : `${counted(open, 'task is', 'tasks are')} not done yet.`} An ended run cannot be taken up again.</p>
      <div class="sheet-actions">
        <button class="main-button" autofocus onClick={onEnd}>
          End and see the report
        </button>
        <button onClick={onBack}>Back to the room</button>
      </div>
    </Sheet>
  );
}
