/**
 * What a sterile hand keeps clear of: every unsterile thing that it could touch. `edge` is the outer strip of the drape of that side,
 * over the rail or inside it, that does not count as sterile; `bareCord` includes the open end of the sheath.
 */
export const CLEARANCE_THINGS = [
  'rail.left', 'rail.right', 'edge.left', 'edge.right', 'bed', 'pole', 'machine', 'tableEdge', 'bin', 'floor', 'bareCord', 'patientSkin', 'face',
] as const;
export type ClearanceThing = (typeof CLEARANCE_THINGS)[number];
