import type { RemedyId } from '../../core/commands/command.ts';
import { REMEDY_KEYS } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { RemedyProgress } from './RemedyProgress.tsx';
import { remedyChoices, type RemedyChoice } from './remedyChoices.ts';
import { REMEDY_WORDS } from './words.ts';

interface RemedyListProps {
  readonly live: LiveRun;
  /** Remedy whose thing is being chosen. */
  readonly choosing: RemedyId | null;
  readonly onRemedy: (remedy: RemedyId) => void;
  readonly onChoice: (choice: RemedyChoice) => void;
  readonly onBack: () => void;
}

/** Remedies with their keys; the choice that some of them need; the progress of the one under way. */
export function RemedyList(props: RemedyListProps) {
  const { live, choosing } = props;
  return (
    <section class="panel-part" aria-labelledby="remedies-head">
      <h2 id="remedies-head">Remedies</h2>
      {live.run.remedy ? (
        <RemedyProgress status={live.run.remedy} onCancel={() => live.hands.order({ type: 'remedy.cancel' })} />
      ) : choosing ? (
        <Choices {...props} remedy={choosing} />
      ) : (
        <div class="two-or-one">
          {REMEDY_KEYS.map((remedy, k) => (
            <button key={remedy} class="keyed" onClick={() => props.onRemedy(remedy)}>
              {REMEDY_WORDS[remedy]} <KeyCap>{String(k + 1)}</KeyCap>
            </button>
          ))}
        </div>
      )}
    </section>
  );
}

function Choices({ live, remedy, onChoice, onBack }: RemedyListProps & { readonly remedy: RemedyId }) {
  return (
    <div class="choices" role="group" aria-label={REMEDY_WORDS[remedy]}>
      <p class="choices-head">
        <strong>{REMEDY_WORDS[remedy]}: which?</strong>
        <button class="quiet" onClick={onBack}>
          Back <KeyCap>Esc</KeyCap>
        </button>
      </p>
      <div class="two-or-one">
        {remedyChoices(remedy, live.run.scenario).map((choice, k) => (
          <button key={choice.thing} class="keyed" onClick={() => onChoice(choice)}>
            {choice.words} {k < 6 && <KeyCap>{String(k + 1)}</KeyCap>}
          </button>
        ))}
      </div>
    </div>
  );
}
