import { holdName } from '../../core/procedure/holdWords.ts';
import { placeHolds } from '../../core/room/placedHold.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import { listed } from '../parts/sentence.ts';
import type { RuleWords } from '../services.ts';
import { hintText } from './hintText.ts';
import type { LiveRun } from './LiveRun.ts';
import { shownHolds } from './shownHolds.ts';

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
      <HoldNames live={live} />
      <p class="hint-keys">
        {roomHasFocus ? <RoomKeys /> : <PanelKeys />}
      </p>
    </footer>
  );
}

/** What is marked in the room, by name. */
function HoldNames({ live }: { readonly live: LiveRun }) {
  const names = placeHolds(live.current, shownHolds(live)).map(({ hold }) => holdName(hold)).filter((name, k, all) => all.indexOf(name) === k);
  return names.length > 0 ? <p class="hint-holds">Marked: {listed(names)}</p> : null;
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
