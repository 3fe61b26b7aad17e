import type { Scene } from '../scene.ts';

/** 1 where the inner side of the opened sheath is to the left of its way from the first node to the last, −1 where it is to the right. */
export function pocketTurn({ world, sheath }: Scene): 1 | -1 {
  const start = world.strandStart(sheath!.pocket);
  const count = world.strandSize(sheath!.pocket);
  let area = 0;
  for (let k = 0, before = count - 1; k < count; before = k++) area += world.x[start + before]! * world.y[start + k]! - world.x[start + k]! * world.y[start + before]!;
  return area >= 0 ? 1 : -1;
}
