import { expect } from 'vitest';
import type { Break } from '../../src/core/ledger/break.ts';
import type { RunResult } from '../../src/core/run/result.ts';

/**
 * A break as it must be. Surfaces are ids; the last part may be a set of stretches, `drape.left#1:{30..34}`, of which at least one
 * must be there. `spread` lists depth and surface, `1 drape.left#1:{30..34}`, and is complete: nothing else may have been spoiled.
 */
export interface ExpectedBreak {
  readonly rule: string;
  readonly surface: string;
  readonly against: string | null;
  readonly spread: readonly string[];
  readonly severity?: Break['severity'];
  /** Rules that made it worse later on. */
  readonly escalatedBy?: readonly string[];
}

/** Compares the breaks of a run with those expected, in order, each with its root and all that it spread to. */
export function expectBreaks(result: RunResult, expected: readonly ExpectedBreak[]): void {
  const seen = result.breaks.map((known, k): ExpectedBreak => {
    const like = expected[k];
    return {
      rule: known.rule,
      surface: named(known.surface, like ? [like.surface] : []),
      against: known.against === null ? null : named(known.against, like?.against ? [like.against] : []),
      spread: spreadOf(known, like?.spread ?? []),
      ...(like?.severity ? { severity: known.severity } : {}),
      ...(known.escalatedBy || like?.escalatedBy ? { escalatedBy: known.escalatedBy ?? [] } : {}),
    };
  });
  expect(seen).toEqual(expected.map((like) => ({ ...like, spread: [...like.spread].sort() })));
}

function spreadOf(known: Break, sets: readonly string[]): string[] {
  const lines = known.spread.map(({ surface, depth }) => named(`${depth} ${surface}`, sets));
  return [...new Set(lines)].sort();
}

/** The set that an id belongs to, or the id itself. */
function named(id: string, sets: readonly string[]): string {
  return sets.find((set) => set === id || isIn(id, set)) ?? id;
}

function isIn(id: string, set: string): boolean {
  const range = /^(.*)\{(\d+)\.\.(\d+)\}$/.exec(set);
  if (!range || !id.startsWith(range[1]!)) return false;
  const number = id.slice(range[1]!.length);
  return /^\d+$/.test(number) && Number(number) >= Number(range[2]) && Number(number) <= Number(range[3]);
}
