/** A press shorter than this, that hardly moved, is a click. */
const CLICK_MS = 260;
const CLICK_PX = 7;

export type GripChange = 'close' | 'open' | null;

/**
 * What a press of the button means for a hand. A click closes it and it stays closed, the next click opens it; press, drag and
 * let go holds only while dragging. Changing hands in between forgets the press, so a hand never lets go by being left.
 */
export class PressGrip {
  private press: { readonly wasClosed: boolean; readonly atMs: number; movedPx: number } | null = null;

  down(closed: boolean, atMs: number): GripChange {
    this.press = { wasClosed: closed, atMs, movedPx: 0 };
    return closed ? null : 'close';
  }

  moved(px: number): void {
    if (this.press) this.press.movedPx += px;
  }

  up(atMs: number): GripChange {
    const press = this.press;
    this.press = null;
    if (!press) return null;
    const click = atMs - press.atMs < CLICK_MS && press.movedPx < CLICK_PX;
    return click && !press.wasClosed ? null : 'open';
  }

  forget(): void {
    this.press = null;
  }
}
