import { SIDES, type Side } from '../../base/side.ts';
import type { GloveState } from '../../procedure/observation.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { HAND_IN_GLOVE_M, onShoulderM, OUT_OF_CUFF_M } from './gownFacts.ts';
import { isOverBed, type Layout } from '../layout.ts';

/** One arm on its way into sleeve and glove. Lengths in metres. */
export interface ArmDress {
  /** Length of arm in the sleeve, from the fingertips to the armhole; 0 while it is not in. */
  inM: number;
  glove: GloveState;
  /** How far up the sleeve from its end the cuff of the glove was drawn. */
  drawnM: number;
  /** How far the hand has gone from the end of the sleeve into the glove. */
  advanceM: number;
}

/** How the operator is dressed, for whoever looks at outlines. Plain data. */
export interface Dress {
  readonly arms: Record<Side, ArmDress>;
  /** The gown hangs open in the room, from hands or arms. */
  hanging: boolean;
  tied: boolean;
  /** Where the operator goes back to when no hand is out of reach (m). */
  homeX: number;
  /** Somebody who passes by, or null. */
  personX: number | null;
}

const bareArm = (): ArmDress => ({ inM: 0, glove: 'lying', drawnM: 0, advanceM: 0 });

/** Undressed, at the place where gown and gloves are put on. */
export const undressed = (homeX: number): Dress => ({ arms: { left: bareArm(), right: bareArm() }, hanging: false, tied: false, homeX, personX: null });

/** Gowned and gloved from the start, in the middle of the bed. */
export function dressed(scenario: Scenario): Dress {
  const { sleeveM, gloveLengthM } = scenario.gown;
  const arm = (): ArmDress => ({ inM: Math.min(sleeveM, onShoulderM(scenario)), glove: 'on', drawnM: gloveLengthM - HAND_IN_GLOVE_M, advanceM: HAND_IN_GLOVE_M });
  return { arms: { left: arm(), right: arm() }, hanging: false, tied: true, homeX: 0, personX: null };
}

export const copyDress = (dress: Dress): Dress => ({ ...dress, arms: { left: { ...dress.arms.left }, right: { ...dress.arms.right } } });

/** Takes over another dress, in place. */
export function wearAs(dress: Dress, other: Dress): void {
  const { arms, ...rest } = other;
  Object.assign(dress, rest);
  for (const side of SIDES) Object.assign(dress.arms[side], arms[side]);
}

export const isGloved = ({ glove }: ArmDress): boolean => glove === 'over' || glove === 'on';

/** Gown tied and both gloves on. */
export const isDressed = ({ tied, arms }: Dress): boolean => tied && SIDES.every((side) => arms[side].glove === 'on');

/** The bare hand is out of its cuff, so far that a glove can be drawn on it by the open method. `sleeveM` is the length of the sleeve. */
export const isOut = (arm: ArmDress, sleeveM: number): boolean => arm.inM - sleeveM >= OUT_OF_CUFF_M && !isGloved(arm);

/** Once dressed the operator goes where the work is and stays there; at the bed that is its middle, as for one who begins there (m). */
export const placeOfWork = (layout: Layout, { homeX }: Dress, torsoX: number): number => (homeX === 0 || isOverBed(layout, torsoX) ? 0 : torsoX);

/** The hand is in a sleeve and in no glove: it feels through cloth. */
export const isSleeved = (arm: ArmDress, sleeveM: number): boolean => arm.inM > 0 && !isGloved(arm) && !isOut(arm, sleeveM);
