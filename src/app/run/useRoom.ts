import { useState } from 'preact/hooks';
import type { Framing } from '../input/keyMap.ts';
import type { StagePort } from './stagePort.ts';

/** The drawn room as the page sees it: its stage once that stands, its focus, its view. */
export interface Room {
  readonly stage: StagePort | null;
  readonly hasFocus: boolean;
  setFocus(inRoom: boolean): void;
  ready(stage: StagePort, element: HTMLElement): void;
  focus(): void;
  /** Looks closer or wider at the middle. */
  zoom(factor: number): void;
  frame(framing: Framing): void;
}

interface Standing {
  readonly stage: StagePort;
  readonly element: HTMLElement;
}

export function useRoom(): Room {
  const [standing, setStanding] = useState<Standing | null>(null);
  const [hasFocus, setFocus] = useState(false);
  return {
    stage: standing?.stage ?? null,
    hasFocus,
    setFocus,
    ready: (stage, element) => setStanding({ stage, element }),
    focus: () => standing?.element.focus({ preventScroll: true }),
    zoom: (factor) => standing?.stage.zoom(factor, standing.element.clientWidth / 2, standing.element.clientHeight / 2),
    frame: (framing) => standing?.stage.fit(framing),
  };
}
