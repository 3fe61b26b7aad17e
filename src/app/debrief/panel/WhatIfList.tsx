import type { Alternative } from '../../../core/debrief/whatIfTypes.ts';
import type { Verdict } from '../../../core/scoring/score.ts';
import type { VerdictWords } from '../verdictOf.ts';

export interface Choice {
  readonly key: string;
  readonly alternative: Alternative;
  /** What the verdict would be. */
  readonly verdict: VerdictWords | null;
  /** Thought of by the person, not suggested. */
  readonly own: boolean;
}

interface WhatIfListProps {
  readonly choices: readonly Choice[];
  readonly chosen: string | null;
  /** The verdict of the run as it was. */
  readonly verdict: Verdict | null;
  readonly onChoose: (key: string | null) => void;
  readonly onDrop: (key: string) => void;
}

const VERDICT_WORDS: Readonly<Record<Verdict, string>> = { met: 'met', notYet: 'not yet' };

/** What would have become of the run: as it was, or with one thing otherwise. The choice is shown in the room as well. */
export const WhatIfList = ({ choices, chosen, verdict, onChoose, onDrop }: WhatIfListProps) => (
  <fieldset class="what-if">
    <legend>What if</legend>
    <label class={chosen === null ? 'what-if-choice what-if-chosen what-if-plain' : 'what-if-choice what-if-plain'}>
      <input type="radio" name="what-if" checked={chosen === null} onChange={() => onChoose(null)} />
      <span class="what-if-words">As it was</span>
    </label>
    {choices.map(({ key, alternative, verdict: would, own }) => (
      <div key={key} class="what-if-row">
        <label class={chosen === key ? 'what-if-choice what-if-chosen' : 'what-if-choice'}>
          <input type="radio" name="what-if" checked={chosen === key} onChange={() => onChoose(key)} />
          <span class="what-if-words">
            <strong>{alternative.title}</strong>
            <span>{alternative.sentence}</span>
            {verdict !== null && would !== null && <VerdictChange from={verdict} to={would} />}
          </span>
        </label>
        {own && (
          <button class="quiet what-if-drop" aria-label={`Take away: ${alternative.title}`} onClick={() => onDrop(key)}>
            ×
          </button>
        )}
      </div>
    ))}
  </fieldset>
);

const VerdictChange = ({ from, to }: { readonly from: Verdict; readonly to: VerdictWords }) => (
  <span>
    <strong>{to.verdict === from ? `Verdict stays: ${VERDICT_WORDS[to.verdict]}.` : `Verdict: ${VERDICT_WORDS[from]} → ${VERDICT_WORDS[to.verdict]}.`}</strong> {to.why !== null && <span class="small">{to.why}</span>}
  </span>
);
