import type { Verification } from '../../../core/recording/verifyRun.ts';
import { durationText } from '../../parts/clockText.ts';
import { dateText } from '../../parts/dateText.ts';
import { capital } from '../../parts/sentence.ts';
import { stationWords } from '../../parts/stationWords.ts';
import { paceWords } from '../paceWords.ts';
import { secondsAt } from '../reportFacts.ts';
import type { ReportView } from '../reportView.ts';
import { verifiedWords } from './verifiedWords.ts';

interface PrintIdentityProps {
  readonly view: ReportView;
  readonly sameSimulation: boolean;
  readonly verification: Verification | null;
}

/** Which run this is, and whether what follows was checked against its recording. */
export function PrintIdentity({ view, sameSimulation, verification }: PrintIdentityProps) {
  const { header, steps, result } = view.file;
  const resumed = header.resumedAt.length > 0 ? `, taken up again ${header.resumedAt.length} ×` : '';
  const facts: readonly (readonly [string, string])[] = [
    ['Scenario', `${header.scenario.title} (${header.scenario.id}, ${header.scenarioHash})`],
    ['Work', capital(stationWords(header.scenario))],
    ['Run', header.runId],
    ['Begun', dateText(header.startedAt)],
    ['Duration', `${durationText(secondsAt(steps))}${resumed}${result === null ? ', broken off' : ''}`],
    ['Coaching, pace', `${header.scenario.coaching}, ${paceWords(view.file)}`],
    ['Seed', String(header.seed)],
    ['Versions', `simulation ${header.simulation}, scoring ${view.score ? view.score.rubricVersion : '–'}`],
    ['Recording', verifiedWords(header.simulation, sameSimulation, verification)],
  ];
  return (
    <header>
      <p class="print-kind">Sterile-field trainer · Report of a run</p>
      <dl class="print-identity">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </header>
  );
}
