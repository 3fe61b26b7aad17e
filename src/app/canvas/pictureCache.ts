import { compose, shift } from './pen/affine.ts';
import type { Cells } from './cells.ts';
import { makeCanvas } from './makeCanvas.ts';
import type { Pen } from './pen/pen.ts';

/** Left, top, right, bottom in device pixels. */
export type PixelBox = readonly [number, number, number, number];

interface Kept {
  readonly ctx: CanvasRenderingContext2D;
  key: string;
  /** For how many frames the key has been the same. */
  age: number;
  drawn: boolean;
}

/** A drawing is kept once it has been the same for this many frames: keeping what changes all the time costs more than it saves. */
const KEEP_AFTER_FRAMES = 2;
/** Kept canvases grow in steps, because a new size is a new piece of memory. */
const STEP_PX = 64;

/**
 * Keeps drawings of things that often stay as they are from frame to frame: putting a kept drawing on the screen costs a small part
 * of drawing its outlines again.
 */
export class PictureCache {
  private readonly kept = new Map<string, Kept>();

  /**
   * Draws `name` at `at` (device pixels).
   * @param key all that its looks depend on, but not its place
   * @param box what it covers, seen from `at`
   * @param paint draws it with a pen whose frame is that of `pen`
   * @param cells where in the box there is something; the rest is not put on the screen
   */
  draw(pen: Pen, name: string, key: string, at: readonly [number, number], box: PixelBox, paint: (pen: Pen) => void, cells?: () => Cells): void {
    const [left, top] = [Math.floor(box[0]), Math.floor(box[1])];
    const [width, height] = [Math.ceil(box[2]) - left, Math.ceil(box[3]) - top];
    const [x, y] = [Math.round(at[0]) + left, Math.round(at[1]) + top];
    const screen = pen.ctx.canvas;
    if (width < 1 || height < 1 || x > screen.width || y > screen.height || x + width < 0 || y + height < 0) return;
    const kept = this.entry(name);
    const full = `${key} ${pen.density}`;
    if (kept.key === full) kept.age++;
    else Object.assign(kept, { key: full, age: 0, drawn: false });
    if (kept.age < KEEP_AFTER_FRAMES) { paint(pen); return; }
    if (!kept.drawn) {
      kept.drawn = true;
      clearFor(kept.ctx, width, height);
      paint(pen.onto(kept.ctx, compose(shift(-x, -y), pen.map)));
    }
    if (cells === undefined) pen.ctx.drawImage(kept.ctx.canvas, 0, 0, width, height, x, y, width, height);
    else cells().forEachRun((cx, cy, w, h) => copyPart(pen.ctx, kept.ctx.canvas, cx, cy, w, h, x, y));
  }

  private entry(name: string): Kept {
    let kept = this.kept.get(name);
    if (kept === undefined) this.kept.set(name, (kept = { ctx: makeCanvas().getContext('2d')!, key: '', age: 0, drawn: false }));
    return kept;
  }
}

function clearFor(ctx: CanvasRenderingContext2D, width: number, height: number): void {
  const [w, h] = [Math.ceil(width / STEP_PX) * STEP_PX, Math.ceil(height / STEP_PX) * STEP_PX];
  if (ctx.canvas.width !== w || ctx.canvas.height !== h) Object.assign(ctx.canvas, { width: w, height: h });
  else ctx.clearRect(0, 0, w, h);
  ctx.lineJoin = 'round';
}

/** Box around points of the pen's frame, in device pixels, widened by `margin` CSS pixels. */
export function boxAround(pen: Pen, points: Iterable<readonly [number, number]>, margin: number): PixelBox {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  const [a, b, c, d, e, f] = pen.map;
  for (const [u, v] of points) {
    const x = a * u + c * v + e;
    const y = b * u + d * v + f;
    x0 = Math.min(x0, x); x1 = Math.max(x1, x); y0 = Math.min(y0, y); y1 = Math.max(y1, y);
  }
  const m = margin * pen.density;
  return [x0 - m, y0 - m, x1 + m, y1 + m];
}

/** Copies a part of the screen from a canvas that lies at (x, y) on it. Device pixels. */
function copyPart(ctx: CanvasRenderingContext2D, from: HTMLCanvasElement, left: number, top: number, width: number, height: number, x: number, y: number): void {
  const x0 = Math.max(left, x, 0);
  const y0 = Math.max(top, y, 0);
  const w = Math.min(left + width, x + from.width, ctx.canvas.width) - x0;
  const h = Math.min(top + height, y + from.height, ctx.canvas.height) - y0;
  if (w > 0 && h > 0) ctx.drawImage(from, x0 - x, y0 - y, w, h, x0, y0, w, h);
}
