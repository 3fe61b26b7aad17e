import type { Affine } from './pen/affine.ts';

/** What a camera sees at one instant; plain data, so that it can be sent to another thread. */
export interface LensData {
  /** Maps metres of the room to CSS pixels. */
  readonly toScreen: Affine;
  /** Size of the screen in CSS pixels. */
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Where things of the room lie on the screen at one instant. */
export class Lens implements LensData {
  readonly toScreen: Affine;
  readonly widthPx: number;
  readonly heightPx: number;

  constructor({ toScreen, widthPx, heightPx }: LensData) {
    this.toScreen = toScreen;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
  }

  /** CSS pixels per metre. */
  get pxPerM(): number { return this.toScreen[0]; }

  roomToScreen(x: number, y: number): { x: number; y: number } {
    const [a, , , d, e, f] = this.toScreen;
    return { x: a * x + e, y: d * y + f };
  }
}
