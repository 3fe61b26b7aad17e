import { useEffect } from 'preact/hooks';
import type { StagePort } from '../../run/stagePort.ts';

/** How much one notch of the wheel magnifies. */
const WHEEL_PER_PX = 0.0012;

/** Drag moves the room, wheel and two fingers magnify it. */
export function useRoomPointer(host: { readonly current: HTMLElement | null }, stage: StagePort | null): void {
  useEffect(() => {
    const element = host.current;
    if (!element || !stage) return;
    const held = new Map<number, { x: number; y: number }>();
    const at = (event: MouseEvent): { x: number; y: number } => {
      const box = element.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const down = (event: PointerEvent): void => {
      if (event.pointerType === 'mouse' && event.button !== 0 && event.button !== 1) return;
      element.setPointerCapture(event.pointerId);
      held.set(event.pointerId, at(event));
    };
    const move = (event: PointerEvent): void => {
      const before = held.get(event.pointerId);
      if (!before) return;
      const now = at(event);
      const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
      held.set(event.pointerId, now);
      if (!other) return stage.pan(now.x - before.x, now.y - before.y);
      const [far, wasFar] = [now, before].map(({ x, y }) => Math.hypot(x - other.x, y - other.y)) as [number, number];
      stage.pan((now.x - before.x) / 2, (now.y - before.y) / 2);
      if (wasFar > 0) stage.zoom(far / wasFar, (now.x + other.x) / 2, (now.y + other.y) / 2);
    };
    const up = (event: PointerEvent): void => void held.delete(event.pointerId);
    const wheel = (event: WheelEvent): void => {
      event.preventDefault();
      const { x, y } = at(event);
      stage.zoom(Math.exp(-event.deltaY * WHEEL_PER_PX), x, y);
    };
    element.addEventListener('pointerdown', down);
    element.addEventListener('pointermove', move);
    element.addEventListener('pointerup', up);
    element.addEventListener('pointercancel', up);
    element.addEventListener('wheel', wheel, { passive: false });
    return () => {
      element.removeEventListener('pointerdown', down);
      element.removeEventListener('pointermove', move);
      element.removeEventListener('pointerup', up);
      element.removeEventListener('pointercancel', up);
      element.removeEventListener('wheel', wheel);
    };
  }, [stage]);
}
