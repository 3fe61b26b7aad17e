import { describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { shippedScenarios } from './shipped.ts';

const ODD: readonly string[] = ['null', '-1', '1e999', '"x"', '[]', '{}', 'true', '0', '{"__proto__":1}', '[[[[]]]]', '"\\ud800"', '1e-320', '{"constructor":{}}'];
const RUBBLE = '{}[]",:0 \n\\-eE\u0000é';

/** Goal: no damage to a file can break the reader. Method: shipped files with letters lost, doubled, or replaced, and values swapped. */
function damaged(text: string, rng: Rng): string {
  const at = Math.floor(rng.between(0, text.length));
  switch (Math.floor(rng.between(0, 8))) {
    case 0:
      return text.slice(0, at);
    case 1:
      return text.slice(0, at) + text.slice(at + 1 + Math.floor(rng.between(0, 12)));
    case 2:
      return text.slice(0, at) + RUBBLE[Math.floor(rng.between(0, RUBBLE.length))] + text.slice(at);
    case 3:
      return text.slice(0, at) + text.slice(Math.floor(rng.between(0, at + 1)));
    default:
      return withOddValue(text, rng);
  }
}

function withOddValue(text: string, rng: Rng): string {
  const values = [...text.matchAll(/: ?("[^"]*"|-?[0-9.]+|true|false)/g)];
  const value = values[Math.floor(rng.between(0, values.length))];
  if (value === undefined) return text;
  const odd = ODD[Math.floor(rng.between(0, ODD.length))]!;
  return `${text.slice(0, value.index)}: ${odd}${text.slice(value.index + value[0].length)}`;
}

describe('A damaged scenario file', () => {
  it('never breaks the reader: 900 files, each a value or a sentence', () => {
    const rng = new Rng(20);
    const files = Object.values(shippedScenarios());
    const seen = new Map<string, number>();
    for (let k = 0; k < 900; k++) {
      let text = files[k % files.length]!;
      for (let hit = 0; hit <= k % 3; hit++) text = damaged(text, rng);
      const result = parseScenario(text, { ruleIds: ['one'] });
      if (result.ok) continue;
      seen.set(result.error.kind, (seen.get(result.error.kind) ?? 0) + 1);
      expect(result.error.message, text).toMatch(/^\S[^]*\.$/u);
      expect(result.error.message.length, text).toBeLessThan(500);
    }
    for (const kind of ['notJson', 'notAScenario', 'wrongField', 'inconsistent']) expect(seen.get(kind) ?? 0, kind).toBeGreaterThan(0);
  });
});
