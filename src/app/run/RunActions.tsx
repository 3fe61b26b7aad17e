import { KeyCap } from '../parts/KeyCap.tsx';

interface RunActionsProps {
  readonly onPause: () => void;
  readonly onHelp: () => void;
  readonly onEnd: () => void;
}

/** Pause, help, end: at the right of the bar. */
export const RunActions = ({ onPause, onHelp, onEnd }: RunActionsProps) => (
  <div class="run-actions">
    <button id="pause-button" onClick={onPause}>
      Pause <KeyCap>P</KeyCap>
    </button>
    <button onClick={onHelp}>
      Help <KeyCap>F1</KeyCap>
    </button>
    <button onClick={onEnd}>End run</button>
  </div>
);
