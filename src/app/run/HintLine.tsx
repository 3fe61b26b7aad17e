import { KeyCap } from '../parts/KeyCap.tsx';
import type { RuleWords } from '../services.ts';
import { hintText } from './hintText.ts';
import type { LiveRun } from './LiveRun.ts';

interface HintLineProps {
  readonly live: LiveRun;
  readonly roomHasFocus: boolean;
  readonly ruleWords: (rule: string) => RuleWords;
}

/** What to do now, and the keys that are at hand. */
export function HintLine({ live, roomHasFocus, ruleWords }: HintLineProps) {
  return (
    <footer class="hint-line">
      <p class="hint" role="status">{hintText(live, ruleWords)}</p>
      <p class="hint-keys">
        {roomHasFocus ? <RoomKeys /> : <PanelKeys />}
      </p>
    </footer>
  );
}

const RoomKeys = () => (
  <>
    <KeyCap>Tab</KeyCap> other hand <KeyCap>Space</KeyCap> grip <KeyCap>Q</KeyCap>
    <KeyCap>E</KeyCap> turn <KeyCap>F</KeyCap> use <KeyCap>9</KeyCap> wide <KeyCap>Esc</KeyCap> panel
  </>
);

const PanelKeys = () => (
  <>
    Keys serve the panel. <KeyCap>Esc</KeyCap> back to the room
  </>
);
