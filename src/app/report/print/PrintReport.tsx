import type { Verification } from '../../../core/recording/verifyRun.ts';
import { dateText } from '../../parts/dateText.ts';
import type { Services } from '../../services.ts';
import type { ReportView } from '../reportView.ts';
import { unscoredWords, verdictWords } from '../scoreWords.ts';
import { PrintBreaks } from './PrintBreaks.tsx';
import { PrintChallenges } from './PrintChallenges.tsx';
import { PrintIdentity } from './PrintIdentity.tsx';
import { PrintParts } from './PrintParts.tsx';
import { PrintRemarks } from './PrintRemarks.tsx';
import { PrintSignatures } from './PrintSignatures.tsx';
import { PrintVerdict } from './PrintVerdict.tsx';

interface PrintReportProps {
  readonly view: ReportView;
  readonly ruleWords: Services['ruleWords'];
  readonly sameSimulation: boolean;
  readonly verification: Verification | null;
}

/** The report as it is printed, on one or two pages that a supervisor signs. Only paper shows it. */
export const PrintReport = ({ view, ruleWords, sameSimulation, verification }: PrintReportProps) => (
  <article class="print">
    <PrintIdentity view={view} sameSimulation={sameSimulation} verification={verification} />
    {view.score ? <PrintVerdict score={view.score} /> : <p class="print-verdict">{unscoredWords(view.file)}</p>}
    {view.score && <PrintParts parts={view.score.parts} />}
    <PrintBreaks result={view.result} ruleWords={ruleWords} />
    <PrintChallenges result={view.result} />
    <PrintRemarks view={view} />
    <PrintSignatures run={runWords(view)} />
  </article>
);

function runWords({ file: { header }, score }: ReportView): string {
  const verdict = score ? `, verdict ${verdictWords(score).toLowerCase()}` : '';
  return `Run ${header.runId}, ${header.scenario.title}, begun ${dateText(header.startedAt)}${verdict}`;
}
