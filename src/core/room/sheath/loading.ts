import type { Scenario } from '../../scenario/schema.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import { headShape, type HeadShape } from './headShape.ts';

/** Film that the probe itself takes up, from its face to the beginning of the cord (m). */
export const PROBE_FILM_M = 2 * THING_SHAPES.probe.halfLength;
/** How deep the opened end of a folded sheath hangs before its folds (m): a little more than the probe; common practice. */
export const POCKET_M = 0.2;
/** Links of the opened sheath, half of them on either wall. */
export const POCKET_LINKS = 32;
/** Width of the fold that is turned back over the fingers at the mouth (m); common practice. */
export const FOLD_M = 0.035;
/** Cord next to the outlet that no sheath is drawn over (m). */
const OUTLET_M = 0.3;

/** Length of cord that the sheath could cover (m): what the probe leaves of it. */
export const coverableM = ({ sheath, cord }: Scenario): number => Math.min(sheath.lengthM - PROBE_FILM_M, cord.lengthM - OUTLET_M);

/** Links of the cord that the sheath could cover. */
export const filmLinks = (scenario: Scenario): number => Math.ceil(coverableM(scenario) / scenario.cord.linkM - 1e-9);

/** Depth to which a sheath hangs when opened with so much of it gathered (m). */
export const openDepthM = ({ sheath }: Scenario, gatheredM: number): number => Math.max(POCKET_M, sheath.lengthM - gatheredM);

/** Length that must be gathered so that no more than the end hangs open (m). */
export const toGatherM = ({ sheath }: Scenario): number => sheath.lengthM - POCKET_M;

/** Stretch of film at that distance from the closed end of the opened sheath: `probe`, or the link of the cord that it will lie on. */
export function stretchAt(scenario: Scenario, fromEndM: number): 'probe' | number {
  if (fromEndM < PROBE_FILM_M) return 'probe';
  return Math.min(filmLinks(scenario) - 1, Math.floor((fromEndM - PROBE_FILM_M) / scenario.cord.linkM));
}

/** Shape of the scene's probe. */
export const probeHead = (scenario: Scenario): HeadShape =>
  headShape({ halfLengthM: THING_SHAPES.probe.halfLength, halfWidthM: THING_SHAPES.probe.halfHeight, cordRadiusM: scenario.cord.radiusM });
