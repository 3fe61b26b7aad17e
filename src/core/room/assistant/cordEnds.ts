import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';

/** Where the cord leaves the probe (m). */
export function tailOf({ world, cord }: Scene): { readonly x: number; readonly y: number } {
  const first = world.strandStart(cord);
  return { x: world.x[first]!, y: world.y[first]! };
}

/** Open end of the film on the cord, or where it would be (m). */
export const openEndOf = ({ world, cord, cover, scenario }: Scene): { readonly x: number; readonly y: number } => pointAt(world, cord, scenario.cord.linkM, cover.coveredM);

/** `far` metres from (x, y), rising as that share of it until a hand is `highest`, and outward (m). */
export function upFrom(way: 1 | -1, x: number, y: number, far: number, share: number, highest: number): readonly [number, number] {
  const up = Math.min(far * share, Math.max(0.05, highest - y));
  return [x + way * Math.sqrt(Math.max(0, far * far - up * up)), y + up];
}
