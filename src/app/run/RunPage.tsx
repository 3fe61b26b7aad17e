import type { RunFile } from '../../core/recording/recording.ts';
import type { RuleWords } from '../services.ts';
import { EndSheet } from './EndSheet.tsx';
import { HelpSheet } from './HelpSheet.tsx';
import { HintLine } from './HintLine.tsx';
import { Legend } from './Legend.tsx';
import type { LiveRun } from './LiveRun.ts';
import { obey } from './pageOrders.ts';
import { PauseSheet } from './PauseSheet.tsx';
import { RoomStage } from './RoomStage.tsx';
import { PAUSE_BUTTON, RunActions } from './RunActions.tsx';
import { RunMessages } from './RunMessages.tsx';
import { RunPanel } from './RunPanel.tsx';
import { ScreenButtons } from './ScreenButtons.tsx';
import type { MountStage, StagePort } from './stagePort.ts';
import { TopBar } from './TopBar.tsx';
import { useDialogs } from './useDialogs.ts';
import { useEscape } from './useEscape.ts';
import { useLive } from './useLive.ts';
import { usePauseWhenHidden } from './usePauseWhenHidden.ts';
import { useRemedies } from './useRemedies.ts';
import { useRoom } from './useRoom.ts';
import { ZoomButtons } from './ZoomButtons.tsx';

export interface RunPageProps {
  readonly live: LiveRun;
  readonly mountStage: MountStage;
  readonly ruleWords: (rule: string) => RuleWords;
  readonly onEnded: (file: RunFile) => void;
  readonly onLeave: () => void;
  /** The room stands; for the test hook. */
  readonly onRoomReady: (stage: StagePort, room: HTMLElement) => void;
}

/** The page on which a run is played. */
export function RunPage({ live, mountStage, ruleWords, onEnded, onLeave, onRoomReady }: RunPageProps) {
  useLive(live);
  usePauseWhenHidden(live);
  const room = useRoom();
  const dialogs = useDialogs(live);
  const remedies = useRemedies(live);
  const end = (): void => void live.end().then(onEnded);
  useEscape(() => {
    if (!live.mode.playing) return;
    if (remedies.choosing) remedies.back();
    else if (room.hasFocus) document.getElementById(PAUSE_BUTTON)?.focus();
    else room.focus();
  });
  const ready = (stage: StagePort, element: HTMLElement): void => {
    room.ready(stage, element);
    onRoomReady(stage, element);
  };

  return (
    <div class="run" onMouseDown={keepFocusInRoom}>
      <TopBar live={live} />
      <main class="stage">
        <RoomStage live={live} mountStage={mountStage} onOrder={(order) => obey(order, live, room, remedies, dialogs)} onFocus={room.setFocus} onReady={ready} />
        {live.coaching === 'shown' && <Legend />}
        <RunMessages live={live} stage={room.stage} ruleWords={ruleWords} />
        <ScreenButtons hands={live.hands} />
        <ZoomButtons onZoom={room.zoom} onFrame={room.frame} />
      </main>
      <HintLine live={live} roomHasFocus={room.hasFocus} ruleWords={ruleWords} />
      <aside class="panel" aria-label="Hands and remedies">
        <RunActions onPause={() => live.mode.send({ type: 'pause' })} onHelp={() => dialogs.open('help')} onEnd={() => dialogs.open('end')} />
        <RunPanel live={live} drawHand={room.stage?.drawHand ?? null} remedies={remedies} />
      </aside>
      {live.mode.mode === 'paused' && <PauseSheet live={live} onHelp={() => dialogs.open('help')} onLeave={onLeave} onEnd={end} />}
      {dialogs.shown === 'help' && <HelpSheet onClose={dialogs.close} />}
      {dialogs.shown === 'end' && <EndSheet progress={live.run.progress} onEnd={end} onBack={dialogs.close} />}
    </div>
  );
}

/** A click in the panel leaves the focus where it was, so that the keys go on leading the hands. */
function keepFocusInRoom(event: MouseEvent): void {
  const target = event.target as HTMLElement;
  if (target.closest('button') && !target.closest('dialog')) event.preventDefault();
}
