const LENGTHS: readonly { readonly goesOn: boolean; readonly words: string; readonly meaning: string }[] = [
  { goesOn: false, words: 'Loading alone', meaning: 'The run is done when the sheathed probe lies on the field.' },
  { goesOn: true, words: 'then on into the field', meaning: 'You go on with the probe as you sheathed it.' },
];

interface StationChoiceProps {
  readonly value: boolean;
  readonly onChange: (goesOn: boolean) => void;
}

/** Whether a run that begins with sheathing the probe goes on into the field. */
export const StationChoice = ({ value, onChange }: StationChoiceProps) => (
  <fieldset class="choice-row">
    <legend>How far</legend>
    <div class="choices-inline">
      {LENGTHS.map(({ goesOn, words }) => (
        <label key={words} class="choice">
          <input type="radio" name="stations" checked={value === goesOn} onChange={() => onChange(goesOn)} />
          {words}
        </label>
      ))}
    </div>
    <p class="small choice-note">{LENGTHS.find(({ goesOn }) => goesOn === value)!.meaning}</p>
  </fieldset>
);
