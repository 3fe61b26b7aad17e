import { PI } from '../../base/portableMath.ts';

/** Half sizes of a cross-section of the probe, in metres: across the picture's plane and in depth. */
export interface Section {
  readonly halfWidthM: number;
  readonly halfDepthM: number;
}

interface Knot extends Section {
  readonly alongM: number;
}

/** A probe from its face to the cord. Sections are stadiums: rectangles with round ends, `halfDepthM` their radius. */
export interface HeadShape {
  readonly lengthM: number;
  /** From the face (0) to the beginning of the cord (`lengthM`); straight in between. */
  readonly knots: readonly Knot[];
}

/**
 * Parts of the length, of the half width, and of the half depth, of a linear probe: a head as wide as the footprint needs, a body, a
 * handle that narrows into the relief of the cord. Common practice for the form, from memory; the footprint comes to 38 by 18 mm with
 * the housing round it, typical being 38 by 6 to 10 mm for the lens alone and 20 to 30 mm for the depth of the body.
 */
const PROFILE = [
  [0, 0.95, 0.72],
  [0.2, 1, 1],
  [0.6, 1, 1],
  [0.85, 0.65, 0.8],
] as const;
/** Half depth of the body as part of its half width: 25 mm for 40 mm. */
const DEPTH_SHARE = 0.625;

/** The shape of a probe of that half length and half width with that radius of cord, in metres. */
export function headShape(sizes: { readonly halfLengthM: number; readonly halfWidthM: number; readonly cordRadiusM: number }): HeadShape {
  const { halfLengthM, halfWidthM, cordRadiusM } = sizes;
  const lengthM = 2 * halfLengthM;
  const body = PROFILE.map(([along, width, depth]) => ({ alongM: along * lengthM, halfWidthM: width * halfWidthM, halfDepthM: depth * DEPTH_SHARE * halfWidthM }));
  return { lengthM, knots: [...body, { alongM: lengthM, halfWidthM: cordRadiusM, halfDepthM: cordRadiusM }] };
}

/** Cross-section at that distance from the face along the axis (m); the cord's beyond the probe, the face's before it. */
export function sectionAt({ knots }: HeadShape, alongM: number): Section {
  const after = knots.findIndex((knot) => knot.alongM >= alongM);
  if (after < 0) return knots.at(-1)!;
  if (after === 0) return knots[0]!;
  const [a, b] = [knots[after - 1]!, knots[after]!];
  const part = (alongM - a.alongM) / (b.alongM - a.alongM);
  return { halfWidthM: a.halfWidthM + (b.halfWidthM - a.halfWidthM) * part, halfDepthM: a.halfDepthM + (b.halfDepthM - a.halfDepthM) * part };
}

/** Girth of a section, in metres: that of a stadium. */
export const girthM = ({ halfWidthM, halfDepthM }: Section): number => 4 * (halfWidthM - halfDepthM) + 2 * PI * halfDepthM;

/** Area of the face, in square metres: that of a stadium. */
export function faceAreaM2({ knots }: HeadShape): number {
  const { halfWidthM, halfDepthM } = knots[0]!;
  return 4 * (halfWidthM - halfDepthM) * halfDepthM + PI * halfDepthM * halfDepthM;
}

/** Where the footprint begins and ends, as arc coordinates in metres. */
export function footprint({ knots }: HeadShape): readonly [number, number] {
  return [-knots[0]!.halfWidthM, knots[0]!.halfWidthM];
}
