import { otherSide, type Side } from '../../core/base/side.ts';
import type { RoomPicture } from '../../core/room/picture.ts';

/**
 * What to say to a hand that has closed on nothing or no longer holds what it held; null where that is plain to see.
 * @param held Id of what it held last, null when the fingers got nothing.
 */
export function emptyGripWords(side: Side, held: string | null, { hands, items, gown }: Pick<RoomPicture, 'hands' | 'items' | 'gown'>): string | null {
  if (held === null) return `Nothing within reach of the ${side} hand.`;
  if (hands[otherSide(side)].holds === held) return null;
  const item = items.find(({ id }) => id === held);
  if (item?.kind === 'band' && item.gone) return 'The band is on.';
  // The hand has slipped into its sleeve, the glove stays on it, the card is with the assistant.
  if (held === 'gown' && gown !== null && gown.arms[side].inM > 0) return null;
  if (item !== undefined && item.gone && (item.kind === 'glove' || item.kind === 'gownPacket' || item.kind === 'tieCard')) return null;
  return `The ${side} hand lost its hold.`;
}
