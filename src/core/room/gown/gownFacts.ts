import type { Side } from '../../base/side.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { HAND } from '../handShape.ts';
import type { Scene } from '../scene.ts';

/** Links of each side of the hanging gown, from shoulder to hem. */
export const GOWN_LINKS = 38;
/** Links of the empty part of a sleeve, however long that is. */
export const SLEEVE_LINKS = 10;
/** Less than this beyond the fingertips is a fold of the cuff over the hand and does not hang (m). */
export const FOLD_M = 0.06;
/** Links at the top that are the inside of neck and shoulder. */
export const INSIDE_LINKS = 4;
/** Half of the neck of the folded gown, by which it may be taken, to either side of its middle (m); common practice. */
export const NECK_HALF_M = 0.06;
/** How far from the fingertips the armhole is when a hand has just slipped in (m). */
export const SLIPPED_IN_M = 0.1;
/** The armhole lies this far from the point of the shoulder when the gown is on (m). */
const ARMHOLE_M = 0.04;
/** Fingers to wrist along the hand (m). */
export const HAND_ALONG_M = HAND.gripU - HAND.wristU;
/** Length of glove into which the hand goes before it is on, and how much of the hand there is (m): the heel stays in the knit cuff. */
export const HAND_IN_GLOVE_M = 0.16;
export const GLOVE_ON_M = 0.14;
/** The glove is over the end of the sleeve from here on, and no farther up than its fingers allow (m). */
export const OVER_END_M = 0.03;
export const FINGERS_LEFT_M = 0.1;
/** A bare hand that is so far out of its cuff has its fingers and half its palm free (m). */
export const OUT_OF_CUFF_M = 0.1;
/** Width of the turned-back cuff of a glove: its outer face is the inside of the glove, by which bare fingers may take it (m); common practice. */
export const TURNED_BACK_M = 0.06;
/** Share of the reach and of the grip of bare fingers that is left through a sleeve; no measured values found, common practice. */
export const THROUGH_CLOTH = { reach: 0.7, grip: 0.6 } as const;
/** Metres in an inch: glove sizes are inches of palm girth. */
const INCH_M = 0.0254;

/** Length of the whole arm, fingertips to shoulder (m). */
export const armLengthM = ({ operator }: Scenario): number => HAND_ALONG_M + operator.forearmM + operator.upperArmM;

/** How much of the arm is in the sleeve once the gown sits on the shoulder (m). */
export const onShoulderM = (scenario: Scenario): number => armLengthM(scenario) - ARMHOLE_M;

/** Length of sleeve that no arm is in and that hangs (m): from the shoulder of the open gown, or beyond the fingertips. */
export function sleeveLeftM({ dress, scenario }: Scene, side: Side): number {
  const left = scenario.gown.sleeveM - dress!.arms[side].inM;
  return dress!.hanging && left > FOLD_M ? left : 0;
}

/** Strain of a glove of that size over the operator's palm: 0.1 is stretched by a tenth, negative is loose. */
export const gloveStrain = (size: number, palmGirthM: number): number => palmGirthM / (size * INCH_M) - 1;

/** Strain that a glove takes however it is pulled, and that it takes not at all. */
const EASY_STRAIN = 0.03;
const MOST_STRAIN = 0.2;
/** Speed at which a glove that fits may be drawn over (m/s). */
const FITTING_MPS = 0.6;

/** Strain below which the empty fingertips of a glove are in the way, and what they leave of reach and grip; no measured values found, common practice. */
const LOOSE_STRAIN = -0.08;
export const IN_LOOSE_GLOVE = { reach: 0.8, grip: 0.7 } as const;

/** The glove is so large that its fingertips are empty. */
export const isLoose = (strain: number): boolean => strain < LOOSE_STRAIN;

/** Speed of drawing above which a glove tears (m/s): the more it is stretched already the sooner. The line between is our own. */
export function tearingMps(strain: number): number {
  if (strain <= EASY_STRAIN) return Infinity;
  return Math.max(0, FITTING_MPS * (1 - strain / MOST_STRAIN));
}
