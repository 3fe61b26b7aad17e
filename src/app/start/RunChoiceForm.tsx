import { PaceChoice } from '../parts/PaceChoice.tsx';
import { CoachingChoice } from './CoachingChoice.tsx';
import { ScenarioCard } from './ScenarioCard.tsx';
import { StationChoice } from './StationChoice.tsx';
import type { ChoiceState } from './useRunChoice.ts';

interface RunChoiceFormProps {
  readonly choice: ChoiceState;
  readonly busy: boolean;
  readonly onStart: () => void;
}

/** Scenario, coaching and pace of the next run, and its start. */
export function RunChoiceForm({ choice, busy, onStart }: RunChoiceFormProps) {
  const submit = (event: Event): void => {
    event.preventDefault();
    onStart();
  };
  return (
    <form class="start-form" onSubmit={submit}>
      <fieldset class="scenarios">
        <legend>Choose a scenario</legend>
        {choice.scenarios.map((scenario, k) => (
          <ScenarioCard key={k} scenario={scenario} chosen={scenario === choice.scenario} own={choice.isOwn(scenario)} onChoose={() => choice.choose(scenario)} />
        ))}
      </fieldset>
      <div class="start-options">
        {choice.canGoOn && <StationChoice value={choice.goesOn} onChange={choice.setGoesOn} />}
        <CoachingChoice value={choice.coaching} onChange={choice.setCoaching} />
        <PaceChoice value={choice.slowdown} onChange={choice.setSlowdown} />
      </div>
      <button type="submit" class="main-button start-button" disabled={busy || choice.value === null}>
        {busy ? 'Getting the room ready' : 'Start'} <span class="start-what">{choice.scenario?.title}</span>
      </button>
    </form>
  );
}
