import { change, escalate } from './breakList.ts';
import type { Fact, Zone } from './fact.ts';
import type { LedgerState, SurfaceRecord } from './ledgerState.ts';
import { objectOf, recordOf } from './ledgerState.ts';
import type { RuleIndex } from './rules/ruleIndex.ts';
import { breakAtRoot, carryOn, riskAtRoot } from './spoiling.ts';
import { judgeReturn, leaveField } from './touching.ts';

type FactOf<K extends Fact['kind']> = Extract<Fact, { kind: K }>;

/** A surface came to a place that matters without a touch. */
export function enterZone(state: LedgerState, rules: RuleIndex, fact: FactOf<'zone.entered'>): void {
  const record = recordOf(state, fact.surface);
  if (record.retiredStep !== null || record.zones.includes(fact.zone)) return;
  record.zones.push(fact.zone);
  if (fact.zone === 'margin' && record.taint === 'clean') {
    record.taint = 'place';
    record.because = 'margin';
  }
  if (fact.zone === 'offField') leaveField(state, record);
  const unsterile = record.taint === 'nature' || record.taint === 'place';
  const verdict = rules.zone(fact.zone, record.surface.kind, unsterile);
  if (!verdict) return;
  const { step, x, y } = fact;
  const root = { rule: verdict.rule, step, x, y, lost: record, against: null, touch: null };
  if (verdict.trigger.loses === 'nothing') riskAtRoot(state, { ...root, subject: record.surface.id });
  else breakAtRoot(state, root, verdict.trigger.loses === 'surface' ? [record] : sameThing(state, record), null);
}

export function leaveZone(state: LedgerState, rules: RuleIndex, surface: string, zone: Zone): void {
  const record = recordOf(state, surface);
  const at = record.zones.indexOf(zone);
  if (at < 0) return;
  record.zones.splice(at, 1);
  if (zone === 'offField') {
    record.away = false;
    judgeReturn(state, rules, record);
  }
  if (zone === 'overField') withdraw(state, surface);
}

/** The parts of a thing that are of the same kind, the given one first. */
function sameThing(state: LedgerState, record: SurfaceRecord): SurfaceRecord[] {
  const { thing, kind } = record.surface;
  const parts = [...state.surfaces.values()].filter((other) => other !== record && other.surface.thing === thing && other.surface.kind === kind);
  return [record, ...parts];
}

/** The risk of an arm over the field ends when it is withdrawn. */
function withdraw(state: LedgerState, surface: string): void {
  for (const { number, remediedStep } of state.breaks)
    if (remediedStep === null && state.notes[number - 1]!.subject === surface) change(state, number, { remediedStep: state.step });
}

export function drift(state: LedgerState, rules: RuleIndex, fact: FactOf<'drape.drifted'>): void {
  const site = recordOf(state, fact.site);
  const rule = rules.drift(fact.direction);
  if (!rule || site.retiredStep !== null) return;
  const { step, x, y } = fact;
  const drape = objectOf(fact.drape);
  const root = { rule, step, x, y, lost: site, against: null, touch: null, subject: drape, concerns: [drape, objectOf(site.surface.thing)] };
  if (fact.direction === 'toward') breakAtRoot(state, root, [site], null);
  else riskAtRoot(state, root);
}

/**
 * Something was used at the site. What an earlier break had spoiled takes that break to the site; what was never sterile, or had
 * left the field, makes a break of its own.
 */
export function use(state: LedgerState, rules: RuleIndex, fact: FactOf<'used'>): void {
  const thing = recordOf(state, fact.surface);
  const site = recordOf(state, fact.site);
  const rule = rules.used;
  if (!rule || thing.taint === 'clean' || site.retiredStep !== null || thing.retiredStep !== null) return;
  const { step, x, y } = fact;
  if (thing.taint === 'break') {
    if (site.taint !== 'nature') carryOn(state, thing, site, null);
    escalate(state, thing.break, rule);
    return;
  }
  const root = { rule, step, x, y, lost: site, against: thing, touch: null };
  breakAtRoot(state, root, [site], thing.taint === 'place' ? thing : null);
}

/** A glove tore: no part of it is a barrier any more. */
export function tearGlove(state: LedgerState, rules: RuleIndex, fact: FactOf<'glove.torn'>): void {
  const glove = recordOf(state, fact.surface);
  const rule = rules.gloveTorn;
  if (!rule || glove.retiredStep !== null) return;
  const { step, x, y } = fact;
  breakAtRoot(state, { rule, step, x, y, lost: glove, against: null, touch: null }, sameThing(state, glove), null);
}

/** The film tore, or other gel than sterile went in: the sheath is spoiled by it. */
export function spoilSheath(state: LedgerState, rules: RuleIndex, fact: FactOf<'torn' | 'gelled'>): void {
  const film = recordOf(state, fact.surface);
  const rule = fact.kind === 'torn' ? rules.torn : rules.gelled;
  if (!rule || film.retiredStep !== null) return;
  const { step, x, y } = fact;
  breakAtRoot(state, { rule, step, x, y, lost: film, against: fact.kind === 'gelled' ? recordOf(state, fact.gel) : null, touch: null }, [film], null);
}
