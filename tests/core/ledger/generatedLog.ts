import * as fc from 'fast-check';
import type { Fact } from '../../../src/core/ledger/fact.ts';
import { surface } from './log.ts';

/** Surfaces of a small room: two gloves, sleeve, items, cord, drape and site, with rails, pole, face and bare cord to spoil them. */
export const SURFACES = [
  surface('gloveL#1:palm', 'glove'), surface('gloveL#1:fingers', 'glove'), surface('gloveR#1:palm', 'glove'), surface('gown#1:lower', 'sleeve'),
  surface('gel#1:all', 'item'), surface('syringe#1:needle', 'needle'), surface('cord#1:0', 'sheath'), surface('probe#1:head', 'probeSheath'),
  surface('drape#1:0', 'drapeTop'), surface('table#1:top', 'kitTable'), surface('site#1:all', 'site'),
  surface('railL:all', 'rail'), surface('pole:all', 'pole'), surface('face:all', 'face'), surface('bare:all', 'bareCord'),
];
export const KEPT_IDS = SURFACES.filter(({ role }) => role !== 'none').map(({ id }) => id);
export const NEVER_IDS = SURFACES.filter(({ role }) => role === 'none').map(({ id }) => id);

export const ADDED: readonly Fact[] = SURFACES.map((one) => ({ kind: 'surface.added', step: 0, surface: one }));

export interface Episode {
  readonly a: string;
  readonly b: string;
  readonly begin: number;
  readonly end: number;
}

const kept = fc.constantFrom(...KEPT_IDS);
const anything = fc.constantFrom(...KEPT_IDS, ...NEVER_IDS);

/** Touches at random, two thirds of them between things that must be sterile, many at the same step. */
export const episodes: fc.Arbitrary<Episode[]> = fc
  .array(
    fc.record({ a: kept, b: fc.oneof({ weight: 2, arbitrary: kept }, { weight: 1, arbitrary: anything }), begin: fc.integer({ min: 1, max: 400 }), lasts: fc.integer({ min: 0, max: 90 }) }),
    { minLength: 1, maxLength: 40 },
  )
  .map((list) => list.filter(({ a, b }) => a !== b).map(({ a, b, begin, lasts }) => ({ a, b, begin, end: begin + lasts })));

/** The touch log of some episodes; touch numbers are their places + 1, and `order` sorts beginnings and ends of the same step. */
export function touchLog(list: readonly Episode[], order: (touch: number) => number = (touch) => touch): Fact[] {
  const lines = list.flatMap(({ a, b, begin, end }, k): { rank: number; fact: Fact }[] => [
    { rank: order(k + 1), fact: { kind: 'touch.began', step: begin, touch: k + 1, a, b, x: 0, y: 1 } },
    { rank: order(k + 1) + 0.5, fact: { kind: 'touch.ended', step: end, touch: k + 1 } },
  ]);
  lines.sort((p, q) => p.fact.step - q.fact.step || p.rank - q.rank);
  return [...ADDED, ...lines.map(({ fact }) => fact)];
}

const ofThing = (thing: string): string[] => SURFACES.filter((one) => one.thing === thing).map(({ id }) => id);

/** Everything else that can stand in a log, to be mixed with touches. */
const others: fc.Arbitrary<Fact[]> = fc.integer({ min: 1, max: 450 }).chain((step) =>
  fc.oneof(
    fc.record({ surface: kept, zone: fc.constantFrom('belowField', 'outOfSight', 'margin', 'offField', 'overField'), lasts: fc.integer({ min: 1, max: 80 }) }).map(({ surface: id, zone, lasts }): Fact[] => [
      { kind: 'zone.entered', step, surface: id, zone, x: 0, y: 1 },
      { kind: 'zone.left', step: step + lasts, surface: id, zone },
    ]),
    fc.constant<Fact[]>([{ kind: 'noticed', step }]),
    kept.map((id): Fact[] => [{ kind: 'used', step, surface: id, site: 'site#1:all', x: 0, y: 1 }]),
    fc.constantFrom('toward' as const, 'away' as const).map((direction): Fact[] => [{ kind: 'drape.drifted', step, drape: 'drape#1', direction, site: 'site#1:all', metres: 0.02, x: 0, y: 1 }]),
    fc.constantFrom('gloveL#1', 'gel#1', 'drape#1', 'cord#1').map((thing): Fact[] => [
      ...ofThing(thing).map((id): Fact => ({ kind: 'surface.retired', step, surface: id })),
      { kind: 'remedied', step, remedy: 'changeGlove', things: [thing] },
    ]),
  ),
);

/** Whole logs: touches, zones, drift, use, notices and remedies in order of steps. */
export const logs: fc.Arbitrary<Fact[]> = fc.tuple(episodes, fc.array(others, { maxLength: 15 })).map(([touches, more]) => {
  const facts = [...touchLog(touches), ...more.flat()];
  return facts.map((fact, place) => ({ fact, place })).sort((p, q) => p.fact.step - q.fact.step || p.place - q.place).map(({ fact }) => fact);
});
