import { signOf, type Side } from '../../base/side.ts';
import type { GownPlace } from '../../procedure/nextHold.ts';
import { HAND } from '../handShape.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Point } from '../layout.ts';
import type { ItemPicture, RoomPicture } from '../picture.ts';
import { GLOVE_ON_M } from './gownFacts.ts';

/** A place in the room (m), with the end of the way that leads from it where a hold goes along one. */
export interface Place {
  readonly at: Point;
  readonly to: Point | null;
}

/** Heights and distances at which hands work in front of the body (m); common practice. */
const UNDER_FACE_M = 0.23;
const OVER_WAIST_M = 0.24;
/** Hands beside the shoulders, and stretched up over them (m). */
const BESIDE_BODY_M = 0.18;
const STRETCHED_M = 0.34;
/** Fingertips of a raised hand that holds a shoulder of the gown, from its palm toward the middle and up (m). */
const FINGERS_IN_M = 0.04;
const FINGERS_OVER_M = 0.07;
/** A hand goes into its glove in front of the body, from beside it nearly to the middle (m). */
const BESIDE_M = 0.2;
const MIDDLE_M = 0.04;
/** Hands that wait together (m from the middle of the body to the palm). */
const TOGETHER_M = 0.1;
/** A glove is taken this far from its middle, inside its cuff; the card by its own half (m). */
const GLOVE_CUFF_M = 0.1;
const CARD_HALF_M = 0.03;
/** How far beyond the knit cuff a glove is drawn up the sleeve (m). */
const OVER_KNIT_M = 0.07;

/** Where a place of gowning is now: at the fingertips for what is gripped or held out, else at the palm. Null while it is nowhere to be seen. */
export function gownHoldPlace(picture: RoomPicture, place: GownPlace, of: Side | null): Place | null {
  const { operator, gown } = picture.scenario;
  const workM = operator.waistM + OVER_WAIST_M;
  switch (place) {
    case 'gownNeck':
      return onThing(picture, 'gownPacket', (item) => [item.x, item.y + THING_SHAPES.gownPacket.halfHeight]);
    case 'clearOfTable':
      return still([gown.standXM, operator.faceM - UNDER_FACE_M]);
    case 'cardHalf':
      return onThing(picture, 'tieCard', (item) => along(item, -CARD_HALF_M));
    case 'heldOut':
      return still([picture.torsoX, workM]);
    default:
      return of && ofArm(picture, place, of, workM);
  }
}

function ofArm(picture: RoomPicture, place: GownPlace, of: Side, workM: number): Place | null {
  const { operator, gown: sizes } = picture.scenario;
  const hand = picture.hands[of];
  const arm = picture.gown?.arms[of];
  const beside = (metres: number): number => picture.torsoX + signOf(of) * metres;
  switch (place) {
    case 'sleeve':
      return still([beside(BESIDE_BODY_M - FINGERS_IN_M), operator.shoulderM + FINGERS_OVER_M]);
    case 'gownShoulder': {
      const edge = picture.strands.find(({ id }) => id === `gown.${of}`);
      return edge ? still([edge.x[0]!, edge.y[0]!]) : null;
    }
    case 'upSleeve':
      return { at: [beside(BESIDE_BODY_M), operator.shoulderM], to: [beside(BESIDE_BODY_M), operator.shoulderM + STRETCHED_M] };
    case 'cuffFromInside':
      return still(along(hand, HAND.gripU + Math.max(0, arm?.toCuffM ?? 0)));
    case 'gloveCuff':
      return onThing(picture, gloveOf(of), (item) => along(item, -GLOVE_CUFF_M));
    case 'gloveMouth':
      return onThing(picture, gloveOf(of), (item) => along(item, -THING_SHAPES.glove.halfLength), (item) => along(item, GLOVE_ON_M - THING_SHAPES.glove.halfLength));
    case 'fingertips':
      return still(along(hand, HAND.gripU));
    case 'gloveEdge':
      return { at: along(hand, HAND.gripU - (arm ? arm.advanceM + arm.overlapM : 0)), to: along(hand, HAND.gripU - sizes.knitM - OVER_KNIT_M) };
    case 'intoGlove':
      return { at: [beside(BESIDE_M), workM], to: [beside(MIDDLE_M), workM] };
    case 'together':
      return still([beside(TOGETHER_M), workM]);
    default:
      return null;
  }
}

const gloveOf = (side: Side): string => (side === 'left' ? 'gloveLeft' : 'gloveRight');

const still = (at: Point): Place => ({ at, to: null });

const along = ({ x, y, c, s }: { readonly x: number; readonly y: number; readonly c: number; readonly s: number }, metres: number): Point => [x + c * metres, y + s * metres];

function onThing({ items }: RoomPicture, id: string, at: (item: ItemPicture) => Point, to: ((item: ItemPicture) => Point) | null = null): Place | null {
  const item = items.find((one) => one.id === id && !one.gone);
  return item ? { at: at(item), to: to && to(item) } : null;
}
