import { KeyCap } from '../parts/KeyCap.tsx';
import { PaceChoice } from '../parts/PaceChoice.tsx';
import { Sheet } from '../parts/Sheet.tsx';
import type { LiveRun } from './LiveRun.ts';

interface PauseSheetProps {
  readonly live: LiveRun;
  readonly onHelp: () => void;
  readonly onLeave: () => void;
  readonly onEnd: () => void;
}

/** The run stands still. From here one goes on, changes the pace, leaves for later, or ends it. */
export function PauseSheet({ live, onHelp, onLeave, onEnd }: PauseSheetProps) {
  const resume = (): void => live.mode.send({ type: 'resume' });
  const onKey = (event: KeyboardEvent): void => {
    if (event.code === 'KeyP') resume();
  };
  return (
    <Sheet title="Paused" onClose={resume}>
      <div onKeyDown={onKey}>
        <p>The room stands still. What the hands hold they go on holding.</p>
        <PaceChoice value={live.clock.slowdown} onChange={(pace) => live.setSlowdown(pace)} />
        <div class="sheet-actions">
          <button class="main-button" autofocus onClick={resume}>
            Go on <KeyCap>P</KeyCap>
          </button>
          <button onClick={onHelp}>Controls</button>
          <button onClick={onLeave}>Leave for now</button>
          <button onClick={onEnd}>End the run</button>
        </div>
      </div>
    </Sheet>
  );
}
