import type { SurfaceKind } from '../surface.ts';
import { FIELD, FIXED, GLOVE, GOWN, ITEM, PREPARED, SHEATH } from './kinds.ts';

/** Two kinds of surface whose touch never is a break and never carries anything over, either way. */
export interface AllowedPair {
  readonly a: readonly SurfaceKind[];
  readonly b: readonly SurfaceKind[];
  readonly why: string;
  /** The first of the two has thereby left the field. */
  readonly leavesField?: true;
}

/**
 * Touches that a careful observer with perfect eyes calls harmless. The inside of the gown is no surface of the
 * room. Two surfaces that are both unsterile (a margin on a margin, bare cord on the floor) need no row: nothing can be lost.
 */
export const ALLOWED_PAIRS: readonly AllowedPair[] = [
  {
    a: ['drapeUnder'],
    b: ['patientSkin', ...PREPARED, ...FIELD, ...FIXED, 'bareCord', 'sheathTail', 'face', 'outerSleeve', 'drapeUnder'],
    why: 'the underside of a drape lies on patient, bed and rail; a sheet that folds meets its own side',
  },
  { a: FIELD, b: [...PREPARED, 'patientSkin'], why: 'a laid drape meets the skin at its edge, with its underside; its drift is judged by itself' },
  { a: ['cover'], b: FIELD, why: 'a cover lies on what it covers and nothing passes it' },
  { a: PREPARED, b: ['patientSkin'], why: 'the same skin goes on' },
  {
    // Only the fold at the mouth shows the inside. It is clean while nothing is in it, and it does not get down to field or skin
    // before the closed end below it, which is judged then.
    a: ['sheathInside'],
    b: [...GLOVE, ...GOWN, ...SHEATH, ...ITEM, ...FIELD, ...PREPARED, 'bareProbe', 'bareCord', 'bareHand'],
    why: 'a sheath is closed but for its mouth: its inside lies on probe and cord, and the fold that is turned back over the fingers keeps it off what is sterile',
  },
  { a: ITEM, b: ['floor', 'bin'], why: 'thrown away or dropped: it stays there', leavesField: true },
];
