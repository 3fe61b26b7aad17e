import type { FieldPlace, SheathPlace, ThingToHold } from '../procedure/nextHold.ts';
import type { Place } from './gown/gownHoldPlaces.ts';
import { THING_SHAPES } from './itemShapes.ts';
import type { Point } from './layout.ts';
import type { ItemPicture, RoomPicture } from './picture.ts';

/** A thing lower than this has fallen (m). */
const FALLEN_M = 0.2;
/** Gel is squeezed this far over the site and over an open mouth (m). */
const OVER_SITE_M = 0.03;
const OVER_MOUTH_M = 0.06;
/** Bands sit so far from the face of the probe (m). */
const BEHIND_HEAD_M = 0.03;
const ALONG_HANDLE_M = 0.11;
/** How far along the cord the film is drawn in one go, and how far air is stroked from the face (m). */
const ONE_PULL_M = 0.15;
const STROKE_M = 0.07;
/** A thing goes into the bin from this far over its rim (m). */
const OVER_BIN_M = 0.1;

/** Where a thing of that kind can be taken up: the first that is neither held nor used up, thrown away or fallen. Null where there is none. */
export function freeThing({ items }: RoomPicture, kind: ThingToHold): ItemPicture | null {
  return items.find((item) => item.kind === kind && item.heldBy === null && !item.gone && item.used < 1 && item.y > FALLEN_M) ?? null;
}

/** Where a place of the sheath or of the field is now. Null while it is nowhere to be seen. */
export function workPlace(picture: RoomPicture, place: SheathPlace | FieldPlace): Place | null {
  const { bin } = picture.scenario.room;
  const probe = picture.items.find(({ kind }) => kind === 'probe');
  const onProbe = (metres: number): Place | null => (probe ? still(along(probe, THING_SHAPES.probe.halfLength - metres)) : null);
  switch (place) {
    case 'site':
      return siteOf(picture);
    case 'bin':
      return still([bin.xM, bin.rimM + OVER_BIN_M]);
    case 'mouthEdge': {
      const roll = picture.items.find(({ kind, gone }) => kind === 'sheathRoll' && !gone);
      return roll ? still(along(roll, THING_SHAPES.sheathRoll.halfLength)) : null;
    }
    case 'mouth':
      return mouthOf(picture);
    case 'openEnd':
      return openEndOf(picture);
    case 'probeInside':
      return onProbe(THING_SHAPES.probe.halfLength);
    case 'probeFace':
      return probe ? { at: along(probe, THING_SHAPES.probe.halfLength), to: along(probe, THING_SHAPES.probe.halfLength - STROKE_M) } : null;
    case 'behindHead':
      return onProbe(BEHIND_HEAD_M);
    default:
      return onProbe(ALONG_HANDLE_M);
  }
}

const still = (at: Point): Place => ({ at, to: null });

const along = ({ x, y, c, s }: ItemPicture, metres: number): Point => [x + c * metres, y + s * metres];

/** Over the site, where the skin of it is now. */
function siteOf({ skinX, skinY, scenario }: RoomPicture): Place | null {
  if (skinX.length === 0) return null;
  const wanted = scenario.room.patient.siteXM + (skinX[0]! + skinX[skinX.length - 1]!) / 2;
  let best = 0;
  for (let i = 1; i < skinX.length; i++) if (Math.abs(skinX[i]! - wanted) < Math.abs(skinX[best]! - wanted)) best = i;
  return still([skinX[best]!, skinY[best]! + OVER_SITE_M]);
}

/** Over the middle between the two edges of the open mouth. */
function mouthOf({ strands }: RoomPicture): Place | null {
  const pocket = strands.find(({ id }) => id === 'pocket');
  if (!pocket) return null;
  const last = pocket.x.length - 1;
  return still([(pocket.x[0]! + pocket.x[last]!) / 2, (pocket.y[0]! + pocket.y[last]!) / 2 + OVER_MOUTH_M]);
}

/** The end of the film on the cord, and where one pull brings it. */
function openEndOf({ strands, coveredM, scenario }: RoomPicture): Place | null {
  const cord = strands.find(({ id }) => id === 'cord');
  if (!cord) return null;
  const node = (metres: number): Point => {
    const k = Math.min(cord.x.length - 1, Math.round(metres / scenario.cord.linkM));
    return [cord.x[k]!, cord.y[k]!];
  };
  return { at: node(coveredM), to: node(coveredM + ONE_PULL_M) };
}
