import type { NextHold } from '../procedure/nextHold.ts';
import { gownHoldPlace, type Place } from './gown/gownHoldPlaces.ts';
import { freeThing, workPlace } from './holdPlaces.ts';
import type { RoomPicture } from './picture.ts';

/** A hold that comes next, with its place in the room. */
export interface PlacedHold extends Place {
  readonly hold: NextHold;
}

/** Places of the holds in a picture. What is done already (a thing that was to be taken is in a hand), cannot be done yet (it is not) or is nowhere to be seen is left out. */
export const placeHolds = (picture: RoomPicture, holds: readonly NextHold[]): PlacedHold[] =>
  holds.flatMap((hold) => {
    const place = placeOf(picture, hold);
    return place ? [{ hold, ...place }] : [];
  });

function placeOf(picture: RoomPicture, { act, place, of, thing }: NextHold): Place | null {
  const held = thing && picture.items.find((item) => item.kind === thing && item.heldBy !== null && !item.gone);
  if (thing && (act === 'grip') === Boolean(held)) return null;
  switch (place) {
    case 'lying': {
      const free = thing && freeThing(picture, thing);
      return free ? { at: [free.x, free.y], to: null } : null;
    }
    case 'inHand':
      return held ? { at: [held.x, held.y], to: null } : null;
    case 'site': case 'bin': case 'mouthEdge': case 'mouth': case 'probeInside': case 'openEnd': case 'probeFace': case 'behindHead': case 'alongHandle':
      return workPlace(picture, place);
    default:
      return gownHoldPlace(picture, place, of);
  }
}
