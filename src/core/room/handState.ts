import type { Scenario } from '../scenario/schema.ts';
import { handStart } from './scene.ts';
import type { Side } from '../base/side.ts';

/**
 * What a hand holds: an item or the probe by its place in the scene's list, or one node of a strand. `settled` says how far the
 * fingers have brought a thing from the way they took it (`from`) into the way they hold it, 0 to 1; `pullN` is what pulls at the
 * grip in newtons, averaged over about 0.1 s. `rim`: an edge of the opened sheath's mouth, or both; `film`: its open end on the cord; `gown`: a shoulder of the
 * open gown; `gloveCuff`: the edge of the glove's cuff on the other hand.
 */
export type Hold =
  | { readonly kind: 'thing'; readonly thing: number; readonly joint: number; pullN: number; settled: number; readonly from: { readonly x: number; readonly y: number; readonly c: number; readonly s: number } }
  | { readonly kind: 'node'; readonly strand: 'drape.left' | 'drape.right' | 'cord'; readonly node: number; pullN: number }
  | { readonly kind: 'rim'; pullN: number }
  | { readonly kind: 'gown'; pullN: number }
  | { readonly kind: 'gloveCuff'; pullN: number }
  | { readonly kind: 'film'; pullN: number };

/** All that a hand carries from step to step besides its body. Plain data. */
export interface HandState {
  side: Side;
  /** Where the person wants the palm, in metres. */
  wishX: number;
  wishY: number;
  /** Wanted angle of the fingers above the horizontal, in radians. */
  wishAngle: number;
  /** Where the driven target is now: it follows the wish at the hand's highest speed. */
  targetX: number;
  targetY: number;
  targetVx: number;
  targetVy: number;
  targetAngle: number;
  closed: boolean;
  using: boolean;
  hold: Hold | null;
  /** Empty, and carried close to the body while the operator stands aside: behind the plane of bed and field, where it touches nothing. */
  tucked: boolean;
  /** Force of its drive in the last step, in newtons. */
  driveN: number;
  /** Length of its way so far in metres. */
  pathM: number;
}

/** Resting angle of the fingers, in radians below the horizontal. */
export const REST_ANGLE = -0.35;

export function restingHand(scenario: Scenario, side: Side): HandState {
  const [x, y] = handStart(scenario, side);
  return {
    side, wishX: x, wishY: y, wishAngle: REST_ANGLE, targetX: x, targetY: y, targetVx: 0, targetVy: 0, targetAngle: REST_ANGLE,
    closed: false, using: false, tucked: false, hold: null, driveN: 0, pathM: 0,
  };
}

/** A copy that shares nothing with the hand. */
export const copyHand = (hand: HandState): HandState => ({ ...hand, hold: hand.hold && { ...hand.hold } });
