import { assert } from '../base/assert.ts';
import type { Break, Severity } from './break.ts';
import type { BreakNote, LedgerState, SurfaceRecord } from './ledgerState.ts';
import { isItem, recordOf } from './ledgerState.ts';
import type { Rule } from './rules/rule.ts';
import type { Reach, Surface } from './surface.ts';

/** Parts of one thing that meet the same unsterile thing within this many steps (2 s) are one mishap. */
const ONE_MISHAP_STEPS = 240;

const REACHES: readonly Reach[] = ['none', 'field', 'device', 'site'];
const SEVERITIES: readonly Severity[] = ['minor', 'major', 'critical'];
const larger = <T>(order: readonly T[], p: T, q: T): T => (order.indexOf(p) > order.indexOf(q) ? p : q);

/** A root event, before it is known whether it is a new break. */
export interface Root {
  readonly rule: Rule;
  readonly step: number;
  readonly x: number;
  readonly y: number;
  readonly lost: SurfaceRecord;
  readonly against: SurfaceRecord | null;
  readonly touch: number | null;
  /** What it met had left the field and came back: one mishap, whatever is lost by it. */
  readonly cameBack?: boolean;
  /** What marks it as the same mishap; the thing that lost, if not given. */
  readonly subject?: string;
  /** Objects that a remedy must name to answer it, where no surface is lost. */
  readonly concerns?: readonly string[];
}

/** Number of the break that the root belongs to by being the same mishap, or null. */
function sameMishap(state: LedgerState, root: Root): number | null {
  const subject = subjectOf(root);
  const against = root.against?.surface.thing ?? null;
  for (let k = state.breaks.length - 1; k >= 0; k--) {
    const [known, note] = [state.breaks[k]!, state.notes[k]!];
    const sameRule = known.rule === root.rule.id;
    if (note.against !== against || (against === null && !sameRule)) continue;
    if (note.subject !== subject && !(root.cameBack && sameRule)) continue;
    const soon = root.step - known.step <= ONE_MISHAP_STEPS;
    const goingOn = note.touches.some((touch) => state.contacts.get(touch)?.ended === false);
    if (soon || goingOn || stillRisky(known, root.step)) return known.number;
  }
  return null;
}

const subjectOf = (root: Root): string => root.subject ?? root.lost.surface.thing;

/** A break without loss (an arm over the field, bared skin) goes on until it is answered, and for one mishap's time after. */
const stillRisky = (known: Break, step: number): boolean =>
  known.spread.length === 0 && (known.remediedStep === null || (known.remedies.length === 0 && step - known.remediedStep <= ONE_MISHAP_STEPS));

const touchesOf = ({ touch }: Root): readonly number[] => (touch === null ? [] : [touch]);

/** Enters the root with the mishap that it is part of, if any; gives the number of that break, or null. */
export function joinMishap(state: LedgerState, root: Root): number | null {
  const number = sameMishap(state, root);
  if (number === null) return null;
  const lasting = state.notes[number - 1]!.touches.filter((touch) => state.contacts.has(touch));
  changeNote(state, number, { touches: [...lasting, ...touchesOf(root)] });
  if (breakOf(state, number).spread.length === 0) change(state, number, { remediedStep: null });
  return number;
}

/** Enters the root with its mishap or opens a new break; gives the number. */
export function openOrJoin(state: LedgerState, root: Root): number {
  return joinMishap(state, root) ?? open(state, root);
}

function open(state: LedgerState, root: Root): number {
  const number = state.breaks.length + 1;
  const { rule, step, x, y, lost, against } = root;
  state.breaks = [
    ...state.breaks,
    {
      number,
      rule: rule.id,
      step,
      x,
      y,
      surface: lost.surface.id,
      against: against?.surface.id ?? null,
      severity: rule.severity,
      reach: 'none',
      spread: [],
      noticedStep: null,
      remediedStep: null,
      remedies: [],
    },
  ];
  state.notes = [
    ...state.notes,
    { subject: subjectOf(root), against: against?.surface.thing ?? null, touches: touchesOf(root), concerns: root.concerns ?? [] },
  ];
  return number;
}

/** Enters a surface that the break spoiled; a break that had been answered is open again. */
export function addSpread(state: LedgerState, number: number, record: SurfaceRecord, touch: number | null, from: string | null): void {
  const { spread, remediedStep } = breakOf(state, number);
  const { surface, depth } = record;
  change(state, number, {
    spread: [...spread, { surface: surface.id, depth, step: state.step, touch, from }],
    remediedStep: surface.role === 'none' ? remediedStep : null,
  });
  raise(state, number, surface, depth);
}

/** The break got to a surface, spoiled by it or spoiled already: its reach and severity rise accordingly. */
export function raise(state: LedgerState, number: number, surface: Surface, depth: number): void {
  const known = breakOf(state, number);
  const reach = larger(REACHES, known.reach, surface.reach);
  let severity = known.severity;
  if (depth > 0 && surface.role !== 'none') severity = larger(SEVERITIES, severity, 'major');
  if (reach === 'device' || reach === 'site') severity = 'critical';
  if (reach !== known.reach || severity !== known.severity) change(state, number, { reach, severity });
}

/** Notes that a later event made the break worse: it has come to the site. */
export function escalate(state: LedgerState, number: number, rule: Rule): void {
  const { escalatedBy = [], severity } = breakOf(state, number);
  if (escalatedBy.includes(rule.id)) return;
  change(state, number, { escalatedBy: [...escalatedBy, rule.id], severity: larger(SEVERITIES, severity, rule.severity), reach: 'site' });
}

/** The operator says so: it attaches to every break not yet noticed and not yet answered by a remedy. */
export function noticeAll(state: LedgerState): void {
  const answered: number[] = [];
  for (const { number, noticedStep, remediedStep, remedies } of state.breaks) {
    if (noticedStep !== null || (remediedStep !== null && remedies.length > 0)) continue;
    change(state, number, { noticedStep: state.step });
    answered.push(number);
  }
  state.notices = [...state.notices, { step: state.step, breaks: answered }];
}

/** Closes every break of which nothing is left: each surface with a role that it spoiled is replaced, covered or thrown away. */
export function closeAnswered(state: LedgerState): void {
  for (const { number, spread, remediedStep } of state.breaks) {
    if (remediedStep !== null || spread.length === 0) continue;
    if (spread.every(({ surface }) => isAnswered(recordOf(state, surface)))) change(state, number, { remediedStep: state.step });
  }
}

const isAnswered = (record: SurfaceRecord): boolean => record.retiredStep !== null || record.surface.role === 'none' || (record.discarded && isItem(record));

export function change(state: LedgerState, number: number, part: Partial<Break>): void {
  const changed = { ...breakOf(state, number), ...part };
  state.breaks = state.breaks.map((known) => (known.number === number ? changed : known));
}

function changeNote(state: LedgerState, number: number, part: Partial<BreakNote>): void {
  state.notes = state.notes.map((note, k) => (k === number - 1 ? { ...note, ...part } : note));
}

function breakOf(state: LedgerState, number: number): Break {
  const known = state.breaks[number - 1];
  if (known === undefined) assert(false, `break ${number} exists`);
  return known;
}
