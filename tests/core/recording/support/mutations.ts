import type { Rng } from '../../../../src/core/base/rng.ts';
import { checksumOf, contentHash } from '../../../../src/core/recording/checksum.ts';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Branch = Json[] | { [key: string]: Json };

const below = (rng: Rng, end: number): number => Math.floor(rng.between(0, end));
const pick = <Value>(rng: Rng, values: readonly Value[]): Value => values[below(rng, values.length)]!;

/** An accident to a text: bits flipped, a stretch lost, doubled, overwritten or turned round, or the end cut off. */
export function damagedText(text: string, rng: Rng): string {
  const bytes = Buffer.from(text);
  const at = below(rng, bytes.length);
  const stretch = bytes.subarray(at, at + 1 + below(rng, 60));
  const [before, after, rest] = [bytes.subarray(0, at), bytes.subarray(at + stretch.length), bytes.subarray(at)];
  const joined = (...parts: Uint8Array[]): string => Buffer.concat(parts).toString('utf8');
  switch (below(rng, 7)) {
    case 0:
      return joined(before, Buffer.from(stretch.map((byte) => byte ^ (1 << below(rng, 8)))), after);
    case 1:
      return joined(before, Buffer.from([bytes[at]! ^ (1 << below(rng, 8))]), bytes.subarray(at + 1));
    case 2:
      return joined(before, after);
    case 3:
      return joined(before, stretch, rest);
    case 4:
      return joined(before);
    case 5:
      return joined(before, Buffer.from(Array.from(stretch, () => below(rng, 256))), after);
    default:
      return joined(before, Buffer.from([...stretch].reverse()), after);
  }
}

/** A text that a careful forger made of a run file: one to three members changed, all hashes taken anew, and now and then a name twice. */
export function forgedText(text: string, rng: Rng): string {
  const content = JSON.parse(text) as { [key: string]: Json };
  for (let k = 0; k <= below(rng, 3); k++) forge(content, rng);
  const header = content['header'];
  if (below(rng, 4) > 0 && isPlain(header) && header['scenario'] !== undefined) header['scenarioHash'] = contentHash(header['scenario']);
  const forged = JSON.stringify({ ...content, checksum: checksumOf(content) });
  return below(rng, 6) === 0 ? withNumbersAsText(withNameTwice(forged, rng), rng) : forged;
}

const isPlain = (value: Json | undefined): value is { [key: string]: Json } => typeof value === 'object' && value !== null && !Array.isArray(value);
const isBranch = (value: Json | undefined): value is Branch => typeof value === 'object' && value !== null;

/** Goes down at random and changes something there. */
function forge(root: Branch, rng: Rng): void {
  let branch = root;
  let key = pick(rng, Object.keys(root));
  for (;;) {
    const child = (branch as Record<string, Json>)[key];
    if (!isBranch(child) || Object.keys(child).length === 0 || below(rng, 5) === 0) break;
    branch = child;
    key = pick(rng, Object.keys(child));
  }
  const members = branch as Record<string, Json>;
  const old = members[key]!;
  switch (below(rng, 8)) {
    case 0:
      if (Array.isArray(branch)) branch.splice(Number(key), 1);
      else Reflect.deleteProperty(branch, key);
      return;
    case 1:
      if (Array.isArray(branch)) branch.push(structuredClone(old));
      else members[pick(rng, JUNK_NAMES)] = structuredClone(old);
      return;
    case 2:
      members[key] = typeof old === 'number' ? old * pick(rng, [-1, 0.5, 2, 1e9, 1e300]) : pick(rng, NUMBERS);
      return;
    case 3:
      members[key] = typeof old === 'string' ? edited(old, rng) : JSON.stringify(old);
      return;
    case 4:
      if (Array.isArray(old)) old.reverse();
      else members[key] = [old];
      return;
    default:
      members[key] = structuredClone(pick(rng, JUNK));
  }
}

const JUNK_NAMES: readonly string[] = ['', 'constructor', 'toString', 'hasOwnProperty', 'More. And more', 'a\nb', '"', 'x'.repeat(300), '💉'];
const NUMBERS: readonly number[] = [0, -1, 1, 0.5, 1e-320, 1e21, 9007199254740992, -1e308, 4294967296];
const JUNK: readonly Json[] = [null, true, '', 'NaN', 'Two. Sentences! Here?', 'line\nline', 'A'.repeat(5000), [], {}, [[[[[[]]]]]], { a: { b: { c: [1, { d: null }] } } }, [null], { length: 3 }, { constructor: 1, toString: null }];

/** The string a little longer, shorter, or with another character. */
function edited(text: string, rng: Rng): string {
  const at = below(rng, text.length + 1);
  return pick(rng, [text.slice(0, at), `${text.slice(0, at)}A${text.slice(at)}`, `${text.slice(0, at)}~${text.slice(at + 1)}`, `${text}${text}`, text.toUpperCase(), '-'.repeat(at)]);
}

/** One member doubled in the text, which JSON allows; the last one counts, so that the checksum may no longer fit. */
function withNameTwice(text: string, rng: Rng): string {
  const names = [...text.matchAll(/"(\w+)":(?:-?\d[\d.e+-]*|"[^"\\]*"|null)(?=[,}])/g)];
  const found = pick(rng, names);
  const at = found.index;
  return `${text.slice(0, at)}"${pick(rng, [found[1]!, '__proto__'])}":${pick(rng, ['7', 'null', '"x"', '{"a":1}', '[]'])},${text.slice(at)}`;
}

/** A number written as no file of ours writes it. */
const withNumbersAsText = (text: string, rng: Rng): string => text.replace(/(?<=":)\d+(?=[,}])/, pick(rng, ['1e999', '-1e999', '1E3', '-0', 'NaN', '0x10', '1e-999', '00', '9'.repeat(400)]));

/** Valid JSON that is no run. */
export const OTHER_JSON: readonly unknown[] = [
  null,
  0,
  '',
  'sterile-field-run',
  [],
  {},
  [{ format: 'sterile-field-run' }],
  { format: null },
  { format: 'A. B. C!' },
  { format: 'sterile-field-run' },
  { format: 'sterile-field-run', version: 1e9 },
  { format: 'sterile-field-run', version: 1, checksum: 'x' },
  { format: 'sterile-field-run', version: 1, checksum: { a: 'Two. Sentences.' } },
  { format: 'sterile-field-run-archive', version: 1, files: [] },
  { format: 'sterile-field-scenario', version: 1, id: 'x', title: 'X', summary: 'X', seed: 1, station: 'field' },
  { type: 'FeatureCollection', features: [{ type: 'Feature', geometry: { type: 'Point', coordinates: [1, 2] } }] },
  { name: 'package', version: '1.0.0', dependencies: {} },
  { resourceType: 'Bundle', entry: [] },
  { statements: [{ actor: {}, verb: {}, object: {} }] },
];
