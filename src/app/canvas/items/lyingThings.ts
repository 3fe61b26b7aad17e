import type { ItemPicture } from '../../../core/room/picture.ts';
import type { Frame } from '../frame.ts';
import { applyTo } from '../pen/affine.ts';
import { boxAround } from '../pictureCache.ts';
import { ITEM_REACH_M, itemLookKey } from './itemLook.ts';
import { paintItem } from './paintItem.ts';

/** A bare probe hangs by its cord before the arms, and one in the opened sheath hangs there too; everything else lies on something. */
const hangs = (item: ItemPicture, { picture }: Frame): boolean => item.kind === 'probe' && (item.dress === null || picture.strands.some(({ id }) => id === 'pocket'));

/** Everything that no hand holds and that lies on something. */
export function paintLyingThings(frame: Frame): void {
  for (const item of frame.picture.items) if (item.heldBy === null && !item.gone && !hangs(item, frame)) paintFree(frame, item);
}

/** The probe while it hangs by its cord. */
export function paintHangingProbe(frame: Frame): void {
  for (const item of frame.picture.items) if (item.heldBy === null && !item.gone && hangs(item, frame)) paintFree(frame, item);
}

function paintFree({ pen, camera, markOf, cache }: Frame, item: ItemPicture): void {
  const key = [Math.round(item.c * 400), Math.round(item.s * 400), itemLookKey(item, markOf), camera.pxPerM].join();
  const { along, across } = ITEM_REACH_M[item.kind];
  const [w, h] = [Math.abs(item.c) * along + Math.abs(item.s) * across, Math.abs(item.s) * along + Math.abs(item.c) * across];
  const at = applyTo(pen.map, item.x, item.y);
  const box = boxAround(pen, [[item.x - w, item.y - h], [item.x + w, item.y + h]], 3);
  cache.draw(pen, item.id, key, at, [box[0] - at[0], box[1] - at[1], box[2] - at[0], box[3] - at[1]], (own) => paintItem(own, item, markOf));
}
