import type { Side } from '../base/side.ts';
import type { ItemKind } from '../scenario/schema.ts';

/**
 * What a hand does at a hold: closes there; squeezes there what it has, or slips in; brings what it has, or itself, there; draws what it
 * grips along from there; pushes itself along from there, open; is kept there.
 */
export type HoldAct = 'grip' | 'squeeze' | 'bring' | 'draw' | 'push' | 'stay';

/** Places where hands gown and glove themselves; what belongs to one arm belongs to the arm of `NextHold.of`. */
export type GownPlace = 'gownNeck' | 'clearOfTable' | 'gownShoulder' | 'sleeve' | 'upSleeve' | 'cuffFromInside' | 'gloveCuff' | 'fingertips' | 'gloveEdge' | 'intoGlove' | 'gloveMouth' | 'cardHalf' | 'heldOut' | 'together';

/** Places of the sheath, from the folded one on to the bands round it. */
export type SheathPlace = 'mouthEdge' | 'mouth' | 'probeInside' | 'openEnd' | 'probeFace' | 'behindHead' | 'alongHandle';

/** Places on the field and beside it. */
export type FieldPlace = 'site' | 'bin';

/** A thing that is to be taken or used: an item, or probe and sheath, which are none. */
export type ThingToHold = ItemKind | 'probe' | 'sheathRoll';

/** The next thing that a hand does, and where. Plain data. */
export interface NextHold {
  /** Null when it may be either hand. */
  readonly hand: Side | null;
  readonly act: HoldAct;
  /** `lying` is where the thing lies that is to be gripped, `inHand` where the hand is that has it. */
  readonly place: GownPlace | SheathPlace | FieldPlace | 'lying' | 'inHand';
  /** The arm, sleeve or glove that the place belongs to; null for places that belong to none. */
  readonly of: Side | null;
  /** Thing that is gripped here, and so lies free, or else that a hand must have to do this; null where that is not asked. */
  readonly thing: ThingToHold | null;
}

/** To take a thing that lies somewhere, with either hand. */
export const taking = (thing: ThingToHold): NextHold => ({ hand: null, act: 'grip', place: 'lying', of: null, thing });

/** To do something at a place with a thing in hand. */
export const withThing = (thing: ThingToHold, act: HoldAct, place: NextHold['place']): NextHold => ({ hand: null, act, place, of: null, thing });
