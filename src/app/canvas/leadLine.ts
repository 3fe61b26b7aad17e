import { QUIET_INK } from './palette.ts';

/** Nearer than this (CSS pixels) the hand counts as under the pointer. */
const TOGETHER_PX = 44;
const DOT_PX = 2;

interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** A thin dotted line from the pointer to the hand that it leads, while the hand is not yet under it. Both ends in CSS pixels. */
export function paintLeadLine(ctx: CanvasRenderingContext2D, density: number, pointer: ScreenPoint, hand: ScreenPoint): void {
  const dx = hand.x - pointer.x;
  const dy = hand.y - pointer.y;
  const far = Math.hypot(dx, dy);
  const length = far - TOGETHER_PX / 2;
  if (length < TOGETHER_PX / 2) return;
  ctx.beginPath();
  ctx.moveTo(pointer.x * density, pointer.y * density);
  ctx.lineTo((pointer.x + (dx / far) * length) * density, (pointer.y + (dy / far) * length) * density);
  ctx.strokeStyle = QUIET_INK;
  ctx.globalAlpha = 0.7;
  ctx.lineWidth = DOT_PX * density;
  ctx.lineCap = 'round';
  ctx.setLineDash([0, 2 * DOT_PX * density]);
  ctx.stroke();
  ctx.setLineDash([]);
  ctx.globalAlpha = 1;
}
