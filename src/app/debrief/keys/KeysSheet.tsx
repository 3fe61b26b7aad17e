import { KeyList, type KeyRow } from '../../parts/KeyList.tsx';
import { Sheet } from '../../parts/Sheet.tsx';

const KEYS: readonly KeyRow[] = [
  [['Space', 'K'], 'play, pause'],
  [['←', '→'], 'a tenth of a second back, on'],
  [['Shift', '←', '→'], 'a second back, on'],
  [['PgDn', 'PgUp'], 'ten seconds back, on'],
  [['Home', 'End'], 'first, last instant'],
  [['B'], 'next break; with Shift the one before'],
  [['T'], 'next touch; with Shift the one before'],
  [['C'], 'next thing that you did; with Shift before'],
  [[',', '.'], 'slower, faster'],
  [['G'], 'chain in the room'],
  [['H'], 'hand paths'],
  [['M'], 'heat map'],
  [['Z'], 'zones'],
  [['F'], 'choose what to follow'],
  [['W'], 'to what-if'],
  [['L'], 'to the timeline'],
  [['+', '−'], 'closer, wider'],
  [['9', '0'], 'all within reach, the field'],
];

/** All keys of the debrief. */
export const KeysSheet = ({ onClose }: { readonly onClose: () => void }) => (
  <Sheet title="Keys" wide onClose={onClose}>
    <KeyList rows={KEYS} wide />
    <p class="small keys-note">Mouse and touch: drag on the timeline to move through the run, tap an event to go there, drag the room to move it, wheel or two fingers to come closer.</p>
  </Sheet>
);
