import { length } from '../../base/portableMath.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Scene } from '../scene.ts';

/** Place on the probe's axis nearest to (x, y), its distance from the face and how far off it is (m). */
export function onProbeAxis({ world, things }: Scene, x: number, y: number): { readonly point: readonly [number, number]; readonly alongM: number; readonly gap: number } {
  const { body } = things[0]!;
  const half = THING_SHAPES.probe.halfLength;
  const c = world.bodyC[body]!;
  const s = world.bodyS[body]!;
  const u = Math.min(half, Math.max(-half, (x - world.bodyX[body]!) * c + (y - world.bodyY[body]!) * s));
  const point = [world.bodyX[body]! + c * u, world.bodyY[body]! + s * u] as const;
  return { point, alongM: half - u, gap: length(point[0] - x, point[1] - y) };
}
