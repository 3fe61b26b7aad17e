import type { Fact, Zone } from '../ledger/fact.ts';
import type { LedgerSnapshot } from '../ledger/ledgerSnapshot.ts';
import type { Surface } from '../ledger/surface.ts';
import { indexOf } from './logIndex.ts';
import { freshSurface, freshThing, isHandedOn, renamedFact } from './replacing.ts';
import type { RunLog } from './runLog.ts';
import type { Change } from './whatIfTypes.ts';

/** A remedy that was not taken in the run, as facts. */
export interface HandedOver {
  /** The remedy itself, then what the fresh surfaces take over from the old ones. */
  readonly facts: readonly Fact[];
  /** A later fact of the log under its new names; the very same where it has none. */
  readonly renamed: (fact: Fact) => Fact;
}

/**
 * A remedy inserted at the end of a step, of which `state` is the ledger. Every surface of the things that has a role is replaced by a
 * fresh one, which from then on makes the same movements: from the next step it takes over the touches and places of the old one. Only
 * a new item does not lie where the old one had fallen: it is handed on to the field. Its thing is named like the old one with a "~".
 */
export function handedOver(log: RunLog, state: LedgerSnapshot, { remedy, step, things }: Extract<Change, { kind: 'remedy' }>): HandedOver {
  const replaced = state.surfaces.filter(({ surface, retiredStep }) => retiredStep === null && surface.role !== 'none' && things.includes(surface.thing)).map(({ surface }) => surface);
  const fresh = new Map(replaced.map((surface) => [surface.id, freshSurface(surface)]));
  const surface = (id: string): string => fresh.get(id)?.id ?? id;
  const touches = takenOver(log, state, fresh);
  const facts: Fact[] = [
    ...replaced.map(({ id }): Fact => ({ kind: 'surface.retired', step, surface: id })),
    ...[...fresh.values()].map((added): Fact => ({ kind: 'surface.added', step, surface: added })),
    { kind: 'remedied', step, remedy, things },
    ...zonesOf(log, step, fresh).map((fact): Fact => ({ ...fact, step: step + 1, surface: surface(fact.surface) })),
    ...touches.map(({ number, a, b, x, y }): Fact => ({ kind: 'touch.began', step: step + 1, touch: number, a: surface(a), b: surface(b), x, y })),
  ];
  const numbers = new Map(touches.map(({ touch, number }) => [touch, number]));
  const freshThings = new Map(replaced.map(({ thing }) => [thing, freshThing(thing)]));
  return { facts, renamed: (fact) => renamedFact(fact, surface, (thing) => freshThings.get(thing) ?? thing, (touch) => numbers.get(touch) ?? touch) };
}

type Entered = Extract<Fact, { kind: 'zone.entered' }>;
type Touching = LedgerSnapshot['contacts'][number] & { readonly number: number };

/** Touches of the replaced surfaces that are under way, each with the number of the touch that takes its place. */
function takenOver(log: RunLog, { contacts }: LedgerSnapshot, fresh: ReadonlyMap<string, Surface>): Touching[] {
  const { surfaces, lastTouch } = indexOf(log);
  const isLost = (id: string): boolean => surfaces.get(id)!.kind === 'floor' || surfaces.get(id)!.kind === 'bin';
  const liesWhereItFell = (a: string, b: string): boolean => isHandedOn(fresh.get(a)) && isLost(b);
  const going = contacts.filter(({ a, b, ended }) => !ended && (fresh.has(a) || fresh.has(b)) && !liesWhereItFell(a, b) && !liesWhereItFell(b, a));
  return going.map((contact, k) => ({ ...contact, number: lastTouch + 1 + k }));
}

/** Places that the replaced surfaces are in, in the order in which they came there. */
function zonesOf(log: RunLog, step: number, fresh: ReadonlyMap<string, Surface>): Entered[] {
  const inside = new Map<string, Entered>();
  const key = (surface: string, zone: Zone): string => `${surface} ${zone}`;
  for (const fact of indexOf(log).zoneFacts) {
    if (fact.step > step) break;
    if (!fresh.has(fact.surface)) continue;
    if (fact.kind === 'zone.left') inside.delete(key(fact.surface, fact.zone));
    else if (!(fact.zone === 'offField' && isHandedOn(fresh.get(fact.surface)))) inside.set(key(fact.surface, fact.zone), fact);
  }
  return [...inside.values()];
}
