/*
 * What-if the plain way: the whole changed log, to be replayed from its beginning. What the debrief does instead, from a kept state, is
 * compared with it; the names that fresh things take are the same code, which hand-made logs try (`whatIf.test.ts`).
 */
import type { RemedyId } from '../../../src/core/commands/command.ts';
import { freshSurface, freshThing, isHandedOn, renamedFact } from '../../../src/core/debrief/replacing.ts';
import type { Fact, Zone } from '../../../src/core/ledger/fact.ts';
import type { Surface } from '../../../src/core/ledger/surface.ts';

/** The same log without one touch, as if those two surfaces had never met then. */
export const removeTouch = (facts: readonly Fact[], touch: number): Fact[] => facts.filter((fact) => !('touch' in fact) || fact.touch !== touch);

/** The same log without some facts, given by their places in it (`rootFacts` of a break): as if that mishap had not happened. */
export function removeFacts(facts: readonly Fact[], places: readonly number[]): Fact[] {
  const removed = new Set(places);
  const touches = new Set(places.map((place) => facts[place]).flatMap((fact) => (fact?.kind === 'touch.began' ? [fact.touch] : [])));
  return facts.filter((fact, place) => !removed.has(place) && !(fact.kind === 'touch.ended' && touches.has(fact.touch)));
}

/** A remedy at the end of a step that was not taken in the run; `things` with their generation (`glove.left#1`). */
export interface InsertedRemedy {
  readonly step: number;
  readonly remedy: RemedyId;
  readonly things: readonly string[];
}

/**
 * The same log with one remedy inserted. Every surface of the things that has a role is replaced by a fresh one, which from then on
 * makes the same movements: from the next step it takes over the touches and places of the old one. Only a new item does not lie
 * where the old one had fallen: it is handed on to the field. Its thing is named like the old one with a "~".
 */
export function insertRemedy(facts: readonly Fact[], inserted: InsertedRemedy): Fact[] {
  const after = facts.findIndex((fact) => fact.step > inserted.step);
  const split = after < 0 ? facts.length : after;
  const before = facts.slice(0, split);
  const replaced = liveSurfaces(before).filter(({ thing, role }) => role !== 'none' && inserted.things.includes(thing));
  const fresh = new Map(replaced.map((surface) => [surface.id, freshSurface(surface)]));
  const rename = (id: string): string => fresh.get(id)?.id ?? id;
  const touches = takenOver(facts, before, fresh);
  const { step, remedy, things } = inserted;
  const remedied: Fact[] = [
    ...replaced.map((surface): Fact => ({ kind: 'surface.retired', step, surface: surface.id })),
    ...[...fresh.values()].map((surface): Fact => ({ kind: 'surface.added', step, surface })),
    { kind: 'remedied', step, remedy, things },
    ...zonesOf(before, fresh).map((fact): Fact => ({ ...fact, step: step + 1, surface: rename(fact.surface) })),
    ...[...touches].map(([fact, touch]): Fact => ({ ...fact, step: step + 1, touch, a: rename(fact.a), b: rename(fact.b) })),
  ];
  const numbers = new Map([...touches].map(([fact, touch]) => [fact.touch, touch]));
  const freshThings = new Map(replaced.map(({ thing }) => [thing, freshThing(thing)]));
  const renamed = facts.slice(split).map((fact) => renamedFact(fact, rename, (thing) => freshThings.get(thing) ?? thing, (touch) => numbers.get(touch) ?? touch));
  return [...before, ...remedied, ...renamed];
}

type Began = Extract<Fact, { kind: 'touch.began' }>;
type Entered = Extract<Fact, { kind: 'zone.entered' }>;

function liveSurfaces(facts: readonly Fact[]): Surface[] {
  const live = new Map<string, Surface>();
  for (const fact of facts) {
    if (fact.kind === 'surface.added') live.set(fact.surface.id, fact.surface);
    if (fact.kind === 'surface.retired') live.delete(fact.surface);
  }
  return [...live.values()];
}

/** Touches of the replaced surfaces that are under way, each with the number of the touch that takes its place. */
function takenOver(facts: readonly Fact[], before: readonly Fact[], fresh: ReadonlyMap<string, Surface>): Map<Began, number> {
  const open = new Map<number, Began>();
  const retired = new Set<string>();
  const lost = new Set(before.flatMap((fact) => (fact.kind === 'surface.added' && (fact.surface.kind === 'floor' || fact.surface.kind === 'bin') ? [fact.surface.id] : [])));
  for (const fact of before) {
    if (fact.kind === 'touch.began' && (fresh.has(fact.a) || fresh.has(fact.b)) && !retired.has(fact.a) && !retired.has(fact.b) && !liesWhereItFell(fact, fresh, lost)) open.set(fact.touch, fact);
    if (fact.kind === 'touch.ended') open.delete(fact.touch);
    if (fact.kind !== 'surface.retired') continue;
    // What is taken away touches nothing, though its touches may end later.
    retired.add(fact.surface);
    for (const [touch, { a, b }] of open) if (retired.has(a) || retired.has(b)) open.delete(touch);
  }
  let last = facts.reduce((largest, fact) => (fact.kind === 'touch.began' ? Math.max(largest, fact.touch) : largest), 0);
  return new Map([...open.values()].map((fact) => [fact, ++last]));
}

const liesWhereItFell = ({ a, b }: Began, fresh: ReadonlyMap<string, Surface>, lost: ReadonlySet<string>): boolean =>
  (isHandedOn(fresh.get(a)) && lost.has(b)) || (isHandedOn(fresh.get(b)) && lost.has(a));

function zonesOf(before: readonly Fact[], fresh: ReadonlyMap<string, Surface>): Entered[] {
  const inside = new Map<string, Entered>();
  const key = (surface: string, zone: Zone): string => `${surface} ${zone}`;
  for (const fact of before) {
    if (fact.kind === 'zone.entered' && fresh.has(fact.surface) && !(fact.zone === 'offField' && isHandedOn(fresh.get(fact.surface)))) inside.set(key(fact.surface, fact.zone), fact);
    if (fact.kind === 'zone.left') inside.delete(key(fact.surface, fact.zone));
  }
  return [...inside.values()];
}
