import { closeAnswered } from './breakList.ts';
import type { Contact, LedgerState, SurfaceRecord } from './ledgerState.ts';
import { isItem, otherOf } from './ledgerState.ts';
import { KEPT } from './rules/kinds.ts';
import type { Because } from './rules/rule.ts';
import type { RuleIndex } from './rules/ruleIndex.ts';
import { allowedTouch } from './rules/ruleIndex.ts';
import { breakAtRoot, carryOn } from './spoiling.ts';

/** Takes a new touch into the state and judges it. */
export function beginTouch(state: LedgerState, rules: RuleIndex, contact: Contact): void {
  const { a, b, touch } = contact;
  if (a.retiredStep !== null || b.retiredStep !== null) return;
  state.contacts.set(touch, contact);
  a.touches.push(touch);
  b.touches.push(touch);
  judgeTouch(state, rules, contact);
}

/** Marks a touch as ended; it goes on counting until the step is over. */
export function endTouch(state: LedgerState, touch: number): void {
  const contact = state.contacts.get(touch);
  if (!contact) return;
  contact.ended = true;
  // Mostly one ends in a step, and a list that grows takes room for many: over a long log that is most of the memory gone through.
  if (state.justEnded.length === 0) state.justEnded = [touch];
  else state.justEnded.push(touch);
}

/** Forgets the touches that ended in the step before. */
export function forgetEnded(state: LedgerState): void {
  if (state.justEnded.length === 0) return;
  for (const touch of state.justEnded) dropTouch(state, touch);
  state.justEnded = [];
}

/** Ends every touch of a surface at once: it is taken away. */
export function dropTouches(state: LedgerState, record: SurfaceRecord): void {
  for (const touch of record.touches.slice()) dropTouch(state, touch);
}

function dropTouch(state: LedgerState, touch: number): void {
  const contact = state.contacts.get(touch);
  if (!contact) return;
  state.contacts.delete(touch);
  takeOut(contact.a.touches, touch);
  takeOut(contact.b.touches, touch);
}

function takeOut(touches: number[], touch: number): void {
  if (touches[touches.length - 1] === touch) touches.pop();
  else touches.splice(touches.indexOf(touch), 1);
}

/** Judges anew what touches a surface that came back on to the field. */
export function judgeReturn(state: LedgerState, rules: RuleIndex, record: SurfaceRecord): void {
  for (const touch of record.touches.slice()) {
    const contact = state.contacts.get(touch)!;
    takeUp(otherOf(contact, record), record);
    if (isUnsterileBySelf(record)) judgeRoot(state, rules, contact, otherOf(contact, record), record);
    else if (record.taint === 'break') judgeTouch(state, rules, contact);
  }
}

function judgeTouch(state: LedgerState, rules: RuleIndex, contact: Contact): void {
  const { a, b, touch } = contact;
  const allowed = allowedTouch(a.surface.kind, b.surface.kind);
  if (allowed) {
    if (allowed.leaves) leaveField(state, a.surface.kind === allowed.leaves ? a : b);
    return;
  }
  takeUp(a, b);
  takeUp(b, a);
  if (isUnsterileBySelf(a)) judgeRoot(state, rules, contact, b, a);
  else if (isUnsterileBySelf(b)) judgeRoot(state, rules, contact, a, b);
  else {
    const [wasA, wasB] = [a.taint, b.taint];
    if (wasA === 'break') carryOn(state, a, b, touch);
    if (wasB === 'break') carryOn(state, b, a, touch);
  }
}

const isUnsterileBySelf = (record: SurfaceRecord): boolean => record.taint === 'nature' || record.taint === 'place';

/** `met` is unsterile by itself; `kept` loses by it when a rule in force says so. */
function judgeRoot(state: LedgerState, rules: RuleIndex, contact: Contact, kept: SurfaceRecord, met: SurfaceRecord): void {
  if (isUnsterileBySelf(kept)) return;
  const because: Because = met.taint === 'nature' ? 'nature' : met.because;
  const verdict = rules.touch(kept.surface.kind, met.surface.kind, because);
  if (!verdict || (verdict.trigger.whenBack && met.away)) return;
  if (verdict.trigger.otherThing && kept.surface.thing === met.surface.thing) return;
  if (kept.surface.role === 'none') {
    if (kept.taint === 'clean') countAsOff(kept);
    return;
  }
  const { touch, x, y } = contact;
  const cameBack = because === 'offField';
  const root = { rule: verdict.rule, step: state.step, x, y, lost: kept, against: met, touch, cameBack };
  breakAtRoot(state, root, [kept], cameBack && !met.away ? met : null);
}

/** An item that a gloved hand takes is back from wherever it lay; so is one that comes to lie on the field. */
function takeUp(by: SurfaceRecord, item: SurfaceRecord): void {
  if (!isItem(item)) return;
  if (by.surface.kind === 'glove') item.away = false;
  if (!item.away && KEPT.includes(by.surface.kind)) item.discarded = false;
}

/** A thing has left the field: it counts as unsterile from now on, and if it was spoiled before, that much is answered. */
export function leaveField(state: LedgerState, record: SurfaceRecord): void {
  record.away = true;
  record.discarded = true;
  if (record.taint === 'clean') countAsOff(record);
  closeAnswered(state);
}

function countAsOff(record: SurfaceRecord): void {
  record.taint = 'place';
  record.because = 'offField';
}
