import { useRef } from 'preact/hooks';
import type { PlayHead } from '../PlayHead.ts';
import { markUnder, type LanePlan } from './lanePlan.ts';
import type { LaneMark } from './lanes.ts';

interface ScrubParts {
  readonly host: { readonly current: HTMLElement | null };
  readonly head: PlayHead;
  readonly plan: LanePlan;
  readonly toStep: (x: number) => number;
  readonly onMark: (mark: LaneMark) => void;
}

/** A press becomes a drag once it has moved so far, in CSS pixels. */
const DRAG_PX = 4;

/** Pointer on the timeline: a drag moves the instant, a tap on an event goes to that event, a tap beside goes to that time. */
export function useScrub({ host, head, plan, toStep, onMark }: ScrubParts) {
  const press = useRef<{ x: number; mark: LaneMark | null; dragging: boolean; played: boolean } | null>(null);
  const at = (event: PointerEvent): { x: number; y: number } => {
    const box = host.current!.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  return {
    onPointerDown: (event: PointerEvent): void => {
      if (event.button !== 0) return;
      const { x, y } = at(event);
      const mark = markUnder(plan, x, y);
      press.current = { x, mark, dragging: false, played: head.playing };
      host.current!.setPointerCapture(event.pointerId);
      if (mark === null) head.goTo(Math.round(toStep(x)));
    },
    onPointerMove: (event: PointerEvent): void => {
      const now = press.current;
      const { x, y } = at(event);
      if (now === null) {
        host.current!.classList.toggle('over-mark', markUnder(plan, x, y) !== null);
        return;
      }
      if (!now.dragging && Math.abs(x - now.x) < DRAG_PX) return;
      now.dragging = true;
      head.pause();
      head.goTo(Math.round(toStep(x)));
    },
    onPointerUp: (): void => {
      const now = press.current;
      press.current = null;
      if (now?.dragging && now.played && !head.playing) head.toggle();
      if (now && !now.dragging && now.mark) onMark(now.mark);
    },
    onPointerCancel: (): void => {
      press.current = null;
    },
  };
}
