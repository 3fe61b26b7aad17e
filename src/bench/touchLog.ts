import { Rng } from '../core/base/rng.ts';
import type { Fact } from '../core/ledger/fact.ts';
import type { Surface } from '../core/ledger/surface.ts';

/**
 * A touch log over the surfaces of a room: that many touches, spread over that many steps, each lasting up to two seconds, between
 * parts of the hands and what they work with and on; one in five hundred of them is with something unsterile.
 */
export function touchLog(opening: readonly Fact[], touches: number, steps: number, seed: number): Fact[] {
  const chance = new Rng(seed);
  const surfaces = opening.flatMap((fact) => (fact.kind === 'surface.added' ? [fact.surface] : []));
  const pick = (list: readonly Surface[]): string => list[Math.floor(chance.next() * list.length)]!.id;
  const hands = surfaces.filter(({ kind }) => kind === 'glove' || kind === 'sleeve');
  const worked = surfaces.filter(({ role, kind }) => role === 'sterile' && kind !== 'glove' && kind !== 'sleeve');
  const unsterile = surfaces.filter(({ kind }) => kind === 'rail' || kind === 'pole' || kind === 'bareCord');
  const lines: { step: number; rank: number; fact: Fact }[] = [];
  for (let touch = 1; touch <= touches; touch++) {
    const step = 1 + Math.floor(chance.next() * (steps - 300));
    const end = step + Math.floor(chance.next() * 240);
    const [a, b] = [pick(chance.next() < 0.7 ? hands : worked), pick(chance.next() < 0.002 ? unsterile : worked)];
    if (a === b) continue;
    lines.push({ step, rank: touch, fact: { kind: 'touch.began', step, touch, a, b, x: 0, y: 1 } }, { step: end, rank: touches + touch, fact: { kind: 'touch.ended', step: end, touch } });
  }
  lines.sort((p, q) => p.step - q.step || p.rank - q.rank);
  return [...opening, ...lines.map(({ fact }) => fact)];
}
