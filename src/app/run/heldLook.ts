import type { Side } from '../../core/base/side.ts';
import type { RoomPicture } from '../../core/room/picture.ts';

const mm = (metres: number): string => (metres * 1000).toFixed();

/** All on which the small drawing of a hand and of what it holds depends, apart from marks, as one text. */
export function heldLook({ hands, items }: Pick<RoomPicture, 'hands' | 'items'>, side: Side): string {
  const { pose, holds } = hands[side];
  const thing = items.find(({ heldBy }) => heldBy === side);
  const dress = thing?.dress && [...thing.dress.bands.map(mm), ...thing.dress.bubbles.map(({ at, lengthM }) => `${mm(at)}+${mm(lengthM)}`), thing.dress.torn];
  return [pose, holds, thing?.used.toFixed(1), dress?.join()].join(' ');
}
