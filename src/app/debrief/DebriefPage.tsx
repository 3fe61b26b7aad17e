import { useEffect, useMemo, useState } from 'preact/hooks';
import { follow } from '../../core/debrief/follow.ts';
import type { RunFile } from '../../core/recording/recording.ts';
import type { Exercise } from '../../core/scoring/practise.ts';
import type { StagePort } from '../run/stagePort.ts';
import type { Services } from '../services.ts';
import { DebriefBar } from './DebriefBar.tsx';
import { DebriefTime } from './DebriefTime.tsx';
import { KeysSheet } from './keys/KeysSheet.tsx';
import { useDebriefKeys } from './keys/useDebriefKeys.ts';
import { DebriefPanel, type PanelTab } from './panel/DebriefPanel.tsx';
import type { Layers } from './room/LayerToggles.tsx';
import { RoomView } from './room/RoomView.tsx';
import { lanesOf } from './timeline/lanes.ts';
import { useDebrief } from './useDebrief.ts';
import { useNavigation } from './useNavigation.ts';
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
  const { head, log } = debrief;
  const selection = useSelectedBreak(debrief, file);
  const whatIf = useWhatIf(log, selection.played ? selection.broken : null, file.header.scenario);
  const [layers, setLayers] = useState<Layers>({ chain: true, paths: false, heat: false, zones: false });
  const [object, setObject] = useState('');
  const [tab, setTab] = useState<PanelTab>('break');
  const [help, setHelp] = useState(false);
  const [stage, setStage] = useState<StagePort | null>(null);
  const lanes = useMemo(() => lanesOf(debrief.timeline, debrief.nearMisses), [debrief.timeline, debrief.nearMisses]);
  const followed = useMemo(() => (log && object ? follow(log, { object }) : null), [log, object]);
  const navigation = useNavigation(debrief, selection, setTab);
  const { goTo, onMark, onEvent } = navigation;
  const onFollow = (chosen: string): void => {
    setObject(chosen);
    setTab(chosen ? 'follow' : 'break');
  };
  useDebriefKeys({ head, onEvent, layers, setLayers, stage, setTab, onHelp: () => setHelp(true), off: help });
  useEffect(() => {
    if (selection.opensAt !== null) head.goTo(selection.opensAt);
  }, [head, selection.opensAt === null]);
  return (
    <div class="debrief">
      <DebriefBar file={file} debrief={debrief} onReport={onReport} onSave={() => void services.saveFile(file)} />
      <main class="debrief-middle">
        <RoomView
          debrief={debrief}
          mountStage={services.mountStage}
          links={selection.links}
          whatIf={whatIf.shown}
          layers={layers}
          onLayers={setLayers}
          onLink={({ step }) => goTo(step)}
          onStage={setStage}
        />
      </main>
      <DebriefPanel
        services={services}
        file={file}
        debrief={debrief}
        selection={selection}
        whatIf={whatIf}
        tab={tab}
        onTab={setTab}
        lanes={lanes}
        followed={followed}
        onGo={goTo}
        onMark={onMark}
        onPractise={onPractise}
      />
      <DebriefTime {...navigation} debrief={debrief} lanes={lanes} selected={selection.number} follow={object} followed={followed} onFollow={onFollow} onHelp={() => setHelp(true)} />
      {help && <KeysSheet onClose={() => setHelp(false)} />}
    </div>
  );
}
