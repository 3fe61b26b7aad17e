import { useMemo } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Exercise } from '../../core/scoring/practise.ts';
import { durationText } from '../parts/clockText.ts';
import type { Services } from '../services.ts';
import { AboutRun } from './AboutRun.tsx';
import { BreakCard } from './BreakCard.tsx';
import { BundleCard } from './BundleCard.tsx';
import { ChallengeCard } from './ChallengeCard.tsx';
import { HandlingTable } from './HandlingTable.tsx';
import { NextExercises } from './NextExercises.tsx';
import { NoticingCard } from './NoticingCard.tsx';
import { OtherEvents } from './OtherEvents.tsx';
import { PolicyFlags } from './PolicyFlags.tsx';
import { PrintReport } from './print/PrintReport.tsx';
import { secondsAt, summaryWords } from './reportFacts.ts';
import { reportView, type ReportView } from './reportView.ts';
import { ScoreParts } from './ScoreParts.tsx';
import { unscoredWords } from './scoreWords.ts';
import { TaskTable } from './TaskTable.tsx';
import { useResult } from './useResult.ts';
import { useVerification } from './useVerification.ts';
import { VerdictCard } from './VerdictCard.tsx';

interface ReportPageProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly onAgain: (seed: 'same' | 'new') => void;
  readonly onPractise: (exercise: Exercise) => void;
  readonly onDebrief: () => void;
  /** Opens the rule book, at a rule if one is given. */
  readonly onRule: (rule?: string) => void;
  readonly onRuns: () => void;
  readonly onBack: () => void;
}

/** What a run came to: verdict and reasons first, then what the score is made of, the breaks with their chains, and what next. */
export function ReportPage(props: ReportPageProps) {
  const { services, file, onAgain, onDebrief, onRule, onRuns, onBack } = props;
  const { result, share } = useResult(services, file);
  const view = useMemo(() => result && reportView(file, result, services.scenarios), [file, result, services]);
  const { header } = file;
  return (
    <div class="report">
      <header class="bar report-bar">
        <h1 class="bar-title">Report</h1>
        <span class="bar-scenario">
          {header.scenario.title}, {durationText(secondsAt(file.steps))}
        </span>
        <span class="report-actions">
          <button onClick={onBack}>Start page</button>
          <button onClick={onRuns}>My runs</button>
          <button onClick={() => onRule()}>Rules</button>
          <button onClick={() => void services.saveFile(file)}>Save the run file</button>
          <button disabled={!view} onClick={() => window.print()}>
            Print
          </button>
          <button onClick={() => onAgain('same')}>Again, same seed</button>
          <button onClick={() => onAgain('new')}>Again, new seed</button>
          <button class="main-button" onClick={onDebrief}>
            Debrief
          </button>
        </span>
      </header>
      {view ? <ReportBody {...props} view={view} /> : <Replaying share={share} />}
    </div>
  );
}

function ReportBody({ services, file, onPractise, onRule, view }: ReportPageProps & { readonly view: ReportView }) {
  const verification = useVerification(file, services.verify);
  const { result, score } = view;
  return (
    <>
      <div class="report-columns">
        <main class="report-main">
          {score ? <VerdictCard score={score} /> : <p class="report-none">{unscoredWords(file)}</p>}
          <NextExercises exercises={view.exercises} onPractise={onPractise} />
          <PolicyFlags flags={view.flags} />
          {score && <ScoreParts parts={score.parts} />}
          <section aria-labelledby="breaks-head">
            <h2 id="breaks-head">Breaks of sterility</h2>
            <p class="report-none">{result.breaks.length === 0 ? 'None. Nothing that must be sterile met anything that was not.' : summaryWords(result)}</p>
            {result.breaks.map((broken) => (
              <BreakCard key={broken.number} broken={broken} rule={services.ruleWords(broken.rule)} words={result.words} onRule={onRule} />
            ))}
          </section>
        </main>
        <aside class="report-side" aria-label="Run">
          <BundleCard bundle={view.bundle} />
          <NoticingCard noticing={view.noticing} />
          <ChallengeCard result={result} />
          {!score && <TaskTable progress={result.progress} />}
          <OtherEvents result={result} />
          {!score && <HandlingTable result={result} />}
          <AboutRun services={services} file={file} verification={verification} />
        </aside>
      </div>
      <PrintReport view={view} ruleWords={services.ruleWords} sameSimulation={services.isSameSimulation(file)} verification={verification.verification} />
    </>
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
