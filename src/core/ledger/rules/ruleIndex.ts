import type { Zone } from '../fact.ts';
import type { SurfaceKind } from '../surface.ts';
import { ALLOWED_PAIRS } from './allowedPairs.ts';
import type { Because, Rule, Trigger } from './rule.ts';

type TouchTrigger = Extract<Trigger, { kind: 'touch' }>;
type ZoneTrigger = Extract<Trigger, { kind: 'zone' }>;

/** A rule together with the one of its triggers that applies. */
export interface Verdict<T extends Trigger = Trigger> {
  readonly rule: Rule;
  readonly trigger: T;
}

/** Rules in force, arranged for look-up by kinds of surface. */
export class RuleIndex {
  private readonly touches = new Map<string, Verdict<TouchTrigger>>();
  private readonly zones: Verdict<ZoneTrigger>[] = [];
  private readonly drifts = new Map<string, Verdict>();
  /** Rules about single events, when they are in force: something unsterile used at the site, a torn sheath, gel that is not sterile in it, a torn glove. */
  readonly used: Rule | undefined;
  readonly torn: Rule | undefined;
  readonly gelled: Rule | undefined;
  readonly gloveTorn: Rule | undefined;

  constructor(rules: readonly Rule[]) {
    for (const rule of rules) for (const trigger of rule.triggers) this.add(rule, trigger);
    const about = (kind: Trigger['kind']): Rule | undefined => rules.find((rule) => rule.triggers.some((trigger) => trigger.kind === kind));
    this.used = about('used');
    this.torn = about('torn');
    this.gelled = about('gelled');
    this.gloveTorn = about('gloveTorn');
  }

  /** What speaks when a surface of kind `kept` meets one of kind `against`, unsterile `because`. */
  touch(kept: SurfaceKind, against: SurfaceKind, because: Because): Verdict<TouchTrigger> | undefined {
    return this.touches.get(`${kept} ${against} ${because}`);
  }

  zone(zone: Zone, kind: SurfaceKind, unsterile: boolean): Verdict<ZoneTrigger> | undefined {
    return this.zones.find(({ trigger }) => trigger.zone === zone && (trigger.surfaces === 'unsterile' ? unsterile : trigger.surfaces.includes(kind)));
  }

  drift(direction: 'toward' | 'away'): Rule | undefined {
    return this.drifts.get(direction)?.rule;
  }

  private add(rule: Rule, trigger: Trigger): void {
    if (trigger.kind === 'zone') this.zones.push({ rule, trigger });
    if (trigger.kind === 'drift') this.drifts.set(trigger.direction, { rule, trigger });
    if (trigger.kind !== 'touch') return;
    for (const kept of trigger.surfaces)
      for (const against of trigger.against) this.touches.set(`${kept} ${against} ${trigger.because}`, { rule, trigger });
  }
}

/** By one kind and then the other, since putting names together takes most of the time of a look-up. */
const allowed = new Map<SurfaceKind, Map<SurfaceKind, { readonly leaves: SurfaceKind | null }>>();
const allow = (a: SurfaceKind, b: SurfaceKind, leaves: { readonly leaves: SurfaceKind | null }): void => {
  const others = allowed.get(a) ?? new Map<SurfaceKind, { readonly leaves: SurfaceKind | null }>();
  allowed.set(a, others.set(b, leaves));
};
for (const pair of ALLOWED_PAIRS)
  for (const a of pair.a)
    for (const b of pair.b) {
      const leaves = { leaves: pair.leavesField ? a : null };
      allow(a, b, leaves);
      allow(b, a, leaves);
    }

/** Whether a touch of two kinds is harmless for good, and which of them has thereby left the field; undefined when rules decide. */
export const allowedTouch = (a: SurfaceKind, b: SurfaceKind): { readonly leaves: SurfaceKind | null } | undefined => allowed.get(a)?.get(b);
