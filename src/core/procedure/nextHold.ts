import type { Side } from '../base/side.ts';

/**
 * What a hand does at a hold: closes there; lets go of the folds that it carries, or slips in, there (squeeze); brings what it has,
 * or itself, there; draws what it grips along from there; pushes itself along from there, open; is kept there.
 */
export type HoldAct = 'grip' | 'squeeze' | 'bring' | 'draw' | 'push' | 'stay';

/** Places where hands gown and glove themselves; what belongs to one arm belongs to the arm of `NextHold.of`. */
export type GownPlace = 'gownNeck' | 'clearOfTable' | 'gownShoulder' | 'sleeve' | 'upSleeve' | 'cuffFromInside' | 'gloveCuff' | 'fingertips' | 'gloveEdge' | 'intoGlove' | 'cardHalf' | 'heldOut' | 'together';

/** The next thing that a hand does, and where. Plain data. */
export interface NextHold {
  /** Null when it may be either hand. */
  readonly hand: Side | null;
  readonly act: HoldAct;
  readonly place: GownPlace;
  /** The arm, sleeve or glove that the place belongs to; null for places that belong to none. */
  readonly of: Side | null;
}
