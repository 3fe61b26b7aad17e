import type { World } from '../../physics/world.ts';

/** Whether (x, y) is between the walls of an opened sheath, below the line across its mouth (even-odd rule). */
export function isInside(world: World, strand: number, x: number, y: number): boolean {
  const start = world.strandStart(strand);
  const count = world.strandSize(strand);
  let inside = false;
  for (let k = 0, before = count - 1; k < count; before = k++) {
    const [ax, ay, bx, by] = [world.x[start + k]!, world.y[start + k]!, world.x[start + before]!, world.y[start + before]!];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}
