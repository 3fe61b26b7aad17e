import type { Break } from '../../../core/ledger/break.ts';
import type { RunFile } from '../../../core/recording/recording.ts';
import type { Scenario } from '../../../core/scenario/schema.ts';
import type { Services } from '../../services.ts';
import { practiseNext } from './practiseNext.ts';

interface PractiseNextProps {
  readonly broken: Break | null;
  readonly services: Services;
  readonly file: RunFile;
  readonly onPractise: (scenario: Scenario, coaching: Scenario['coaching']) => void;
}

/** What to practise next, as a button that starts it. */
export function PractiseNext({ broken, services, file, onPractise }: PractiseNextProps) {
  const { scenario, why } = practiseNext(broken, services.scenarios, file.header.scenario);
  return (
    <section class="debrief-part" aria-labelledby="practise-head">
      <h3 id="practise-head">Practise next</h3>
      <p class="practise-why">{why}</p>
      <button class="main-button practise" onClick={() => onPractise(scenario, broken ? 'shown' : 'silent')}>
        <span>{scenario.title}</span>
        <span class="practise-time">about {scenario.minutes} min, sterility {broken ? 'shown' : 'silent'}</span>
      </button>
      <p class="small">A training aid, not proof of competence.</p>
    </section>
  );
}
