import { useEffect, useMemo, useState } from 'preact/hooks';
import { nextEvent, type EventKind } from '../../core/debrief/events.ts';
import { follow, followables } from '../../core/debrief/follow.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Exercise } from '../../core/scoring/practise.ts';
import type { StagePort } from '../run/stagePort.ts';
import type { Services } from '../services.ts';
import { DebriefBar } from './DebriefBar.tsx';
import { KeysSheet } from './keys/KeysSheet.tsx';
import { useDebriefKeys } from './keys/useDebriefKeys.ts';
import { DebriefPanel, type PanelTab } from './panel/DebriefPanel.tsx';
import { partOf } from './room/partOf.ts';
import { RoomView } from './room/RoomView.tsx';
import type { Layers } from './room/LayerToggles.tsx';
import { lanesOf, stateWords, type LaneMark } from './timeline/lanes.ts';
import { Timeline } from './timeline/Timeline.tsx';
import { Transport } from './transport/Transport.tsx';
import { momentText } from './timeText.ts';
import { useDebrief } from './useDebrief.ts';
import { useSelectedBreak } from './useSelectedBreak.ts';
import { useWhatIf } from './useWhatIf.ts';
import '../look/debrief.css';
import '../look/debriefPanel.css';
import '../look/debriefTimeline.css';

/** The run to go through, and the ways out. */
export interface DebriefPageProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly onReport: () => void;
  readonly onPractise: (exercise: Exercise) => void;
}

/** Going through a finished run: the room at any instant with its hidden sterility, what went wrong and why, what would have saved it. */
export function DebriefPage({ services, file, onReport, onPractise }: DebriefPageProps) {
  const debrief = useDebrief(services.openDebrief, file);
  const { head, source, log, result, revision } = debrief;
  const selection = useSelectedBreak(debrief, file);
  const whatIf = useWhatIf(log, selection.number, file.header.scenario);
  const [layers, setLayers] = useState<Layers>({ chain: true, paths: false, heat: false, zones: false });
  const [followed, setFollowed] = useState('');
  const [spanS, setSpanS] = useState<number | null>(null);
  const [tab, setTab] = useState<PanelTab>('break');
  const [help, setHelp] = useState(false);
  const [stage, setStage] = useState<StagePort | null>(null);
  const lanes = useMemo(() => lanesOf(debrief.timeline, debrief.nearMisses), [debrief.timeline, debrief.nearMisses]);
  const things = useMemo(() => (log ? followables(log) : []), [log]);
  const followedThing = useMemo(() => (log && followed ? follow(log, { object: followed }) : null), [log, followed]);
  const spoiling = useMemo(() => new Set((result?.breaks ?? []).flatMap(({ spread }) => spread.flatMap(({ touch }) => touch ?? []))), [result]);
  const part = useMemo(() => partOf(selection.links), [selection.links]);

  const goTo = (step: number): void => {
    head.pause();
    head.goTo(step);
  };
  const onMark = (mark: LaneMark): void => {
    if (mark.breakNumber > 0) selection.choose(mark.breakNumber);
    if (mark.kind === 'break') setTab('break');
    goTo(mark.step);
  };
  const onEvent = (event: EventKind, direction: 1 | -1): void => {
    if (event === 'tenth') return head.goBy(direction / 10);
    if (!log) return;
    const step = nextEvent(log, event, direction === 1 ? Math.floor(head.step) : Math.ceil(head.step), direction);
    if (step === null) return;
    const broken = event === 'break' ? result?.breaks.find((one) => one.step === step) : undefined;
    if (broken) selection.choose(broken.number);
    goTo(step);
  };
  const onFollow = (object: string): void => {
    setFollowed(object);
    setTab(object ? 'follow' : 'break');
  };
  useDebriefKeys({ head, onEvent, layers, setLayers, stage, setTab, onHelp: () => setHelp(true), off: help });
  useEffect(() => {
    if (selection.opensAt !== null) head.goTo(selection.opensAt);
  }, [head, selection.opensAt === null]);

  return (
    <div class="debrief">
      <DebriefBar file={file} debrief={debrief} onReport={onReport} onSave={() => void services.saveFile(file)} />
      <div class="debrief-middle">
        {source && (
          <RoomView
            head={head}
            trace={source.trace}
            mountStage={services.mountStage}
            links={selection.links}
            part={part}
            layers={layers}
            onLayers={setLayers}
            onLink={({ step }) => goTo(step)}
            onStage={setStage}
            revision={revision}
            share={source.fault === null && source.share < 1 ? source.share : null}
            whatIf={whatIf.shown}
            log={log}
          />
        )}
      </div>
      <DebriefPanel
        services={services}
        file={file}
        debrief={debrief}
        selection={selection}
        whatIf={whatIf}
        tab={tab}
        onTab={setTab}
        lanes={lanes}
        followed={followedThing}
        onGo={goTo}
        onMark={onMark}
        onPractise={onPractise}
      />
      <section class="debrief-time" aria-label="Time">
        <Transport head={head} onEvent={onEvent} followables={things} follow={followed} onFollow={onFollow} spanS={spanS} onSpan={setSpanS} onHelp={() => setHelp(true)} />
        <Timeline
          head={head}
          timeline={debrief.timeline}
          lanes={lanes}
          spoiling={spoiling}
          followed={followedThing}
          selected={selection.number}
          spanS={spanS}
          onMark={onMark}
          tell={(step) => tellInstant(step, debrief.timeline.breaks, followedThing)}
        />
      </section>
      {help && <KeysSheet onClose={() => setHelp(false)} />}
    </div>
  );
}

/** What holds at an instant, for the timeline's reader. */
function tellInstant(step: number, breaks: readonly { readonly number: number; readonly fromStep: number; readonly toStep: number }[], followed: ReturnType<typeof follow> | null): string {
  const lasting = breaks.filter(({ fromStep, toStep }) => step >= fromStep && step <= toStep);
  const began = lasting.find(({ fromStep }) => Math.abs(step - fromStep) < 6);
  const words = began ? `break ${began.number} begins` : lasting.map(({ number, fromStep }) => `break ${number} since ${momentText(fromStep)}`).join(', ');
  return [words, followed ? `${followed.words} ${stateWords(followed.intervals, step)}` : ''].filter(Boolean).join(', ');
}
