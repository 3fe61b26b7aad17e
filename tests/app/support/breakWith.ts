import type { Break } from '../../../src/core/ledger/break.ts';

/** A break for tests; `parts` replace its defaults. */
export const breakWith = (parts: Partial<Break> = {}): Break => ({
  number: 1,
  rule: 'glove-on-face',
  step: 0,
  x: 0,
  y: 1,
  surface: 'glove',
  against: 'face',
  severity: 'major',
  reach: 'field',
  spread: [{ surface: 'glove', depth: 0, step: 0, touch: 1, from: null }],
  noticedStep: null,
  remediedStep: null,
  remedies: [],
  ...parts,
});
