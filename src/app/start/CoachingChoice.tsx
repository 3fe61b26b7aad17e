import type { Coaching } from '../run/LiveRun.ts';

const STRENGTHS: readonly { readonly coaching: Coaching; readonly words: string; readonly meaning: string }[] = [
  { coaching: 'shown', words: 'shown', meaning: 'You see what is sterile, where the next hold is, and every break as it happens.' },
  { coaching: 'spoken', words: 'spoken', meaning: 'The assistant says what can be seen from where they stand, as attentive as the scenario says. Answer them.' },
  { coaching: 'silent', words: 'silent', meaning: 'As in the real room: nothing is said until the report.' },
];

interface CoachingChoiceProps {
  readonly value: Coaching;
  readonly onChange: (coaching: Coaching) => void;
}

/** How much of the hidden sterility is shown while working. */
export const CoachingChoice = ({ value, onChange }: CoachingChoiceProps) => (
  <fieldset class="choice-row">
    <legend>Coaching</legend>
    <div class="choices-inline">
      {STRENGTHS.map(({ coaching, words }) => (
        <label key={coaching} class="choice">
          <input type="radio" name="coaching" checked={value === coaching} onChange={() => onChange(coaching)} />
          {words}
        </label>
      ))}
    </div>
    <p class="small choice-note">{STRENGTHS.find(({ coaching }) => coaching === value)!.meaning}</p>
  </fieldset>
);
