import { SIDES } from '../../../core/base/side.ts';
import { boxAround, type Box } from './boxes.ts';
import { onScreen, type RoomSight } from './RoomFrames.ts';

/** From the middle of the palm to the fingertips, and half the width of a hand, in metres. */
const FINGERS_M = 0.1;
const HAND_HALF_M = 0.05;
/** Half the width of what is kept free at the site, and its height above the skin, in metres. */
const SITE = { half: 0.035, above: 0.03, below: 0.01 };
const FACE = { halfWidth: 0.1, below: 0.14, above: 0.16 };

/** What words in the room must not cover: both hands with what they hold, the face, and the site. */
export function keepClear(sight: RoomSight): Box[] {
  const { picture } = sight;
  const hands = SIDES.map((side) => {
    const { wristX, wristY, x, y, c, s } = picture.hands[side];
    const held = picture.items.filter((item) => item.heldBy === side && !item.gone).map((item) => onScreen(sight, item.x, item.y));
    return boxAround([onScreen(sight, wristX, wristY), onScreen(sight, x + c * FINGERS_M, y + s * FINGERS_M), ...held], HAND_HALF_M * sight.pxPerM);
  });
  const { faceM } = picture.scenario.operator;
  const face = boxAround([onScreen(sight, picture.torsoX - FACE.halfWidth, faceM - FACE.below), onScreen(sight, picture.torsoX + FACE.halfWidth, faceM + FACE.above)]);
  const { skinX, skinY, scenario } = picture;
  const siteX = scenario.room.patient.siteXM + ((skinX[0] ?? 0) + (skinX.at(-1) ?? 0)) / 2;
  const top = skinY.reduce((highest, y, k) => (Math.abs(skinX[k]! - siteX) < SITE.half ? Math.max(highest, y) : highest), 0);
  const site = boxAround([onScreen(sight, siteX - SITE.half, top + SITE.above), onScreen(sight, siteX + SITE.half, top - SITE.below)]);
  return [...hands, face, site];
}
