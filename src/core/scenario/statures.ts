import type { STATURES } from './gownSchema.ts';
import type { Scenario } from './schema.ts';

export type Stature = Exclude<(typeof STATURES)[number], 'given'>;

/** Lengths of a person in metres. */
export interface StatureRow {
  readonly statureM: number;
  readonly shoulderM: number;
  readonly chestM: number;
  readonly elbowM: number;
  readonly waistM: number;
  readonly upperArmM: number;
  readonly forearmM: number;
  readonly handM: number;
  readonly chestDepthM: number;
}

/**
 * A short and a mean woman, a mean and a tall man: ANSUR II (US Army 2012, public set), 5th percentile and mean of women, mean and 95th
 * percentile of men, each dimension by itself. Upper arm is acromion to elbow, forearm elbow to wrist; of the outer two persons these and
 * the hand, and the depth of the chest, are mean ∓ 1.645 standard deviations.
 */
export const STATURE_TABLE: Readonly<Record<Stature, StatureRow>> = {
  shortWoman: { statureM: 1.525, shoulderM: 1.242, chestM: 1.08, elbowM: 0.951, waistM: 0.9, upperArmM: 0.283, forearmM: 0.216, handM: 0.165, chestDepthM: 0.203 },
  woman: { statureM: 1.628, shoulderM: 1.335, chestM: 1.172, elbowM: 1.024, waistM: 0.98, upperArmM: 0.311, forearmM: 0.241, handM: 0.181, chestDepthM: 0.247 },
  man: { statureM: 1.756, shoulderM: 1.441, chestM: 1.291, elbowM: 1.105, waistM: 1.056, upperArmM: 0.335, forearmM: 0.268, handM: 0.193, chestDepthM: 0.254 },
  tallMan: { statureM: 1.87, shoulderM: 1.546, chestM: 1.387, elbowM: 1.19, waistM: 1.145, upperArmM: 0.373, forearmM: 0.293, handM: 0.209, chestDepthM: 0.297 },
};

/** Middle of the face below the top of the head (m), common practice. */
const FACE_BELOW_TOP_M = 0.12;

/** The scenario with the lengths of its operator filled in from the table. */
export function withStature<S extends Pick<Scenario, 'operator'>>(scenario: S): S {
  const { stature } = scenario.operator;
  if (stature === 'given') return scenario;
  const { statureM, shoulderM, waistM, upperArmM, forearmM, handM, chestDepthM } = STATURE_TABLE[stature];
  return { ...scenario, operator: { ...scenario.operator, shoulderM, waistM, upperArmM, forearmM, handM, chestDepthM, faceM: statureM - FACE_BELOW_TOP_M } };
}
