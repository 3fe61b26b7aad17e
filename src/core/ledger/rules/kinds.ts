import type { SurfaceKind } from '../surface.ts';

/** Kinds of surface that the rules speak of together. */
export const GLOVE: readonly SurfaceKind[] = ['glove'];
export const GOWN: readonly SurfaceKind[] = ['sleeve', 'gownFront', 'knitCuff'];
export const SHEATH: readonly SurfaceKind[] = ['sheath', 'probeSheath'];
export const ITEM: readonly SurfaceKind[] = ['item', 'needle'];
/** What lies still and carries the rest: drape, what covers it, the covered table, an opened wrapper. */
export const FIELD: readonly SurfaceKind[] = ['drapeTop', 'cover', 'kitTable', 'wrapper'];
export const PREPARED: readonly SurfaceKind[] = ['preparedSkin', 'site'];
/** What stands in the room and nobody takes for sterile, somebody who passes by included. */
export const FIXED: readonly SurfaceKind[] = ['rail', 'pole', 'machine', 'bed', 'floor', 'tableEdge', 'bin', 'person'];
/** Every kind that has to be sterile or prepared somewhere. */
export const KEPT: readonly SurfaceKind[] = [...GLOVE, ...GOWN, ...SHEATH, ...ITEM, ...FIELD, ...PREPARED];
/** Every kind that never is. */
export const NEVER_STERILE: readonly SurfaceKind[] = [...FIXED, 'face', 'patientSkin', 'bareCord', 'sheathTail', 'outerSleeve', 'drapeUnder', 'bareHand', 'bareProbe', 'sheathInside', 'unsterileItem', 'gownInside', 'gloveInside', 'passedCuff', 'ownSkin', 'ownClothes', 'cardEnd'];
