import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonPlace } from '../../../src/core/scenario/jsonPlace.ts';

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe('The place at which a text stops being JSON', () => {
  it('is nowhere exactly if the text is JSON', () => {
    const piece = fc.constantFrom('{', '}', '[', ']', ',', ':', '"a"', '"', '1', '-', '01', '1.5', '1e', 'true', 'nul', 'null', ' ', '\n', '\\', '\u0001');
    const loose = fc.array(piece, { maxLength: 9 }).map((pieces) => pieces.join(''));
    const near = fc.tuple(fc.json(), fc.nat(), piece).map(([text, at, extra]) => text.slice(0, at % (text.length + 1)) + extra + text.slice(at % (text.length + 1)));
    fc.assert(
      fc.property(fc.oneof(fc.json(), loose, near), (text) => {
        expect(jsonPlace(text) === null).toBe(isJson(text));
      }),
      { numRuns: 3000, seed: 5 },
    );
  });

  it('is the first place from which no text could be continued to JSON', () => {
    expect(jsonPlace('{\n  "a": [1, 2,, 3]\n}')).toEqual({ line: 2, column: 14, expected: 'a value' });
  });

  it('is found in brackets as deep as the file allows', () => {
    expect(jsonPlace('['.repeat(200_000))).toEqual({ line: 1, column: 200_001, expected: 'a value or ]' });
    expect(jsonPlace('['.repeat(100_000) + ']'.repeat(100_000))).toBeNull();
  });

  it('is found behind a text as long as the file allows', () => {
    expect(jsonPlace(`"${'é'.repeat(250_000)}`)?.column).toBe(1);
    expect(jsonPlace(`"${'é'.repeat(250_000)}"`)).toBeNull();
  });
});
