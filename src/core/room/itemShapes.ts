import type { ItemKind } from '../scenario/schema.ts';
import type { Point } from './layout.ts';

/** `sheathRoll` is the sheath and `gownPacket` the gown while they are folded. */
export type ThingKind = ItemKind | 'probe' | 'sheathRoll' | 'gownPacket' | 'glove' | 'tieCard';

/**
 * Size and handling of each kind of thing, in its own frame: the first axis runs to its working end, the middle is its centre of
 * mass. Metres and kilograms; sizes are typical of the trade (scenarios/README.md).
 */
export interface ThingShape {
  readonly halfLength: number;
  readonly halfHeight: number;
  readonly massKg: number;
  /** Needle beyond the working end, or 0. It does not push things; it is watched for touches. */
  readonly needleLength: number;
  /** Angle of the first axis in the hand that holds it, in radians, measured from the fingers toward the palm's lower side. */
  readonly holdAngle: number;
  /** Where in the hand its middle lies, from the middle of the palm toward the fingertips. */
  readonly holdAlong: number;
  readonly sharp: boolean;
}

export const THING_SHAPES: Readonly<Record<ThingKind, ThingShape>> = {
  probe: { halfLength: 0.062, halfHeight: 0.02, massKg: 0.15, needleLength: 0, holdAngle: 1.5707963, holdAlong: 0.062, sharp: false },
  gelPacket: { halfLength: 0.035, halfHeight: 0.007, massKg: 0.02, needleLength: 0, holdAngle: 1.1, holdAlong: 0.073, sharp: false },
  syringe: { halfLength: 0.045, halfHeight: 0.008, massKg: 0.015, needleLength: 0.03, holdAngle: 0.35, holdAlong: 0.05, sharp: true },
  needleSyringe: { halfLength: 0.045, halfHeight: 0.008, massKg: 0.018, needleLength: 0.06, holdAngle: 0.35, holdAlong: 0.05, sharp: true },
  band: { halfLength: 0.015, halfHeight: 0.004, massKg: 0.001, needleLength: 0, holdAngle: 0.6, holdAlong: 0.08, sharp: false },
  gelBottle: { halfLength: 0.08, halfHeight: 0.028, massKg: 0.25, needleLength: 0, holdAngle: 1.5707963, holdAlong: 0.06, sharp: false },
  sheathRoll: { halfLength: 0.07, halfHeight: 0.012, massKg: 0.03, needleLength: 0, holdAngle: 0, holdAlong: 0.085, sharp: false },
  gownPacket: { halfLength: 0.15, halfHeight: 0.03, massKg: 0.25, needleLength: 0, holdAngle: 0, holdAlong: 0.085, sharp: false },
  glove: { halfLength: 0.14, halfHeight: 0.008, massKg: 0.01, needleLength: 0, holdAngle: 0, holdAlong: 0.205, sharp: false },
  tieCard: { halfLength: 0.05, halfHeight: 0.006, massKg: 0.01, needleLength: 0, holdAngle: 0, holdAlong: 0.115, sharp: false },
  gauze: { halfLength: 0.03, halfHeight: 0.008, massKg: 0.005, needleLength: 0, holdAngle: 0.6, holdAlong: 0.073, sharp: false },
};

/** Corners of the solid part, counter-clockwise, without the rounding radius. */
export function thingCorners(shape: ThingShape, rounding: number): Point[] {
  const w = shape.halfLength - rounding;
  const h = shape.halfHeight - rounding;
  return [[-w, -h], [w, -h], [w, h], [-w, h]];
}
