import { gzipSync } from 'node:zlib';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';
import { readRunFile } from '../../../src/core/recording/readRunFile.ts';
import { runFileErrorWords } from '../../../src/core/recording/runFileError.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import { readRunMember } from '../../../src/storage/archive/readRunMember.ts';
import { withBreaks } from '../../storage/support/withBreaks.ts';
import { damagedText, forgedText, OTHER_JSON } from './support/mutations.ts';
import { finishedRun, playFor } from './support/sampleRun.ts';

/** Short recordings of every kind there is: finished, with breaks, broken off, and one file of every older version. */
const BASES: readonly string[] = [
  writeRunFile(finishedRun(130)),
  writeRunFile(withBreaks(finishedRun(10), ['critical', 'minor'], [1])),
  writeRunFile(playFor(130).recorder.soFar()),
  ...readdirSync('tests/fixtures').filter((name) => /^run-v\d+\.json$/.test(name)).map((name) => readFileSync(`tests/fixtures/${name}`, 'utf8')),
];

/** One sentence that begins with a capital and ends with a period, and after a semicolon says what to do. */
const ONE_SENTENCE = /^[A-Z][^.!?\n]*(?:[.!?][^ .!?\n][^.!?\n]*)*; (?:save|copy|choose|open|ask)\b[^.!?\n]*\.$/;

/** The answer to a text: whether it was read, or the sentence that refuses it. Fails when it is neither. */
function answer(text: string): 'read' | string {
  const read = readRunFile(text);
  if (!read.ok) return runFileErrorWords(read.error);
  // What is read is a run like any other: written again it is read the same.
  expect(readRunFile(writeRunFile(read.value))).toEqual(read);
  return 'read';
}

/** Reading all of them takes some ten seconds; a busy machine may need long for that (ms). */
const PATIENCE_MS = 300_000;

const count = (tally: Map<string, number>, kind: string): void => void tally.set(kind, (tally.get(kind) ?? 0) + 1);

describe('Ten thousand mutated run files', () => {
  it('damaged on their way (4,000) are refused in one sentence, unless nothing of the run changed', () => {
    const rng = new Rng(41);
    const originals = BASES.map((text) => readRunFile(text));
    const sentences = new Map<string, number>();
    for (let k = 0; k < 4000; k++) {
      const damaged = damagedText(BASES[k % BASES.length]!, rng);
      const read = readRunFile(damaged);
      if (read.ok) expect(read, damaged.slice(0, 400)).toEqual(originals[k % BASES.length]);
      else {
        const words = runFileErrorWords(read.error);
        expect(words).toMatch(ONE_SENTENCE);
        count(sentences, read.error.kind);
      }
    }
    for (const kind of ['damaged', 'truncated', 'garbled', 'notJson']) expect(sentences.get(kind), kind).toBeGreaterThan(5);
  }, PATIENCE_MS);

  it('forged with fitting checksums (5,000) reach every layer and are read right or refused in one sentence', () => {
    const rng = new Rng(42);
    const tally = new Map<string, number>();
    for (let k = 0; k < 5000; k++) {
      const forged = forgedText(BASES[k % BASES.length]!, rng);
      const told = answer(forged);
      if (told !== 'read') expect(told, forged.slice(0, 2000)).toMatch(ONE_SENTENCE);
      count(tally, told === 'read' ? 'read' : /not built as it should be: (\w+)/.exec(told)?.[1] ?? 'other');
    }
    for (const layer of ['read', 'header', 'commands', 'hashes', 'result', 'steps', 'other']) expect(tally.get(layer), layer).toBeGreaterThan(10);
  }, PATIENCE_MS);

  it('zipped and then damaged (800) are refused in one sentence or come out whole', async () => {
    const rng = new Rng(43);
    const tally = new Map<string, number>();
    for (let k = 0; k < 800; k++) {
      const whole = gzipSync(BASES[k % BASES.length]!);
      const at = Math.floor(rng.between(0, whole.length));
      const bytes = new Uint8Array(k % 3 === 0 ? whole.subarray(0, at) : whole);
      if (k % 3 > 0) bytes[at]! ^= 1 << Math.floor(rng.between(0, 8));
      const read = await readRunMember(bytes, '2026-05-06T07:08:09Z');
      if (!read.ok) expect(read.error).toMatch(ONE_SENTENCE);
      count(tally, read.ok ? 'read' : 'refused');
    }
    expect(tally.get('refused')).toBeGreaterThan(600);
  }, PATIENCE_MS);

  it('that are JSON of other kinds (200) are refused in one sentence', () => {
    for (let k = 0; k < 200; k++) {
      const told = answer(JSON.stringify(OTHER_JSON[k % OTHER_JSON.length], null, k % 4));
      expect(told).toMatch(ONE_SENTENCE);
    }
  });
});
