import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { canonicalJson, scenarioHash } from '../../../src/core/scenario/scenarioHash.ts';
import { fileWith, sourceWith } from './source.ts';

const hashOf = (text: string): string => {
  const result = parseScenario(text);
  if (!result.ok) throw new Error(result.error.message);
  return scenarioHash(result.value);
};

describe('The hash of a scenario', () => {
  it('does not depend on the order of the fields, on blanks, or on defaults written out', () => {
    const turned = JSON.stringify(Object.fromEntries(Object.entries(sourceWith({})).reverse()));
    expect(hashOf(turned)).toBe(hashOf(fileWith({})));
    expect(hashOf(fileWith({ 'room.rails.xM': 0.49, minutes: 6.0 }))).toBe(hashOf(fileWith({})));
  });

  it('changes with any value, however little', () => {
    const hashes = [fileWith({}), fileWith({ seed: 8 }), fileWith({ title: 'The leasT' }), fileWith({ 'cord.friction': 0.30000000000000004 }), fileWith({ cues: [{ atS: 1, kind: 'itch' }] })].map(hashOf);
    expect(new Set(hashes).size).toBe(hashes.length);
  });

  it('is 16 hexadecimal digits', () => {
    expect(hashOf(fileWith({}))).toMatch(/^[0-9a-f]{16}$/);
  });
});

describe('Canonical JSON', () => {
  it('holds the same value as the JSON that it came from', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(JSON.parse(canonicalJson(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 6 },
    );
  });

  it('puts names in order at every depth, keeps lists in theirs, and drops names without a value', () => {
    expect(canonicalJson({ b: [2, 1], a: { d: 1, c: undefined, B: 'é"' } })).toBe('{"a":{"B":"é\\"","d":1},"b":[2,1]}');
  });
});
