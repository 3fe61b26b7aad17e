import { useEffect, useRef } from 'preact/hooks';
import type { Followed } from '../../../core/debrief/followTypes.ts';
import type { RunFile } from '../../../core/recording/recording.ts';
import type { Exercise } from '../../../core/scoring/practise.ts';
import type { Services } from '../../services.ts';
import { ClearancePanel } from '../clearance/ClearancePanel.tsx';
import { EventsPanel } from '../events/EventsPanel.tsx';
import { FollowPanel } from '../follow/FollowPanel.tsx';
import type { PlayHead } from '../PlayHead.ts';
import type { Lane, LaneMark } from '../timeline/lanes.ts';
import type { Debrief } from '../useDebrief.ts';
import type { Selection } from '../useSelectedBreak.ts';
import type { WhatIf } from '../useWhatIf.ts';
import { BreakPanel } from './BreakPanel.tsx';
import { WentWell } from './WentWell.tsx';

export type PanelTab = 'break' | 'follow' | 'clearance' | 'events';

export interface DebriefPanelProps {
  readonly services: Services;
  readonly file: RunFile;
  readonly debrief: Debrief & { readonly head: PlayHead };
  readonly selection: Selection;
  readonly whatIf: WhatIf;
  readonly tab: PanelTab;
  readonly onTab: (tab: PanelTab) => void;
  readonly lanes: readonly Lane[];
  readonly followed: Followed | null;
  readonly onGo: (step: number) => void;
  readonly onMark: (mark: LaneMark) => void;
  readonly onPractise: (exercise: Exercise) => void;
}

const TABS: readonly (readonly [PanelTab, string])[] = [['break', 'Breaks'], ['follow', 'Follow'], ['clearance', 'Clearance'], ['events', 'Events']];

/** The side of the debrief: breaks one by one, what is followed, clearances, all events. */
export function DebriefPanel(props: DebriefPanelProps) {
  const { tab, onTab, selection } = props;
  const body = useRef<HTMLDivElement>(null);
  useEffect(() => body.current?.scrollTo(0, 0), [tab, selection.number]);
  const onKey = (event: KeyboardEvent): void => {
    const by = event.code === 'ArrowRight' ? 1 : event.code === 'ArrowLeft' ? -1 : 0;
    if (by === 0) return;
    event.preventDefault();
    const next = TABS[(TABS.findIndex(([id]) => id === tab) + by + TABS.length) % TABS.length]![0];
    onTab(next);
    document.getElementById(`tab-${next}`)?.focus();
  };
  return (
    <aside class="debrief-panel" aria-label="What happened">
      <div class="tabs" role="tablist" aria-label="What happened">
        {TABS.map(([id, words]) => (
          <button key={id} id={`tab-${id}`} class="tab" role="tab" aria-selected={tab === id} aria-controls="debrief-tab" tabIndex={tab === id ? 0 : -1} onKeyDown={onKey} onClick={() => onTab(id)}>
            {words}
          </button>
        ))}
      </div>
      <div ref={body} id="debrief-tab" class="debrief-tab" role="tabpanel" aria-labelledby={`tab-${tab}`} tabIndex={0}>
        <TabBody {...props} />
      </div>
    </aside>
  );
}

function TabBody(props: DebriefPanelProps) {
  const { debrief, tab, lanes, followed, onGo, onMark, selection } = props;
  const { head, source, revision } = debrief;
  switch (tab) {
    case 'break':
      return selection.broken ? <BreakPanel {...props} broken={selection.broken} /> : <WentWell {...props} />;
    case 'follow':
      return <FollowPanel head={head} followed={followed} onGo={onGo} />;
    case 'clearance':
      return source && <ClearancePanel head={head} trace={source.trace} revision={revision} onGo={onGo} />;
    case 'events':
      return <EventsPanel head={head} lanes={lanes} onMark={onMark} />;
  }
}
