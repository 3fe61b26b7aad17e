import { assert } from '../base/assert.ts';
import type { Break } from './break.ts';
import type { Zone } from './fact.ts';
import type { Because } from './rules/rule.ts';
import type { Surface } from './surface.ts';

/**
 * Why a surface is as it is: `clean` (as it should be), unsterile by `nature` (a rail) or by `place` (margin, off the field), or
 * spoiled by a `break` of this run.
 */
export type Taint = 'clean' | 'nature' | 'place' | 'break';

/** What the ledger knows of one surface. */
export interface SurfaceRecord {
  readonly surface: Surface;
  taint: Taint;
  /** For `place`: which place. */
  because: Because;
  zones: Zone[];
  /** Off the field now: dropped, thrown away or hanging. */
  away: boolean;
  /** Of an item: it left the field and nobody has taken it back since. */
  discarded: boolean;
  /** Number of the break that spoiled it first, and its depth there; 0 while none did. */
  break: number;
  depth: number;
  /** Step at which it was taken away or covered, or null. */
  retiredStep: number | null;
  /** Touches under way. */
  touches: number[];
}

/** One touch under way; `x`, `y` in metres where it began. */
export interface Contact {
  readonly touch: number;
  readonly a: SurfaceRecord;
  readonly b: SurfaceRecord;
  readonly x: number;
  readonly y: number;
  /** It ended in the present step, within which it still counts: what is simultaneous has no order. */
  ended: boolean;
}

/**
 * One edge of the graph of causes: `surface` met `from` when the latter was unsterile, or (with `rule`) did something by itself.
 * The first cause of a spoiled surface made it so; further ones would have if the first had not been.
 */
export interface Cause {
  readonly step: number;
  /** Place in the log, from 0, of the fact that brought it. */
  readonly fact: number;
  readonly surface: string;
  readonly from: string | null;
  readonly touch: number | null;
  /** Rule that was broken there; null where an already spoiled surface carried it on. */
  readonly rule: string | null;
  /** Break that it belongs to; null for a further root that spoiled nothing new. */
  readonly break: number | null;
}

/** What the ledger keeps about a break beside what it shows. */
export interface BreakNote {
  /** What lost or slid at the root, and the thing it met: by these two the parts of one mishap are known. */
  readonly subject: string;
  readonly against: string | null;
  /** Root touches, as long as they last. */
  readonly touches: readonly number[];
  /** Things a remedy must name to answer it, where no surface was lost. */
  readonly concerns: readonly string[];
}

/** A "sterility was broken" of the operator; no breaks: a false report. */
export interface Notice {
  readonly step: number;
  readonly breaks: readonly number[];
}

/** The whole state of the ledger. Break, note, cause and notice entries are never changed, only replaced. */
export interface LedgerState {
  step: number;
  /** Facts taken in so far. */
  factCount: number;
  readonly surfaces: Map<string, SurfaceRecord>;
  readonly contacts: Map<number, Contact>;
  /** Touches that ended in the present step. */
  justEnded: number[];
  breaks: Break[];
  notes: BreakNote[];
  /** Null in a ledger that keeps none. */
  causes: Cause[] | null;
  notices: Notice[];
}

export const emptyState = (): LedgerState => ({
  step: 0,
  factCount: 0,
  surfaces: new Map(),
  contacts: new Map(),
  justEnded: [],
  breaks: [],
  notes: [],
  causes: [],
  notices: [],
});

export function recordOf(state: LedgerState, id: string): SurfaceRecord {
  const record = state.surfaces.get(id);
  // The sentence is only put together when it is needed: this is asked several times for each fact.
  if (record === undefined) assert(false, `surface "${id}" was added before it is spoken of`);
  return record;
}

export const otherOf = (contact: Contact, record: SurfaceRecord): SurfaceRecord => (contact.a === record ? contact.b : contact.a);

/** Still sterile or prepared, and it has to be. */
export const isKept = (record: SurfaceRecord): boolean => record.taint === 'clean' && record.surface.role !== 'none' && record.retiredStep === null;

/** Name of an object without its generation and part: `drape.right#2:0` is of the object `drape.right`. */
export const objectOf = (name: string): string => name.split(/[#:]/, 1)[0]!;

/** Something loose that can be dropped or thrown away. */
export const isItem = ({ surface }: SurfaceRecord): boolean => surface.kind === 'item' || surface.kind === 'needle';
