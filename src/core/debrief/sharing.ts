import type { Fact } from '../ledger/fact.ts';

type Fields = { readonly [field: string]: unknown };
const isPlain = (value: unknown): value is Fields => typeof value === 'object' && value !== null;

/** Plain data with every part that is equal to that of `before` taken from there, so that equal parts are the very same. */
export function sharedWith<T>(value: T, before: unknown): T {
  if (!isPlain(value) || !isPlain(before) || Array.isArray(value) !== Array.isArray(before)) return value;
  const fields = Object.keys(value);
  const parts = fields.map((field) => sharedWith((value as Fields)[field], before[field]));
  const same = fields.length === Object.keys(before).length && fields.every((field, k) => parts[k] === before[field]);
  if (same) return before as T;
  return (Array.isArray(value) ? parts : Object.fromEntries(fields.map((field, k) => [field, parts[k]]))) as T;
}

/** Facts that came from another thread have names of their own each; here equal names are kept once. */
export class Names {
  private readonly known = new Map<string, string>();

  shared(fact: Fact): Fact {
    if (fact.kind === 'touch.began') return { ...fact, kind: 'touch.began', a: this.one(fact.a), b: this.one(fact.b) };
    if (fact.kind === 'touch.ended') return { ...fact, kind: 'touch.ended' };
    return 'surface' in fact && typeof fact.surface === 'string' ? ({ ...fact, surface: this.one(fact.surface) } as Fact) : fact;
  }

  private one(name: string): string {
    const known = this.known.get(name);
    if (known !== undefined) return known;
    this.known.set(name, name);
    return name;
  }
}
