import { nextEvent, type EventKind } from '../../core/debrief/events.ts';
import type { PanelTab } from './panel/DebriefPanel.tsx';
import type { PlayHead } from './PlayHead.ts';
import type { LaneMark } from './timeline/lanes.ts';
import type { Debrief } from './useDebrief.ts';
import type { Selection } from './useSelectedBreak.ts';

/** Ways to an instant: by time, by an event that was pointed at, by the next event of a kind. */
export interface Navigation {
  readonly goTo: (step: number) => void;
  readonly onMark: (mark: LaneMark) => void;
  readonly onEvent: (event: EventKind, direction: 1 | -1) => void;
}

export function useNavigation({ head, log, result }: Debrief & { readonly head: PlayHead }, selection: Selection, setTab: (tab: PanelTab) => void): Navigation {
  const goTo = (step: number): void => {
    head.pause();
    head.goTo(step);
  };
  return {
    goTo,
    onMark: (mark) => {
      if (mark.breakNumber > 0) selection.choose(mark.breakNumber);
      if (mark.kind === 'break') setTab('break');
      goTo(mark.step);
    },
    onEvent: (event, direction) => {
      if (event === 'tenth') return head.goBy(direction / 10);
      if (!log) return;
      const step = nextEvent(log, event, direction === 1 ? Math.floor(head.step) : Math.ceil(head.step), direction);
      if (step === null) return;
      const broken = event === 'break' ? result?.breaks.find((one) => one.step === step) : undefined;
      if (broken) selection.choose(broken.number);
      goTo(step);
    },
  };
}
