import { durationText } from '../../parts/clockText.ts';
import { dateText } from '../../parts/dateText.ts';
import { paceWords } from '../paceWords.ts';
import { secondsAt } from '../reportFacts.ts';
import type { ReportView } from '../reportView.ts';
import type { VerificationState } from '../useVerification.ts';

interface PrintIdentityProps {
  readonly view: ReportView;
  readonly sameSimulation: boolean;
  readonly verified: VerificationState['answer'];
}

/** Which run this is, and whether what follows was checked against its recording. */
export function PrintIdentity({ view, sameSimulation, verified }: PrintIdentityProps) {
  const { header, steps, result } = view.file;
  const resumed = header.resumedAt.length > 0 ? `, taken up again ${header.resumedAt.length} ×` : '';
  const facts: readonly (readonly [string, string])[] = [
    ['Scenario', `${header.scenario.title} (${header.scenario.id}, ${header.scenarioHash})`],
    ['Run', header.runId],
    ['Begun', dateText(header.startedAt)],
    ['Duration', `${durationText(secondsAt(steps))}${resumed}${result === null ? ', broken off' : ''}`],
    ['Coaching, pace', `${header.scenario.coaching}, ${paceWords(view.file)}`],
    ['Seed', String(header.seed)],
    ['Versions', `simulation ${header.simulation}, scoring ${view.score ? view.score.rubricVersion : '–'}`],
    ['Recording', verifiedWords(header.simulation, sameSimulation, verified)],
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

function verifiedWords(simulation: number, sameSimulation: boolean, verified: VerificationState['answer']): string {
  if (!sameSimulation) return `made under version ${simulation} of the simulation, cannot be verified by this one`;
  return verified?.words ?? 'not verified before this was printed';
}
