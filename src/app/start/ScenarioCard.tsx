import { policyFlags } from '../../core/ledger/rules/policyFlags.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { flagWords } from '../parts/flagWords.ts';
import { scenarioSpecials } from './scenarioSpecials.ts';

interface ScenarioCardProps {
  readonly scenario: Scenario;
  readonly chosen: boolean;
  readonly own: boolean;
  readonly onChoose: () => void;
}

/** One scenario to choose: what it is, how long it takes, what is special in it. */
export function ScenarioCard({ scenario, chosen, own, onChoose }: ScenarioCardProps) {
  return (
    <label class={chosen ? 'scenario scenario-chosen' : 'scenario'}>
      <input type="radio" name="scenario" class="scenario-radio" value={scenario.id} checked={chosen} onChange={onChoose} />
      <span class="scenario-head">
        <span class="scenario-title">{scenario.title}</span>
        <span class="scenario-minutes">{own ? 'your file, ' : ''}about {scenario.minutes} min</span>
      </span>
      <span class="scenario-summary">{scenario.summary}</span>
      <span class="scenario-specials">{scenarioSpecials(scenario).join(' · ')}</span>
      {policyFlags(scenario).map((flag) => (
        <span key={flag.path} class="scenario-flag">
          {flagWords(flag)}
        </span>
      ))}
    </label>
  );
}
