import type { Spot } from './boxes.ts';

/** Share of its length by which an arrow bows out. */
const BOW = 0.2;
const HEAD_PX = 11;
const HEAD_HALF_PX = 5.5;

/** An arrow as SVG paths: its shaft, and its head as a filled triangle. */
export interface Arrow {
  readonly shaft: string;
  readonly head: string;
}

const px = (value: number): string => value.toFixed(1);

/** A bowed arrow between two round markers of that radius, or null where they touch each other. */
export function arrowPath(from: Spot, to: Spot, radius: number): Arrow | null {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const far = Math.hypot(dx, dy);
  if (far < 2 * radius + HEAD_PX) return null;
  const middle = { x: from.x + dx / 2 - dy * BOW, y: from.y + dy / 2 + dx * BOW };
  const start = toward(from, middle, radius + 2);
  const tip = toward(to, middle, radius + 3);
  const neck = toward(tip, middle, HEAD_PX);
  const back = Math.hypot(tip.x - neck.x, tip.y - neck.y) || 1;
  const across = { x: (-(tip.y - neck.y) / back) * HEAD_HALF_PX, y: ((tip.x - neck.x) / back) * HEAD_HALF_PX };
  return {
    shaft: `M${px(start.x)} ${px(start.y)}Q${px(middle.x)} ${px(middle.y)} ${px(neck.x)} ${px(neck.y)}`,
    head: `M${px(tip.x)} ${px(tip.y)}L${px(neck.x + across.x)} ${px(neck.y + across.y)}L${px(neck.x - across.x)} ${px(neck.y - across.y)}Z`,
  };
}

function toward(from: Spot, to: Spot, by: number): Spot {
  const far = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  return { x: from.x + ((to.x - from.x) / far) * by, y: from.y + ((to.y - from.y) / far) * by };
}
