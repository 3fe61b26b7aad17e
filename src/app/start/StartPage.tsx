import { useEffect, useState } from 'preact/hooks';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { PaceChoice } from '../parts/PaceChoice.tsx';
import type { Coaching, LiveRun, Slowdown } from '../run/LiveRun.ts';
import type { KeptRun, Services } from '../services.ts';
import { BrokenOffRuns } from './BrokenOffRuns.tsx';
import { Cautions } from './Cautions.tsx';
import { CoachingChoice } from './CoachingChoice.tsx';
import { EarlierRuns } from './EarlierRuns.tsx';
import { FieldDrawing } from './FieldDrawing.tsx';
import { OpenFile } from './OpenFile.tsx';
import { ScenarioCard } from './ScenarioCard.tsx';
import { useDroppedFile } from './useDroppedFile.ts';

interface StartPageProps {
  readonly services: Services;
  readonly onRun: (live: LiveRun) => void;
  readonly onReport: (file: RunFile) => void;
}

/** Where one chooses what to practise, or opens what was practised. */
export function StartPage({ services, onRun, onReport }: StartPageProps) {
  const [own, setOwn] = useState<readonly Scenario[]>([]);
  const scenarios = [...services.scenarios, ...own];
  const [chosen, setChosen] = useState<Scenario | undefined>(scenarios.find(({ id }) => id === services.switches.scenario) ?? scenarios[0]);
  const [coaching, setCoaching] = useState<Coaching>(chosen?.coaching ?? 'shown');
  const [slowdown, setSlowdown] = useState<Slowdown>(1);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const [kept, refreshKept] = useKeptRuns(services);

  const choose = (scenario: Scenario): void => {
    setChosen(scenario);
    setCoaching(scenario.coaching);
  };
  const openFile = async (file: File): Promise<void> => {
    setTrouble(null);
    const opened = await services.openFile(file);
    if (!opened.ok) return setTrouble(opened.error);
    if (opened.value.kind === 'run') return onReport(opened.value.file);
    setOwn([...own, opened.value.scenario]);
    choose(opened.value.scenario);
  };
  const guarded = async (work: () => Promise<void>): Promise<void> => {
    setBusy(true);
    setTrouble(null);
    await work().catch((error: unknown) => setTrouble(`That did not work: ${error instanceof Error ? error.message : String(error)}`));
    setBusy(false);
  };
  const start = (): Promise<void> =>
    guarded(async () => chosen && onRun(await services.startRun({ scenario: chosen, coaching, slowdown, seed: services.switches.seed ?? chosen.seed })));
  const resume = (runId: string): Promise<void> =>
    guarded(async () => {
      const resumed = await services.resumeRun(runId);
      if (resumed.ok) onRun(resumed.value);
      else setTrouble(resumed.error);
    });
  const openKept = (runId: string): Promise<void> =>
    guarded(async () => {
      const opened = await services.openKept(runId);
      if (opened.ok) onReport(opened.value);
      else setTrouble(opened.error);
    });
  useDroppedFile((file) => void openFile(file));

  return (
    <div class="start">
      <header class="start-intro">
        <FieldDrawing />
        <h1>Sterile-field trainer</h1>
        <p class="lead">
          You work the field of an ultrasound-guided central line with two hands that have weight and meet what is in their way. Every touch is followed. Afterwards you see which one broke
          sterility, what it spread to, and whether you said so.
        </p>
        <Cautions />
      </header>
      <main class="start-main">
        <BrokenOffRuns
          runs={kept.brokenOff}
          onResume={(runId) => void resume(runId)}
          onClose={(runId) => void openKept(runId)}
          onDelete={(runId) => void services.deleteRun(runId).then(refreshKept)}
        />
        <form
          class="start-form"
          onSubmit={(event) => {
            event.preventDefault();
            void start();
          }}
        >
          <fieldset class="scenarios">
            <legend>Choose a scenario</legend>
            {scenarios.map((scenario, k) => (
              <ScenarioCard key={k} scenario={scenario} chosen={scenario === chosen} own={own.includes(scenario)} onChoose={() => choose(scenario)} />
            ))}
          </fieldset>
          <div class="start-options">
            <CoachingChoice value={coaching} onChange={setCoaching} />
            <PaceChoice value={slowdown} onChange={setSlowdown} />
          </div>
          <button type="submit" class="main-button start-button" disabled={busy || !chosen}>
            {busy ? 'Getting the room ready' : 'Start'} <span class="start-what">{chosen?.title}</span>
          </button>
        </form>
        <EarlierRuns runs={kept.finished} onOpen={(runId) => void openKept(runId)} />
        <OpenFile trouble={trouble} onFile={(file) => void openFile(file)} />
      </main>
    </div>
  );
}

interface KeptRuns {
  readonly brokenOff: readonly KeptRun[];
  readonly finished: readonly KeptRun[];
}

function useKeptRuns(services: Services): readonly [KeptRuns, () => void] {
  const [runs, setRuns] = useState<KeptRuns>({ brokenOff: [], finished: [] });
  const refresh = (): void => void services.keptRuns().then(setRuns);
  useEffect(refresh, [services]);
  return [runs, refresh];
}
