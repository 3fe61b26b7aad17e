import type { RemedyId } from '../../core/commands/command.ts';
import { REMEDY_KEYS } from '../input/keyMap.ts';
import { KeyCap } from '../parts/KeyCap.tsx';
import type { LiveRun } from './LiveRun.ts';
import { RemedyProgress } from './RemedyProgress.tsx';
import { remedyChoices } from './remedyChoices.ts';
import type { Remedies } from './useRemedies.ts';
import { REMEDY_WORDS } from './words.ts';

interface RemedyListProps {
  readonly live: LiveRun;
  readonly remedies: Remedies;
}

/** Remedies with their keys; the choice that some of them need; the progress of the one under way. */
export function RemedyList({ live, remedies }: RemedyListProps) {
  const { remedy } = live.run;
  return (
    <section class="panel-part" aria-labelledby="remedies-head">
      <h2 id="remedies-head">Remedies</h2>
      {remedy && <RemedyProgress status={remedy} onCancel={() => live.hands.order({ type: 'remedy.cancel' })} />}
      {!remedy && remedies.choosing && <Choices live={live} remedies={remedies} remedy={remedies.choosing} />}
      {!remedy && !remedies.choosing && (
        <div class="two-or-one">
          {REMEDY_KEYS.map((offered, k) => (
            <button key={offered} class="keyed" onClick={() => remedies.ask(offered)}>
              {REMEDY_WORDS[offered]} <KeyCap>{String(k + 1)}</KeyCap>
            </button>
          ))}
        </div>
      )}
    </section>
  );
}

/** Choices that have a key. */
const KEYED = 6;

function Choices({ live, remedies, remedy }: RemedyListProps & { readonly remedy: RemedyId }) {
  return (
    <div class="choices" role="group" aria-label={REMEDY_WORDS[remedy]}>
      <p class="choices-head">
        <strong>{REMEDY_WORDS[remedy]}: which?</strong>
        <button class="quiet" onClick={remedies.back}>
          Back <KeyCap>Esc</KeyCap>
        </button>
      </p>
      <div class="two-or-one">
        {remedyChoices(remedy, live.run.scenario).map((choice, k) => (
          <button key={choice.thing} class="keyed" onClick={() => remedies.choose(choice)}>
            {choice.words} {k < KEYED && <KeyCap>{String(k + 1)}</KeyCap>}
          </button>
        ))}
      </div>
    </div>
  );
}
