import { useEffect, useRef } from 'preact/hooks';
import type { EventKind } from '../../../core/debrief/events.ts';
import type { StagePort } from '../../run/stagePort.ts';
import type { PanelTab } from '../panel/DebriefPanel.tsx';
import type { PlayHead } from '../PlayHead.ts';
import type { Layers } from '../room/LayerToggles.tsx';
import { debriefOrder, isTaken, type DebriefOrder } from './debriefKeys.ts';

interface KeyParts {
  readonly head: PlayHead;
  readonly onEvent: (event: EventKind, direction: 1 | -1) => void;
  readonly layers: Layers;
  readonly setLayers: (layers: Layers) => void;
  readonly stage: StagePort | null;
  readonly setTab: (tab: PanelTab) => void;
  readonly onHelp: () => void;
  /** A sheet lies over the page. */
  readonly off: boolean;
}

/** Keys of the whole page; fields that have the focus keep theirs. */
export function useDebriefKeys(parts: KeyParts): void {
  const latest = useRef(parts);
  latest.current = parts;
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (latest.current.off || event.ctrlKey || event.metaKey || event.altKey || isTaken(event.target, event.code)) return;
      const order = debriefOrder(event);
      if (order === null) return;
      event.preventDefault();
      obey(order, latest.current);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

function obey(order: DebriefOrder, { head, onEvent, layers, setLayers, stage, setTab, onHelp }: KeyParts): void {
  switch (order.kind) {
    case 'play':
      return head.toggle();
    case 'by':
      return head.goBy(order.seconds);
    case 'end':
      return head.goTo(order.which === 'first' ? 0 : head.end);
    case 'event':
      return onEvent(order.event, order.direction);
    case 'speed':
      return head.changeSpeed(order.by);
    case 'layer':
      return setLayers({ ...layers, [order.layer]: !layers[order.layer] });
    case 'zoom': {
      const room = document.querySelector('.debrief-room')?.getBoundingClientRect();
      return stage?.zoom(order.factor, (room?.width ?? 0) / 2, (room?.height ?? 0) / 2);
    }
    case 'frame':
      return stage?.fit(order.framing);
    case 'focus':
      return focusOn(order.on, setTab);
    case 'help':
      return onHelp();
  }
}

const FOCUS = { follow: '#follow-choice', timeline: '.timeline', whatIf: '.what-if input:checked' } as const;

function focusOn(what: keyof typeof FOCUS, setTab: (tab: PanelTab) => void): void {
  if (what === 'whatIf') setTab('break');
  requestAnimationFrame(() => document.querySelector<HTMLElement>(FOCUS[what])?.focus());
}
