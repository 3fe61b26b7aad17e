import type { StagePoint } from './stagePort.ts';

/** Nearer than this (pixels) the hand counts as under the pointer. */
const TOGETHER_PX = 44;

/** A thin dotted line from the pointer to the hand that it leads, while the hand is not yet under it. */
export class LeadLine {
  private readonly line = document.createElement('div');

  constructor(room: HTMLElement) {
    this.line.className = 'lead-line';
    this.line.hidden = true;
    room.append(this.line);
  }

  /** Both ends in pixels of the room's element; no line without a pointer. */
  show(pointer: StagePoint | null, hand: StagePoint): void {
    const dx = pointer ? hand.x - pointer.x : 0;
    const dy = pointer ? hand.y - pointer.y : 0;
    const length = Math.hypot(dx, dy) - TOGETHER_PX / 2;
    this.line.hidden = pointer === null || length < TOGETHER_PX / 2;
    if (!pointer || this.line.hidden) return;
    this.line.style.width = `${length}px`;
    this.line.style.transform = `translate(${pointer.x}px, ${pointer.y}px) rotate(${Math.atan2(dy, dx)}rad)`;
  }

  remove(): void {
    this.line.remove();
  }
}
