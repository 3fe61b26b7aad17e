import type { RunFile } from '../../core/recording/recording.ts';
import type { LiveRun } from '../run/LiveRun.ts';
import type { Services } from '../services.ts';
import { BrokenOffRuns } from './BrokenOffRuns.tsx';
import { Cautions } from './Cautions.tsx';
import { EarlierRuns } from './EarlierRuns.tsx';
import { FieldDrawing } from './FieldDrawing.tsx';
import { OpenFile } from './OpenFile.tsx';
import { RunChoiceForm } from './RunChoiceForm.tsx';
import { useDroppedFile } from './useDroppedFile.ts';
import { useKeptRuns } from './useKeptRuns.ts';
import { usePrepared } from './usePrepared.ts';
import type { ChoiceState } from './useRunChoice.ts';
import { useWork } from './useWork.ts';

interface StartPageProps {
  readonly services: Services;
  readonly onRun: (live: LiveRun) => void;
  readonly onReport: (file: RunFile) => void;
  readonly onRuns: () => void;
  readonly choice: ChoiceState;
  readonly onRules: () => void;
}

/** Where one chooses what to practise, or opens what was practised. */
export function StartPage({ services, onRun, onReport, onRuns, choice, onRules }: StartPageProps) {
  const kept = useKeptRuns(services);
  const work = useWork();
  const start = (): void => void work.run(async () => onRun(await services.startRun(choice.value!)));
  const resume = (runId: string): void => void work.run(() => services.resumeRun(runId), onRun);
  const openKept = (runId: string): void => void work.run(() => services.openKept(runId), onReport);
  const openFile = (file: File): void =>
    void work.run(
      () => services.openFile(file),
      (opened) => (opened.kind === 'run' ? onReport(opened.file) : choice.addOwn(opened.scenario)),
    );
  useDroppedFile(openFile);
  usePrepared(services, choice.value?.scenario);

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
        <button class="start-rules" onClick={onRules}>
          Rules, remedies and local policy
        </button>
      </header>
      <main class="start-main">
        <BrokenOffRuns runs={kept.runs.brokenOff} onResume={resume} onClose={openKept} onDelete={(runId) => void services.deleteRun(runId).then(kept.refresh)} />
        <RunChoiceForm choice={choice} busy={work.busy} onStart={start} />
        <EarlierRuns runs={kept.runs.finished} onOpen={openKept} onAll={onRuns} />
        <OpenFile trouble={work.trouble} onFile={openFile} />
      </main>
    </div>
  );
}
