import type { Scenario } from '../../scenario/schema.ts';

/** Front of a leg in trousers before the middle of the body, and how far the legs go up to under the waist (m); common practice. */
const LEG_R = 0.09;
const HIP_BELOW_WAIST_M = 0.1;

/** An upright capsule of the body as it is seen from the operator's side: `low` and `high` are the heights of its round ends (m). */
export interface BodyPart {
  readonly low: number;
  readonly high: number;
  readonly r: number;
}

/** Trunk and legs of the operator in their clothes, seen from the side; the shoulders are in the middle of the chest's depth (common practice). */
export function wearerProfile({ operator }: Pick<Scenario, 'operator'>): readonly BodyPart[] {
  const hips = operator.waistM - HIP_BELOW_WAIST_M;
  const chestR = operator.chestDepthM / 2;
  return [{ low: hips, high: operator.shoulderM - chestR, r: chestR }, { low: LEG_R, high: hips, r: LEG_R }];
}
