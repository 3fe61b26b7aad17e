import { useEffect, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { RunResult } from '../../core/run/result.ts';
import { dateText } from '../parts/dateText.ts';
import { durationText } from '../parts/clockText.ts';
import type { Services } from '../services.ts';
import { BreakCard } from './BreakCard.tsx';
import { HandlingTable } from './HandlingTable.tsx';
import { OtherEvents } from './OtherEvents.tsx';
import { paceWords } from './paceWords.ts';
import { secondsAt, summaryWords } from './reportFacts.ts';
import { TaskTable } from './TaskTable.tsx';
import { VerifyButton } from './VerifyButton.tsx';

interface ReportPageProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly onAgain: (seed: 'same' | 'new') => void;
  readonly onBack: () => void;
}

/** What a run came to, without a verdict: breaks with their chains, tasks, events, handling. */
export function ReportPage({ services, file, onAgain, onBack }: ReportPageProps) {
  const { result, share } = useResult(services, file);
  const { header } = file;
  return (
    <div class="report">
      <header class="bar report-bar">
        <h1 class="bar-title">Report</h1>
        <span class="bar-scenario">
          {header.scenario.title}, {durationText(secondsAt(file.steps))}
        </span>
        <span class="report-summary">{result && summaryWords(result)}</span>
        <span class="report-actions">
          <button onClick={onBack}>Start page</button>
          <button onClick={() => void services.saveFile(file)}>Save the run file</button>
          <button onClick={() => onAgain('same')}>Again, same seed</button>
          <button class="main-button" onClick={() => onAgain('new')}>
            Again, new seed
          </button>
        </span>
      </header>
      {result ? <ReportBody services={services} file={file} result={result} /> : <Replaying share={share} />}
    </div>
  );
}

function ReportBody({ services, file, result }: { readonly services: Services; readonly file: RunFile; readonly result: RunResult }) {
  return (
    <div class="report-columns">
      <main class="report-main" aria-labelledby="breaks-head">
        <h2 id="breaks-head">Breaks of sterility</h2>
        {result.breaks.length === 0 && <p class="report-none">None. Nothing that must be sterile met anything that was not.</p>}
        {result.breaks.map((broken) => (
          <BreakCard key={broken.number} broken={broken} rule={services.ruleWords(broken.rule)} words={result.words} />
        ))}
      </main>
      <aside class="report-side" aria-label="Run">
        <TaskTable progress={result.progress} />
        <OtherEvents result={result} />
        <HandlingTable result={result} />
        <AboutRun services={services} file={file} />
      </aside>
    </div>
  );
}

function AboutRun({ services, file }: { readonly services: Services; readonly file: RunFile }) {
  const { header } = file;
  return (
    <section class="about-run">
      <h2>Recording</h2>
      <p class="small">
        Begun {dateText(header.startedAt)}. Coaching {header.scenario.coaching}, {paceWords(file)}, seed {header.seed}.{file.result === null && ' Broken off before its end.'}
        {header.resumedAt.length > 0 && ` Taken up again ${header.resumedAt.length === 1 ? 'once' : `${header.resumedAt.length} times`}.`}
      </p>
      {services.isSameSimulation(file) ? (
        <VerifyButton file={file} verify={services.verify} />
      ) : (
        <p>Recorded under version {header.simulation} of the simulation, which is another than this one. The report is as it was saved and cannot be verified here.</p>
      )}
      <p class="small">A training aid, not proof of competence.</p>
    </section>
  );
}

const Replaying = ({ share }: { readonly share: number | null }) => (
  <main class="report-wait">
    {share === null ? (
      <p>This run was broken off under another version of the simulation. It has no report; its file can be saved.</p>
    ) : (
      <label>
        Playing the recording again to see what it came to <progress max={1} value={share} />
      </label>
    )}
  </main>
);

/** The written result, or for a run that was broken off what comes of playing it again. */
function useResult(services: Services, file: RunFile): { readonly result: RunResult | null; readonly share: number | null } {
  const [result, setResult] = useState(file.result);
  const [share, setShare] = useState<number | null>(services.isSameSimulation(file) ? 0 : null);
  useEffect(() => {
    setResult(file.result);
    if (file.result !== null || !services.isSameSimulation(file)) return;
    const work = services.replayResult(file, setShare);
    work.outcome.then(setResult, () => setShare(null));
    return () => work.stop();
  }, [file]);
  return { result, share };
}
