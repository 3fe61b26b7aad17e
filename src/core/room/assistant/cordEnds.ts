import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';

/** Where the cord leaves the probe (m). */
export function tailOf({ world, cord }: Scene): { readonly x: number; readonly y: number } {
  const first = world.strandStart(cord);
  return { x: world.x[first]!, y: world.y[first]! };
}

/** Open end of the film on the cord, or where it would be (m). */
export const openEndOf = ({ world, cord, cover, scenario }: Scene): { readonly x: number; readonly y: number } => pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
