import type { RemedyId } from '../commands/command.ts';
import type { Surface } from './surface.ts';

/**
 * Where a surface is that makes it count as unsterile without a touch.
 * - belowField: a hand, or the opened sheath that hangs from it, below the level of the field, or of the waist beside it
 * - outOfSight: a hand behind something or behind the operator's back
 * - margin: a stretch of drape within the margin of an edge, or beyond the edge (it is not on the field)
 * - offField: an item or a stretch of sheathed cord that left the field (fell, or hangs below it); it may touch what it likes there
 * - armpit: a gloved hand tucked in under the other arm
 * - uncovered: a knit cuff that a hand has passed and that the glove does not cover
 * - overField: an unsterile thing or arm held over the field without touching it
 */
export type Zone = PlacedZone | 'armpit' | 'uncovered';
/** Zones that follow from where a surface is in the room. */
export type PlacedZone = 'belowField' | 'outOfSight' | 'margin' | 'offField' | 'overField';

/**
 * One line of the touch log, in order of steps. The ledger, the report and what-if are pure functions of a list of these.
 * Positions are metres in the room. A touch is one episode of contact between two surfaces, from `began` to `ended`.
 */
export type Fact =
  | { readonly kind: 'surface.added'; readonly step: number; readonly surface: Surface }
  | { readonly kind: 'surface.retired'; readonly step: number; readonly surface: string }
  | { readonly kind: 'touch.began'; readonly step: number; readonly touch: number; readonly a: string; readonly b: string; readonly x: number; readonly y: number }
  | { readonly kind: 'touch.ended'; readonly step: number; readonly touch: number }
  | { readonly kind: 'zone.entered'; readonly step: number; readonly surface: string; readonly zone: Zone; readonly x: number; readonly y: number }
  | { readonly kind: 'zone.left'; readonly step: number; readonly surface: string; readonly zone: Zone }
  /** The edge of a drape slid: `toward` the site over skin that was covered, or `away` so far that unprepared skin is bare. */
  | { readonly kind: 'drape.drifted'; readonly step: number; readonly drape: string; readonly direction: 'toward' | 'away'; readonly site: string; readonly metres: number; readonly x: number; readonly y: number }
  /** A thing was used for its purpose at the site: gel squeezed, probe set down, needle or syringe held to the skin. */
  | { readonly kind: 'used'; readonly step: number; readonly surface: string; readonly site: string; readonly x: number; readonly y: number }
  /** The film of a sheath tore there. */
  | { readonly kind: 'torn'; readonly step: number; readonly surface: string; readonly x: number; readonly y: number }
  /** A glove tore while it was pulled on. */
  | { readonly kind: 'glove.torn'; readonly step: number; readonly surface: string; readonly x: number; readonly y: number }
  /** Gel that is not sterile went into a sheath; `gel` is what it came from. */
  | { readonly kind: 'gelled'; readonly step: number; readonly gel: string; readonly surface: string; readonly x: number; readonly y: number }
  | { readonly kind: 'noticed'; readonly step: number }
  /** A remedy came to its end; `things` are what it answered (`glove.left#1`, `drape.right#1`), each with its surfaces retired or covered. */
  | { readonly kind: 'remedied'; readonly step: number; readonly remedy: RemedyId; readonly things: readonly string[] };
