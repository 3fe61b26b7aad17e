import type { Frame } from '../frame.ts';
import { makeCanvas } from '../makeCanvas.ts';
import { applyTo, lengthFactor, scaling, shift } from '../pen/affine.ts';
import { SCREEN_CM } from './machine.ts';
import { speckle } from './ultrasoundSpeckle.ts';
import { ultrasoundView, type UltrasoundView } from './ultrasoundView.ts';

/** Size of the picture in dots: about 2 mm of the screen each. */
const WIDE = 208;
const HIGH = 171;
/** A new picture is made at most this often. */
const PERIOD_MS = 90;

/** What the machine shows. The picture is made anew only when the view has changed. */
export class UltrasoundScreen {
  private readonly canvas = makeCanvas();
  private lastView = '';
  private lastMs = -Infinity;

  constructor() {
    this.canvas.width = WIDE;
    this.canvas.height = HIGH;
  }

  paint({ pen, picture, nowMs }: Frame): void {
    const cm = pen.in(scaling(0.01), shift(picture.scenario.room.machine.xM * 100, 0));
    const [left, top] = applyTo(cm.map, SCREEN_CM.x0, SCREEN_CM.y1);
    const [right, bottom] = applyTo(cm.map, SCREEN_CM.x1, SCREEN_CM.y0);
    const { ctx } = pen;
    if (left > ctx.canvas.width || right < 0 || top > ctx.canvas.height || bottom < 0) return;
    this.update(ultrasoundView(picture), nowMs);
    const inset = 0.4 * lengthFactor(cm.map);
    ctx.drawImage(this.canvas, left + inset, top + inset, right - left - 2 * inset, bottom - top - 2 * inset);
  }

  private update(view: UltrasoundView, nowMs: number): void {
    const { shadows, ...numbers } = view;
    const key = [...Object.values(numbers), ...shadows.flat()].map((value) => value.toFixed(2)).join(' ');
    if (key === this.lastView || nowMs - this.lastMs < PERIOD_MS) return;
    this.lastView = key;
    this.lastMs = nowMs;
    const ctx = this.canvas.getContext('2d')!;
    ctx.putImageData(speckle(view, WIDE, HIGH), 0, 0);
  }
}
