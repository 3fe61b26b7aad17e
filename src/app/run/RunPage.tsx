import { useEffect, useRef, useState } from 'preact/hooks';
import type { RemedyId } from '../../core/commands/command.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { PageOrder } from '../input/KeyboardDriver.ts';
import type { RuleWords } from '../services.ts';
import { EndSheet } from './EndSheet.tsx';
import { HelpSheet } from './HelpSheet.tsx';
import { HintLine } from './HintLine.tsx';
import { Legend } from './Legend.tsx';
import type { LiveRun } from './LiveRun.ts';
import { PauseSheet } from './PauseSheet.tsx';
import { remedyChoices } from './remedyChoices.ts';
import { RoomStage } from './RoomStage.tsx';
import { RunActions } from './RunActions.tsx';
import { RunMessages } from './RunMessages.tsx';
import { RunPanel } from './RunPanel.tsx';
import { ScreenButtons } from './ScreenButtons.tsx';
import type { MountStage, StagePort } from './stagePort.ts';
import { TopBar } from './TopBar.tsx';
import { useLive } from './useLive.ts';
import { usePauseWhenHidden } from './usePauseWhenHidden.ts';
import { ZoomButtons } from './ZoomButtons.tsx';

interface RunPageProps {
  readonly live: LiveRun;
  readonly mountStage: MountStage;
  readonly ruleWords: (rule: string) => RuleWords;
  readonly onEnded: (file: RunFile) => void;
  readonly onLeave: () => void;
  /** The room stands; for the test hook. */
  readonly onRoomReady: (stage: StagePort, room: HTMLElement) => void;
}

type Dialog = 'help' | 'end' | null;

/** The page on which a run is played. */
export function RunPage({ live, mountStage, ruleWords, onEnded, onLeave, onRoomReady }: RunPageProps) {
  useLive(live);
  usePauseWhenHidden(live);
  const page = useRef<HTMLDivElement>(null);
  const [stage, setStage] = useState<StagePort | null>(null);
  const [dialog, setDialog] = useState<Dialog>(null);
  const [choosing, setChoosing] = useState<RemedyId | null>(null);
  const [inRoom, setInRoom] = useState(false);

  const open = (which: Dialog): void => {
    live.mode.send({ type: 'dialog.open' });
    setDialog(which);
  };
  const close = (): void => {
    setDialog(null);
    live.mode.send({ type: 'dialog.close' });
  };
  const end = (): void => void live.end().then(onEnded);

  const startRemedy = (remedy: RemedyId, thing?: string): void => {
    setChoosing(null);
    live.hands.order(thing === undefined ? { type: 'remedy.start', remedy } : { type: 'remedy.start', remedy, thing });
  };
  const remedyAsked = (remedy: RemedyId): void => {
    if (remedyChoices(remedy, live.run.scenario).length === 0) startRemedy(remedy);
    else setChoosing(remedy);
  };
  const notice = (): void => {
    live.hands.order({ type: 'notice' });
    live.say('You said so. Choose the remedy.');
  };
  const answer = (order: PageOrder): void => {
    switch (order.kind) {
      case 'notice':
        return notice();
      case 'remedy': {
        const choice = choosing ? remedyChoices(choosing, live.run.scenario)[order.digit - 1] : undefined;
        return choosing ? choice && startRemedy(choosing, choice.thing) : remedyAsked(order.remedy);
      }
      case 'ask':
        return live.hands.order({ type: 'ask', request: order.request });
      case 'pause':
        return live.mode.send({ type: live.mode.playing ? 'pause' : 'resume' });
      case 'help':
        return dialog === null ? open('help') : close();
      case 'zoom':
        return zoom(order.factor);
      case 'frame':
        return stage?.fit(order.framing);
    }
  };
  const zoom = (factor: number): void => {
    const box = page.current!.querySelector('.room')!.getBoundingClientRect();
    stage?.zoom(factor, box.width / 2, box.height / 2);
  };
  const room = (): HTMLElement => page.current!.querySelector<HTMLElement>('.room')!;
  useEscape(() => {
    if (dialog !== null || !live.mode.playing) return;
    if (choosing) setChoosing(null);
    else if (inRoom) document.getElementById('pause-button')?.focus();
    else room().focus();
  });

  return (
    <div ref={page} class="run" onMouseDown={keepFocusInRoom}>
      <TopBar live={live} />
      <main class="stage">
        <RoomStage
          live={live}
          mountStage={mountStage}
          onOrder={answer}
          onFocus={setInRoom}
          onReady={(ready, element) => {
            setStage(ready);
            onRoomReady(ready, element);
          }}
        />
        {live.coaching === 'shown' && <Legend />}
        <RunMessages live={live} stage={stage} ruleWords={ruleWords} />
        <ScreenButtons hands={live.hands} />
        <ZoomButtons onZoom={zoom} onFrame={(framing) => stage?.fit(framing)} />
      </main>
      <HintLine live={live} roomHasFocus={inRoom} ruleWords={ruleWords} />
      <aside class="panel" aria-label="Hands and remedies">
        <RunActions onPause={() => live.mode.send({ type: 'pause' })} onHelp={() => open('help')} onEnd={() => open('end')} />
        <RunPanel
          live={live}
          drawHand={stage?.drawHand ?? null}
          choosing={choosing}
          onNotice={notice}
          onRemedy={remedyAsked}
          onChoice={(choice) => choosing && startRemedy(choosing, choice.thing)}
          onBack={() => setChoosing(null)}
          onAsk={(request) => live.hands.order({ type: 'ask', request })}
        />
      </aside>
      {live.mode.mode === 'paused' && <PauseSheet live={live} onHelp={() => open('help')} onLeave={onLeave} onEnd={end} />}
      {dialog === 'help' && <HelpSheet onClose={close} />}
      {dialog === 'end' && <EndSheet progress={live.run.progress} onEnd={end} onBack={close} />}
    </div>
  );
}

/** A click in the panel leaves the focus where it was, so that the keys go on leading the hands. */
function keepFocusInRoom(event: MouseEvent): void {
  const target = event.target as HTMLElement;
  if (target.closest('button') && !target.closest('dialog')) event.preventDefault();
}

function useEscape(answer: () => void): void {
  const latest = useRef(answer);
  latest.current = answer;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.code === 'Escape') latest.current();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}
