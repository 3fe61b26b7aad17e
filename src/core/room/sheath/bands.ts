import { PI } from '../../base/portableMath.ts';
import { arcFromAlong } from './fromFace.ts';
import { gelLayer } from './gelFlow.ts';
import { GEL } from './gelRheology.ts';
import { faceAreaM2, girthM, sectionAt, type HeadShape } from './headShape.ts';
import type { Band, SheathInside } from './inside.ts';

/**
 * An elastic band of natural rubber as it comes with a sheath: length round at rest and section, from memory; shear modulus 0.4 MPa
 * (Treloar 1944 for vulcanised rubber: 0.39 MPa, from memory).
 */
export const BAND = { restM: 0.08, sectionM2: 3e-6, shearPa: 4e5 } as const;
/** Stretch at which rubber of this kind breaks, about 6 (from memory); no band is wound tighter. */
const BREAKING_STRETCH = 6;
/** Stretch up to which hands wind a band until it holds. */
const SNUG_STRETCH = 1.3;
/** Nearer to the face (m) than this a band rolls off over the edge. */
const OFF_THE_EDGE_M = 0.004;
/** Friction of polyethylene film: on a dry housing 0.2 to 0.4, wet with gel 0.05 to 0.15 (from memory; no source found). */
const FRICTION = { dry: 0.3, wet: 0.1 } as const;

/** How far a band is stretched where it sits: turns share its length at rest. 1 and less is slack. */
export const stretchOf = ({ alongM, turns }: Band, head: HeadShape): number => (turns * girthM(sectionAt(head, alongM))) / BAND.restM;

/** Tension in each turn (N): G A (λ − 1 / λ²), rubber elasticity of a strip (Treloar, The Physics of Rubber Elasticity). */
export function tensionN(band: Band, head: HeadShape): number {
  const stretch = stretchOf(band, head);
  return stretch <= 1 ? 0 : BAND.shearPa * BAND.sectionM2 * (stretch - 1 / (stretch * stretch));
}

/** Turns that hands would wind there: the fewest that make the band snug. */
export const turnsFor = (alongM: number, head: HeadShape): number => Math.ceil((SNUG_STRETCH * BAND.restM) / girthM(sectionAt(head, alongM)));

export type BandPlace = 'head' | 'handle' | 'between';

/** Where a band sits: behind the face on the head, where the handle goes over into the cord, or neither. */
export function bandPlace({ alongM }: Band, { lengthM }: HeadShape): BandPlace {
  if (alongM > OFF_THE_EDGE_M && alongM <= 0.4 * lengthM) return 'head';
  return alongM >= 0.6 * lengthM && alongM <= 2 * lengthM ? 'handle' : 'between';
}

/** Whether tight bands are where they belong: one behind the face and one at the handle or the first of the cord (common practice). */
export const wellBanded = ({ bands }: SheathInside, head: HeadShape): boolean =>
  (['head', 'handle'] as const).every((place) => bands.some((band) => bandPlace(band, head) === place && tensionN(band, head) > 0));

/** Whether a band stays where it is put: it neither rolls off over the edge of the face nor breaks. */
export const staysOn = (band: Band, head: HeadShape): boolean => band.alongM >= OFF_THE_EDGE_M && stretchOf(band, head) <= BREAKING_STRETCH;

/**
 * Pull along the probe that film under one band withstands, in newtons: μ 2π T per turn. Round any convex section the tension turns by
 * 2π in all, so it presses with 2π T however wide the section is; film slides across the turns, so no belt law applies.
 */
export function bandHoldN(band: Band, inside: SheathInside, head: HeadShape): number {
  return frictionAt(band.alongM, inside, head) * 2 * PI * band.turns * tensionN(band, head);
}

/** Friction of film on the probe at that distance from the face (m): less where gel has crept. */
export const frictionAt = (alongM: number, inside: SheathInside, head: HeadShape): number => (gelLayer(inside, head).creepM >= alongM ? FRICTION.wet : FRICTION.dry);

/**
 * Pull (N) that the film withstands at `alongM` before it slides over the probe. Film pulls but does not push: toward the cord the
 * bands between there and the face hold it, toward the face those beyond. Besides, gel under the face has to yield: τy A.
 */
export function filmHold(inside: SheathInside, head: HeadShape, alongM: number, toward: 'face' | 'cord'): number {
  const taut = inside.bands.filter((band) => (toward === 'cord' ? band.alongM <= alongM : band.alongM >= alongM));
  return taut.reduce((sum, band) => sum + bandHoldN(band, inside, head), GEL.yieldPa * wetAreaM2(inside, head));
}

/** Area over which gel lies between film and probe, in square metres: what is wetted of the face, and of the flanks. */
export function wetAreaM2(inside: SheathInside, head: HeadShape): number {
  const { wetted, creepM } = gelLayer(inside, head);
  return wetted * faceAreaM2(head) + creepM * girthM(sectionAt(head, 0));
}

/** Arc coordinates past which no air gets, on both flanks in ascending order: those of tight bands. */
export function seals({ bands }: SheathInside, head: HeadShape): number[] {
  const arcs = bands.filter((band) => tensionN(band, head) > 0).map(({ alongM }) => arcFromAlong(head, alongM));
  return [...arcs.map((arc) => -arc), ...arcs].sort((a, b) => a - b);
}
