import type { SurfaceKind } from '../surface.ts';

/** Kinds of surface that the rules speak of together. */
export const GLOVE: readonly SurfaceKind[] = ['glove'];
export const GOWN: readonly SurfaceKind[] = ['sleeve', 'gownFront'];
export const SHEATH: readonly SurfaceKind[] = ['sheath', 'probeSheath'];
export const ITEM: readonly SurfaceKind[] = ['item', 'needle'];
/** What lies still and carries the rest: drape, what covers it, the covered table. */
export const FIELD: readonly SurfaceKind[] = ['drapeTop', 'cover', 'kitTable'];
export const PREPARED: readonly SurfaceKind[] = ['preparedSkin', 'site'];
/** Fixed things of the room that nobody takes for sterile. */
export const FIXED: readonly SurfaceKind[] = ['rail', 'pole', 'machine', 'bed', 'floor', 'tableEdge', 'bin'];
/** Every kind that has to be sterile or prepared somewhere. */
export const KEPT: readonly SurfaceKind[] = [...GLOVE, ...GOWN, ...SHEATH, ...ITEM, ...FIELD, ...PREPARED];
/** Every kind that never is. */
export const NEVER_STERILE: readonly SurfaceKind[] = [...FIXED, 'face', 'patientSkin', 'bareCord', 'sheathTail', 'outerSleeve', 'drapeUnder', 'bareHand', 'bareProbe', 'sheathInside', 'unsterileItem'];
