import type { PlacedHold } from '../../../core/room/placedHold.ts';
import type { Frame } from '../frame.ts';
import { INK } from '../palette.ts';

/** Radii of the signs, of the dot between fingers, and how wide the arcs open (CSS pixels, radians). */
const RADIUS_PX = 13;
const RING_PX = 17;
/** What is drawn beside a sign keeps so far from its middle (CSS pixels). */
export const HOLD_CLEAR_PX = 20;
const DOT_PX = 2.6;
const ARC_HALF = 0.95;
const LINE_PX = 2;
const CASING_PX = 5;
const CASING = '#FFFFFF';
/** Dots of a way, and its end. */
const WAY_GAP_PX = 7;
const END_HALF_PX = 8;
/** Signs nearer to each other than this are one (m). */
const SAME_M = 0.005;

interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** Where hands grip, go and wait next, over everything else: two arcs that close on a dot for a grip, a ring for a place, dots for a way. */
export function paintHolds({ holds, camera, pen }: Frame): void {
  const { ctx, density } = pen;
  ctx.save();
  ctx.scale(density, density);
  ctx.lineCap = 'round';
  const apart = holds.filter(({ hold, at }, k) => !holds.slice(0, k).some((other) => isRing(other) === isRing({ hold }) && Math.hypot(other.at[0] - at[0], other.at[1] - at[1]) < SAME_M));
  // All casings first, so that none lies over the line of another.
  for (const casing of [true, false]) {
    ctx.strokeStyle = ctx.fillStyle = casing ? CASING : INK;
    ctx.lineWidth = casing ? CASING_PX : LINE_PX;
    for (const placed of apart) {
      const at = camera.roomToScreen(...placed.at);
      if (placed.to) drawWay(ctx, at, camera.roomToScreen(...placed.to), casing);
      if (isRing(placed)) drawRing(ctx, at);
      else drawGrip(ctx, at, casing);
    }
  }
  ctx.restore();
}

const isRing = ({ hold: { act } }: Pick<PlacedHold, 'hold'>): boolean => act === 'bring' || act === 'stay' || act === 'push';

function drawGrip(ctx: CanvasRenderingContext2D, { x, y }: ScreenPoint, casing: boolean): void {
  for (const turn of [0, Math.PI]) {
    ctx.beginPath();
    ctx.arc(x, y, RADIUS_PX, turn - ARC_HALF, turn + ARC_HALF);
    ctx.stroke();
  }
  ctx.beginPath();
  ctx.arc(x, y, casing ? DOT_PX + (CASING_PX - LINE_PX) / 2 : DOT_PX, 0, 2 * Math.PI);
  ctx.fill();
}

function drawRing(ctx: CanvasRenderingContext2D, { x, y }: ScreenPoint): void {
  ctx.beginPath();
  ctx.arc(x, y, RING_PX, 0, 2 * Math.PI);
  ctx.stroke();
}

/** Dots from the sign to the end of the way, where two short lines meet. */
function drawWay(ctx: CanvasRenderingContext2D, from: ScreenPoint, to: ScreenPoint, casing: boolean): void {
  const far = Math.hypot(to.x - from.x, to.y - from.y);
  const clear = RADIUS_PX + WAY_GAP_PX;
  if (far < clear + END_HALF_PX) return;
  const [dx, dy] = [(to.x - from.x) / far, (to.y - from.y) / far];
  const radius = casing ? LINE_PX / 2 + 0.6 + (CASING_PX - LINE_PX) / 2 : LINE_PX / 2 + 0.6;
  for (let d = clear; d < far - 3; d += WAY_GAP_PX) {
    ctx.beginPath();
    ctx.arc(from.x + dx * d, from.y + dy * d, radius, 0, 2 * Math.PI);
    ctx.fill();
  }
  ctx.beginPath();
  ctx.moveTo(to.x - (dx - dy) * END_HALF_PX, to.y - (dy + dx) * END_HALF_PX);
  ctx.lineTo(to.x, to.y);
  ctx.lineTo(to.x - (dx + dy) * END_HALF_PX, to.y - (dy - dx) * END_HALF_PX);
  ctx.stroke();
}
