import type { NextHold } from '../procedure/nextHold.ts';
import { gownHoldPlace, type Place } from './gown/gownHoldPlaces.ts';
import type { RoomPicture } from './picture.ts';

/** A hold that comes next, with its place in the room. */
export interface PlacedHold extends Place {
  readonly hold: NextHold;
}

/** Places of the holds in a picture; what is nowhere to be seen is left out. */
export const placeHolds = (picture: RoomPicture, holds: readonly NextHold[]): PlacedHold[] =>
  holds.flatMap((hold) => {
    const place = gownHoldPlace(picture, hold.place, hold.of);
    return place ? [{ hold, ...place }] : [];
  });
