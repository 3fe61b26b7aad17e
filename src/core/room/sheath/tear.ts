import { girthM, sectionAt, type HeadShape } from './headShape.ts';
import type { SheathInside } from './inside.ts';

/** Strength of polyethylene film of low density (Pa): 8 to 20 MPa in tables of plastics, from memory. */
const STRENGTH_PA = 1e7;

/**
 * Pull that the film over the face carries when the probe is pushed at its closed end, in newtons: no more than what keeps the film from
 * going along, hands and bands together, and nothing where skin or a hand behind the film bears the push.
 */
export const faceLoadN = (pushN: number, heldN: number, borneOutsideN: number): number => Math.max(0, Math.min(pushN - borneOutsideN, heldN));

/** Load (N) at which film of that thickness (m) tears all round an upright face: strength × thickness × girth of the face, statics of a thin bag. */
export const bagStrengthN = (filmM: number, head: HeadShape): number => STRENGTH_PA * filmM * girthM(sectionAt(head, 0));

/** The film over the face tears for good once its load is above `tearN`, both in newtons; forces averaged over about 0.1 s. */
export const loadFace = (inside: SheathInside, loadN: number, tearN: number): SheathInside => (inside.torn || loadN <= tearN ? inside : { ...inside, torn: true });
