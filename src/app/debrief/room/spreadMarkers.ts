import type { Spot } from './boxes.ts';

const ROUNDS = 60;

/** Moves markers apart until no two are nearer than `gap`, each as little as needed, so that all numbers can be read. */
export function spreadMarkers(places: readonly Spot[], gap: number): Spot[] {
  const spots = places.map(({ x, y }) => ({ x, y }));
  for (let round = 0; round < ROUNDS; round++) {
    let moved = false;
    for (let i = 0; i < spots.length; i++) for (let j = i + 1; j < spots.length; j++) moved = part(spots[i]!, spots[j]!, gap, j) || moved;
    if (!moved) break;
  }
  return spots;
}

function part(a: { x: number; y: number }, b: { x: number; y: number }, gap: number, seed: number): boolean {
  let dx = b.x - a.x;
  let dy = b.y - a.y;
  let far = Math.hypot(dx, dy);
  if (far >= gap) return false;
  if (far < 0.5) {
    // At the very same place: each goes its own way, the same each time.
    [dx, dy, far] = [Math.cos(seed * 2.4), Math.sin(seed * 2.4), 1];
    far = 1;
  }
  const by = (gap - Math.min(far, gap)) / 2 + 0.1;
  a.x -= (dx / far) * by;
  a.y -= (dy / far) * by;
  b.x += (dx / far) * by;
  b.y += (dy / far) * by;
  return true;
}
