import { KeyCap } from '../parts/KeyCap.tsx';

/** Id of the first button of the panel, to which Escape leads from the room. */
export const PAUSE_BUTTON = 'pause-button';

interface RunActionsProps {
  readonly onPause: () => void;
  readonly onHelp: () => void;
  readonly onEnd: () => void;
}

/** Pause, help, end: at the right of the bar. */
export const RunActions = ({ onPause, onHelp, onEnd }: RunActionsProps) => (
  <div class="run-actions">
    <button id={PAUSE_BUTTON} onClick={onPause}>
      Pause <KeyCap>P</KeyCap>
    </button>
    <button onClick={onHelp}>
      Help <KeyCap>F1</KeyCap>
    </button>
    <button onClick={onEnd}>End run</button>
  </div>
);
