import type { RunFile } from '../../core/recording/recording.ts';
import { dateText } from '../parts/dateText.ts';
import { capital } from '../parts/sentence.ts';
import { stationWords } from '../parts/stationWords.ts';
import type { Services } from '../services.ts';
import { paceWords } from './paceWords.ts';
import type { VerificationState } from './useVerification.ts';
import { VerifyButton } from './VerifyButton.tsx';

interface AboutRunProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly verification: VerificationState;
}

/** What is known of the recording, and whether the report follows from it. */
export function AboutRun({ services, file, verification }: AboutRunProps) {
  const { header } = file;
  return (
    <section class="about-run">
      <h2>Recording</h2>
      <p class="small">
        {capital(stationWords(header.scenario))}. Begun {dateText(header.startedAt)}. Coaching {header.scenario.coaching}, {paceWords(file)}, seed {header.seed}, run {header.runId}.{file.result === null && ' Broken off before its end.'}
        {header.resumedAt.length > 0 && ` Taken up again ${header.resumedAt.length === 1 ? 'once' : `${header.resumedAt.length} times`}.`}
      </p>
      {services.isSameSimulation(file) ? (
        <VerifyButton {...verification} />
      ) : (
        <p>Recorded under version {header.simulation} of the simulation, which is another than this one. The report is as it was saved and cannot be verified here.</p>
      )}
      <p class="small">A training aid, not proof of competence.</p>
    </section>
  );
}
