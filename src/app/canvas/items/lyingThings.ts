import type { Frame } from '../frame.ts';
import { applyTo } from '../pen/affine.ts';
import { boxAround } from '../pictureCache.ts';
import { paintItem } from './paintItem.ts';

/** No thing reaches further from its middle than this, in metres. */
const REACH_M = 0.12;

/** Everything that no hand holds. */
export function paintLyingThings(frame: Frame): void {
  const { picture, pen, camera, markOf } = frame;
  for (const item of picture.items) {
    if (item.heldBy !== null || item.gone) continue;
    const key = [Math.round(item.c * 400), Math.round(item.s * 400), item.used.toFixed(2), camera.pxPerM, ...item.surfaces.map(markOf)].join();
    const across = item.kind === 'probe' ? 0.035 : 0.02;
    const [w, h] = [Math.abs(item.c) * REACH_M + Math.abs(item.s) * across, Math.abs(item.s) * REACH_M + Math.abs(item.c) * across];
    const at = applyTo(pen.map, item.x, item.y);
    const box = boxAround(pen, [[item.x - w, item.y - h], [item.x + w, item.y + h]], 3);
    frame.cache.draw(pen, item.id, key, at, [box[0] - at[0], box[1] - at[1], box[2] - at[0], box[3] - at[1]], (own) => paintItem(own, item, markOf));
  }
}
