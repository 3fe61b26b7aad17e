import type { Services } from '../../services.ts';
import type { ReportView } from '../reportView.ts';
import { unscoredWords } from '../scoreWords.ts';
import type { VerificationState } from '../useVerification.ts';
import { PrintBreaks } from './PrintBreaks.tsx';
import { PrintIdentity } from './PrintIdentity.tsx';
import { PrintParts } from './PrintParts.tsx';
import { PrintRemarks } from './PrintRemarks.tsx';
import { PrintSignatures } from './PrintSignatures.tsx';
import { PrintVerdict } from './PrintVerdict.tsx';

interface PrintReportProps {
  readonly view: ReportView;
  readonly ruleWords: Services['ruleWords'];
  readonly sameSimulation: boolean;
  readonly verified: VerificationState['answer'];
}

/** The report as it is printed, on one or two pages that a supervisor signs. Only paper shows it. */
export const PrintReport = ({ view, ruleWords, sameSimulation, verified }: PrintReportProps) => (
  <article class="print">
    <PrintIdentity view={view} sameSimulation={sameSimulation} verified={verified} />
    {view.score ? <PrintVerdict score={view.score} /> : <p class="print-verdict">{unscoredWords(view.file)}</p>}
    {view.score && <PrintParts parts={view.score.parts} />}
    <PrintBreaks result={view.result} ruleWords={ruleWords} />
    <PrintRemarks view={view} />
    <PrintSignatures />
  </article>
);
