import type { ItemPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';

/** How far the drawing of each kind reaches from its middle, along its axis and across it, in metres. */
export const ITEM_REACH_M: Readonly<Record<ItemPicture['kind'], { readonly along: number; readonly across: number }>> = {
  probe: { along: 0.12, across: 0.035 },
  gelPacket: { along: 0.045, across: 0.02 },
  syringe: { along: 0.12, across: 0.02 },
  needleSyringe: { along: 0.12, across: 0.02 },
  gauze: { along: 0.04, across: 0.02 },
  band: { along: 0.018, across: 0.01 },
  gelBottle: { along: 0.085, across: 0.032 },
  gownPacket: { along: 0.16, across: 0.06 },
  glove: { along: 0.15, across: 0.05 },
  tieCard: { along: 0.06, across: 0.02 },
  sheathRoll: { along: 0.075, across: 0.02 },
};

/** All that the looks of a thing depend on but its place: how full it is, what covers it, its marks. */
export function itemLookKey({ used, dress, surfaces }: ItemPicture, markOf: MarkOf): string {
  const film = dress === null ? 'bare' : `${dress.bands.map(tenths).join(' ')}/${dress.bubbles.map(({ at, lengthM }) => `${tenths(at)}:${tenths(lengthM)}`).join(' ')}/${dress.torn}`;
  return [used.toFixed(2), film, ...surfaces.map(markOf)].join();
}

/** Metres in steps of a tenth of a millimetre: smaller movements are not seen. */
const tenths = (metres: number): number => Math.round(metres * 10_000);
