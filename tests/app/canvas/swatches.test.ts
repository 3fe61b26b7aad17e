import { describe, expect, it } from 'vitest';
import { swatch } from '../../../src/app/canvas/swatches.ts';

describe('swatches', () => {
  it('can stand beside each other: every pattern has a name of its own', () => {
    const ids = [swatch('unsterile'), swatch('unsterile'), swatch('became')].map((text) => /id="(\w+)"/.exec(text)?.[1]);
    expect(new Set(ids).size).toBe(3);
  });

  it('say nothing to a screen reader, because a word stands beside them', () => {
    for (const mark of ['sterile', 'unsterile', 'became', 'prepared'] as const) expect(swatch(mark)).toContain('aria-hidden="true"');
  });
});
