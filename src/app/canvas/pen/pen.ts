import { applyTo, compose, lengthFactor, type Affine } from './affine.ts';
import { boxPath, ellipsePath } from './curves.ts';
import { lineWeights, type LineWeights } from './lineWeights.ts';
import { CLOSE, CUBIC, LINE, MOVE, parsePath, type PathData } from './pathData.ts';
import type { Fill, Shade } from './shade.ts';

/** How a shape is drawn. Widths and dashes in CSS pixels; a weight may be one of the classes contour k, detail d, crease h. */
export interface Stroke {
  readonly fill?: Fill;
  readonly line?: string;
  readonly weight?: 'k' | 'd' | 'h' | number;
  readonly alpha?: number;
  readonly fillAlpha?: number;
  readonly dash?: readonly number[];
  readonly butt?: boolean;
}

/** State shared by a pen and the pens made from it. */
interface Sheet {
  readonly ctx: CanvasRenderingContext2D;
  readonly weights: LineWeights;
  /** Device pixels per CSS pixel. */
  readonly density: number;
}

/**
 * Draws paths of any drawing frame on to a 2D canvas whose own transform is the identity. Points go through the pen's map here, so
 * that line widths stay in screen pixels whatever the map does.
 */
export class Pen {
  private readonly sheet: Sheet;
  readonly map: Affine;

  constructor(sheet: Sheet, map: Affine) {
    this.sheet = sheet;
    this.map = map;
  }

  /**
   * @param toScreen maps metres of the room to CSS pixels
   * @param density device pixels per CSS pixel
   */
  static over(ctx: CanvasRenderingContext2D, toScreen: Affine, density: number): Pen {
    ctx.lineJoin = 'round';
    const weights = lineWeights(lengthFactor(toScreen) / 100);
    return new Pen({ ctx, weights, density }, compose([density, 0, 0, density, 0, 0], toScreen));
  }

  get ctx(): CanvasRenderingContext2D { return this.sheet.ctx; }
  get weights(): LineWeights { return this.sheet.weights; }
  get density(): number { return this.sheet.density; }

  /** A pen for a drawing frame inside this one. */
  in(...frames: Affine[]): Pen {
    return new Pen(this.sheet, frames.reduce(compose, this.map));
  }

  /** A pen with the same weights on another canvas. */
  onto(ctx: CanvasRenderingContext2D, map: Affine): Pen {
    return new Pen({ ...this.sheet, ctx }, map);
  }

  /** The same frame with other line weights, for small pictures. */
  weighted(factor: number): Pen {
    const weights = Object.fromEntries(Object.entries(this.weights).map(([name, px]) => [name, px * factor])) as unknown as LineWeights;
    return new Pen({ ...this.sheet, weights }, this.map);
  }

  /** Makes the path the current one of the canvas and gives its box in device pixels. */
  trace(path: PathData | string): readonly [number, number, number, number] {
    const { ops, xy } = typeof path === 'string' ? parsePath(path) : path;
    const ctx = this.ctx;
    const [a, b, c, d, e, f] = this.map;
    let i = 0;
    let x0 = Infinity; let y0 = Infinity; let x1 = -Infinity; let y1 = -Infinity;
    const next = (): [number, number] => {
      const x = a * xy[i]! + c * xy[i + 1]! + e;
      const y = b * xy[i]! + d * xy[i + 1]! + f;
      i += 2;
      x0 = Math.min(x0, x); x1 = Math.max(x1, x); y0 = Math.min(y0, y); y1 = Math.max(y1, y);
      return [x, y];
    };
    ctx.beginPath();
    for (const op of ops) {
      if (op === CLOSE) { ctx.closePath(); continue; }
      const [x, y] = next();
      if (op === MOVE) ctx.moveTo(x, y);
      else if (op === LINE) ctx.lineTo(x, y);
      else {
        const [u, v] = next();
        if (op === CUBIC) { const [p, q] = next(); ctx.bezierCurveTo(x, y, u, v, p, q); } else ctx.quadraticCurveTo(x, y, u, v);
      }
    }
    return [x0, y0, x1, y1];
  }

  path(path: PathData | string, style: Stroke): void {
    const ctx = this.ctx;
    const box = this.trace(path);
    const alpha = style.alpha ?? 1;
    if (style.fill !== undefined) {
      ctx.globalAlpha = alpha * (style.fillAlpha ?? 1);
      ctx.fillStyle = typeof style.fill === 'string' ? style.fill : this.gradient(style.fill, box);
      ctx.fill();
    }
    if (style.line !== undefined) {
      ctx.globalAlpha = alpha;
      this.strokeCurrent(style);
    }
    ctx.globalAlpha = 1;
  }

  ellipse(x: number, y: number, rx: number, ry: number, style: Stroke): void { this.path(ellipsePath(x, y, rx, ry), style); }

  box(x0: number, y0: number, x1: number, y1: number, style: Stroke, radius = 0): void { this.path(boxPath(x0, y0, x1, y1, radius), style); }

  /** Draws inside the path only. */
  clipped(path: PathData, draw: () => void): void {
    this.ctx.save();
    this.trace(path);
    this.ctx.clip();
    draw();
    this.ctx.restore();
  }

  private strokeCurrent(style: Stroke): void {
    const ctx = this.ctx;
    const weight = style.weight ?? 'k';
    ctx.strokeStyle = style.line!;
    ctx.lineWidth = (typeof weight === 'number' ? weight : this.weights[weight]) * this.density;
    ctx.lineCap = style.butt ? 'butt' : 'round';
    if (style.dash === undefined) { ctx.stroke(); return; }
    ctx.setLineDash(style.dash.map((px) => px * this.density));
    ctx.stroke();
    ctx.setLineDash([]);
  }

  private gradient(shade: Shade, [x0, y0, x1, y1]: readonly [number, number, number, number]): CanvasGradient {
    let ends: readonly [number, number, number, number];
    if (shade.axis === 'down') ends = [0, y0, 0, y1];
    else if (shade.axis === 'across') ends = [x0, 0, x1, 0];
    else ends = [...applyTo(this.map, shade.axis[0], shade.axis[1]), ...applyTo(this.map, shade.axis[2], shade.axis[3])];
    const gradient = this.ctx.createLinearGradient(...ends);
    for (const [place, colour] of shade.stops) gradient.addColorStop(place, colour);
    return gradient;
  }
}
