import type { SurfaceMark } from '../../../core/room/picture.ts';
import { makeCanvas } from '../makeCanvas.ts';
import { BREAK, BREAK_TINT, HATCH } from '../palette.ts';
import { applyTo } from './affine.ts';
import type { PathData } from './pathData.ts';
import type { Pen } from './pen.ts';

type Tile = 'fine' | 'bold';
const tiles = new Map<string, CanvasPattern>();

/**
 * Covers a shape with the pattern of its state. The tile keeps its size on the screen and travels with the point `anchor` of the
 * pen's frame, so that it does not crawl over a moving hand.
 */
export function paintMark(pen: Pen, path: PathData | string, mark: SurfaceMark, anchor: readonly [number, number] = [0, 0], alpha = 1): void {
  paintPattern(pen, path, mark, anchor, alpha);
  if (mark === 'became') pen.path(path, { line: BREAK });
}

/** The pattern alone, without the outline of what became unsterile. */
export function paintPattern(pen: Pen, path: PathData | string, mark: SurfaceMark, anchor: readonly [number, number] = [0, 0], alpha = 1): void {
  if (mark === 'sterile' || mark === 'prepared') return;
  pen.trace(path);
  const pattern = patternFor(mark === 'became' ? 'bold' : 'fine', pen.density);
  const [x, y] = applyTo(pen.map, anchor[0], anchor[1]);
  pattern.setTransform(new DOMMatrix([1, 0, 0, 1, Math.round(x), Math.round(y)]));
  pen.ctx.globalAlpha = alpha;
  pen.ctx.fillStyle = pattern;
  pen.ctx.fill();
  pen.ctx.globalAlpha = 1;
}

/** Tiles are drawn at 45 degrees, their side being the period along x, so that they stay sharp. */
function patternFor(tile: Tile, density: number): CanvasPattern {
  const key = `${tile} ${density}`;
  let pattern = tiles.get(key);
  if (pattern === undefined) tiles.set(key, (pattern = makeTile(tile, density)));
  return pattern;
}

function makeTile(tile: Tile, density: number): CanvasPattern {
  const side = Math.round((tile === 'fine' ? 7 : 11) * density);
  const canvas = makeCanvas();
  canvas.width = canvas.height = side;
  const ctx = canvas.getContext('2d')!;
  if (tile === 'bold') {
    ctx.fillStyle = `${BREAK_TINT}D1`;
    ctx.fillRect(0, 0, side, side);
  }
  ctx.strokeStyle = tile === 'fine' ? HATCH : BREAK;
  ctx.lineWidth = (tile === 'fine' ? 0.85 : 2.1) * density;
  slants(ctx, side, 1);
  if (tile === 'bold') slants(ctx, side, -1);
  return ctx.createPattern(canvas, 'repeat')!;
}

function slants(ctx: CanvasRenderingContext2D, side: number, way: 1 | -1): void {
  ctx.beginPath();
  for (const start of [-side, 0, side]) {
    ctx.moveTo(start - 2, way === 1 ? side + 2 : -2);
    ctx.lineTo(start + side + 2, way === 1 ? -2 : side + 2);
  }
  ctx.stroke();
}
