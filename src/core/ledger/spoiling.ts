import { addSpread, joinMishap, openOrJoin, raise } from './breakList.ts';
import type { Root } from './breakList.ts';
import type { Cause, LedgerState, SurfaceRecord } from './ledgerState.ts';
import { isKept, otherOf } from './ledgerState.ts';
import { allowedTouch } from './rules/ruleIndex.ts';

/** A surface about to be spoiled by a break, with where it comes from. */
interface Blow {
  readonly record: SurfaceRecord;
  readonly number: number;
  readonly depth: number;
  readonly from: SurfaceRecord | null;
  readonly touch: number | null;
  /** Rule broken here; null where it is carried on. */
  readonly rule: string | null;
}

/**
 * A root event: what was lost by it, breadth first with everything that touches it now. Surfaces that had left the field and came
 * back with it carry the same break on. When nothing was newly lost, it is kept as a further cause only.
 */
export function breakAtRoot(state: LedgerState, root: Root, lost: readonly SurfaceRecord[], carrier: SurfaceRecord | null): void {
  const fresh = lost.filter(isKept);
  if (fresh.length === 0) {
    addCause(state, { surface: root.lost.surface.id, from: root.against?.surface.id ?? null, touch: root.touch, rule: root.rule.id, break: joinMishap(state, root) });
    return;
  }
  const number = openOrJoin(state, { ...root, lost: fresh.includes(root.lost) ? root.lost : fresh[0]! });
  const blow = { number, depth: 0, touch: root.touch, rule: root.rule.id };
  const blows: Blow[] = fresh.map((record) => ({ ...blow, record, from: root.against }));
  if (carrier) blows.push({ ...blow, record: carrier, from: null });
  spoil(state, blows);
}

/** A root event by which no surface is lost: an arm over the field, a drape that bares skin. */
export function riskAtRoot(state: LedgerState, root: Root): void {
  addCause(state, { surface: root.lost.surface.id, from: null, touch: null, rule: root.rule.id, break: openOrJoin(state, root) });
}

/** Carries a break on from one surface to another by a touch (or by use, touch null) and to all that touches it now. */
export function carryOn(state: LedgerState, from: SurfaceRecord, to: SurfaceRecord, touch: number | null): void {
  if (to.taint === 'break') {
    addCause(state, { surface: to.surface.id, from: from.surface.id, touch, rule: null, break: from.break });
    raise(state, from.break, to.surface, from.depth + 1);
  } else spoil(state, [{ record: to, number: from.break, depth: from.depth + 1, from, touch, rule: null }]);
}

function spoil(state: LedgerState, blows: Blow[]): void {
  for (let blow = blows.shift(); blow; blow = blows.shift()) {
    const { record, number, depth, from, touch, rule } = blow;
    addCause(state, { surface: record.surface.id, from: from?.surface.id ?? null, touch, rule, break: number });
    if (record.taint === 'break') {
      raise(state, number, record.surface, depth);
      continue;
    }
    record.taint = 'break';
    record.break = number;
    record.depth = depth;
    addSpread(state, number, record, touch, depth === 0 ? null : (from?.surface.id ?? null));
    for (const id of record.touches) {
      const contact = state.contacts.get(id)!;
      const other = otherOf(contact, record);
      if (other === from || allowedTouch(record.surface.kind, other.surface.kind)) continue;
      if (other.taint === 'clean' || other.taint === 'break') blows.push({ record: other, number, depth: depth + 1, from: record, touch: id, rule: null });
    }
  }
}

/** Written out field by field: a long log has tens of thousands. */
function addCause(state: LedgerState, { surface, from, touch, rule, break: number }: Omit<Cause, 'step' | 'fact'>): void {
  state.causes?.push({ step: state.step, fact: state.factCount, surface, from, touch, rule, break: number });
}
