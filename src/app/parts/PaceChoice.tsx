import type { Slowdown } from '../run/LiveRun.ts';

const PACES: readonly { readonly slowdown: Slowdown; readonly words: string }[] = [
  { slowdown: 1, words: 'normal' },
  { slowdown: 2, words: 'half' },
  { slowdown: 4, words: 'quarter' },
];

interface PaceChoiceProps {
  readonly value: Slowdown;
  readonly onChange: (pace: Slowdown) => void;
}

/** How fast the room goes; written into the run. */
export const PaceChoice = ({ value, onChange }: PaceChoiceProps) => (
  <fieldset class="choice-row">
    <legend>Pace</legend>
    <div class="choices-inline">
      {PACES.map(({ slowdown, words }) => (
        <label key={slowdown} class="choice">
          <input type="radio" name="pace" checked={value === slowdown} onChange={() => onChange(slowdown)} />
          {words}
        </label>
      ))}
    </div>
  </fieldset>
);
