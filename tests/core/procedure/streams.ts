import fc from 'fast-check';
import { expect } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import type { Progress } from '../../../src/core/procedure/observation.ts';

/** A station's judge of the work, as far as these checks need it. */
interface Judge<Seen> {
  readonly progress: Progress;
  observe(seen: Seen): void;
  hashInto(hash: StateHash): void;
  snapshot(): unknown;
  restore(saved: unknown): void;
}

/** What a step did wrong, in words, or null. */
export type Check<Seen> = (before: Progress, after: Progress, seen: Seen) => string | null;

export const faultIf = (wrong: boolean, fault: string): string | null => (wrong ? fault : null);

/** Stretches of some steps each, step by step. */
export function streamOf<Stretch extends { readonly steps: number }>(stretches: readonly Stretch[]): (Omit<Stretch, 'steps'> & { step: number })[] {
  let step = 0;
  return stretches.flatMap(({ steps, ...scene }) => Array.from({ length: steps }, () => ({ ...scene, step: step++ })));
}

/** Shows the stream and judges the progress before and after every step; the first fault found. */
export function along<Seen extends { readonly step: number }>(judge: Judge<Seen>, stream: readonly Seen[], check: Check<Seen>): string | null {
  let before = judge.progress;
  for (const seen of stream) {
    judge.observe(seen);
    const after = judge.progress;
    const fault = check(before, after, seen);
    if (fault !== null) return `step ${seen.step}: ${fault}`;
    before = after;
  }
  return null;
}

const hashOf = (judge: Judge<never>): string => {
  const hash = new StateHash();
  judge.hashInto(hash);
  return hash.digest();
};

/** Asserts that a snapshot taken after `cut` steps goes on as the original does, also through JSON, and does not change with it. */
export function expectGoesOn<Seen>(fresh: () => Judge<Seen>, stream: readonly Seen[], cut: number): void {
  const at = stream.length === 0 ? 0 : cut % stream.length;
  const first = fresh();
  stream.slice(0, at).forEach((seen) => first.observe(seen));
  const snapshot = first.snapshot();
  const text = JSON.stringify(snapshot);
  const second = fresh();
  second.restore(JSON.parse(text));
  expect(hashOf(second)).toBe(hashOf(first));
  for (const seen of stream.slice(at)) {
    first.observe(seen);
    second.observe(seen);
  }
  expect(second.progress).toEqual(first.progress);
  expect(hashOf(second)).toBe(hashOf(first));
  expect(JSON.stringify(snapshot)).toBe(text);
}

/** Asserts a check of every step of work drawn at random. */
export const holdsThrough = <Work>(work: fc.Arbitrary<Work>, fault: (drawn: Work) => string | null, runs: fc.Parameters<[Work]>): void =>
  fc.assert(fc.property(work, (drawn) => void expect(fault(drawn)).toBeNull()), runs);
