import { describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';
import { checksumOf } from '../../../src/core/recording/checksum.ts';
import { readRunFile } from '../../../src/core/recording/readRunFile.ts';
import { runFileErrorWords, type RunFileError } from '../../../src/core/recording/runFileError.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import { finishedRun } from './support/sampleRun.ts';

const text = writeRunFile(finishedRun(400));
type Content = Record<string, any>; // eslint-disable-line typescript/no-explicit-any -- the tests break every part of the shape

const errorOf = (input: string): RunFileError => {
  const read = readRunFile(input);
  if (read.ok) throw new Error('This was read as a run.');
  return read.error;
};
/** The sample with a change and, as a careful forger would, a checksum that fits again. */
const changed = (change: (content: Content) => void): string => {
  const content = JSON.parse(text) as Content;
  change(content);
  return JSON.stringify({ ...content, checksum: checksumOf(content) });
};

describe('What is no run file is refused with its reason', () => {
  it('nothing at all', () => {
    expect(errorOf('')).toEqual({ kind: 'empty' });
    expect(errorOf(' \n')).toEqual({ kind: 'empty' });
  });

  it('a file cut off anywhere after its first line says so', () => {
    for (const share of [0.1, 0.5, 0.9]) {
      const cut = text.slice(0, Math.floor(text.length * share));
      expect(errorOf(cut)).toEqual({ kind: 'truncated', length: cut.length });
    }
    expect(errorOf(text.trimEnd().slice(0, -1)).kind).toBe('truncated');
  });

  it('a picture, a letter, a table', () => {
    for (const other of ['\u0089PNG\r\n\u001a\n', 'Dear colleague,', 'a;b;c\n1;2;3', '{"half":', '\u001f\u008b\b\0']) expect(errorOf(other)).toEqual({ kind: 'notJson' });
  });

  it('JSON of another kind, naming what it is', () => {
    for (const other of ['null', '3', '"sterile-field-run"', '[]', '{}', '{"version":1}']) expect(errorOf(other)).toEqual({ kind: 'foreign', format: null });
    expect(errorOf('{"format":"sterile-field-scenario","version":1}')).toEqual({ kind: 'foreign', format: 'sterile-field-scenario' });
  });

  it('a file of a newer version, before its content is looked at', () => {
    expect(errorOf('{"format":"sterile-field-run","version":3,"anything":true}')).toEqual({ kind: 'newer', version: 3, known: 2 });
  });

  it('a version that is none', () => {
    for (const version of [0, -1, 1.5, '1', null]) expect(errorOf(JSON.stringify({ format: 'sterile-field-run', version }))).toMatchObject({ kind: 'wrongShape', path: 'version' });
  });

  it('one garbled in the middle', () => {
    expect(errorOf(text.replace('"engine":', '"engine";'))).toEqual({ kind: 'garbled' });
  });

  it('one whose content was changed but not its checksum', () => {
    expect(errorOf(text.replace('"seed":7', '"seed":8')).kind).toBe('damaged');
    expect(errorOf(text.replace('"breaks":[]', '"breaks":[1]')).kind).toBe('damaged');
  });

  it('one that nests deeper than any run', () => {
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`;
    expect(errorOf(text.replace('"breaks":[]', `"breaks":${deep}`))).toMatchObject({ kind: 'wrongShape', path: 'the file' });
  });
});

describe('A file with a fitting checksum but a wrong shape names the place', () => {
  it.each<[string, (content: Content) => void]>([
    ['header.seed', (content) => (content['header'].seed = -1)],
    ['header.startedAt', (content) => (content['header'].startedAt = 'yesterday')],
    ['header.runId', (content) => (content['header'].runId = '../../etc')],
    ['header', (content) => delete content['header'].engine && (content['header'].machine = 1)],
    ['steps', (content) => (content['steps'] = '400')],
    ['result.handling.pathM.left', (content) => (content['result'].handling.pathM.left = null)],
    ['hashes', (content) => (content['hashes'] = content['hashes'].slice(16))],
    ['hashes', (content) => (content['hashes'] = `${content['hashes'].slice(1)}g`)],
    ['commands.kinds', (content) => (content['commands'].kinds += 'x')],
    ['commands.steps', (content) => (content['commands'].kinds += 'R')],
    ['commands.steps', (content) => (content['commands'].steps = `zz${content['commands'].steps.slice(2)}`)],
    ['commands.leftX', (content) => (content['commands'].leftX += 'A')],
    ['commands.leftX', (content) => (content['commands'].leftX += 'g')],
    ['commands.rightY', (content) => (content['commands'].rightY += '!')],
    ['commands.others', (content) => content['commands'].others.push({ type: 'notice' })],
    ['commands.others.0.type', (content) => (content['commands'].others[0] = { type: 'cheat' })],
    ['commands, number 1', (content) => (content['commands'].rightX = `gggga${content['commands'].rightX.slice(2)}`)],
    ['checksum', (content) => delete content['checksum']],
  ])('%s', (path, change) => {
    const content = JSON.parse(text) as Content;
    change(content);
    const withChecksum = path === 'checksum' ? content : { ...content, checksum: checksumOf(content) };
    const error = errorOf(JSON.stringify(withChecksum));
    expect(error).toMatchObject({ kind: 'wrongShape' });
    expect(runFileErrorWords(error)).toContain(path);
  });

  it('and a scenario that is not the one that was played', () => {
    expect(errorOf(changed((content) => (content['header'].scenario.title = 'Another')))).toMatchObject({ kind: 'scenarioChanged' });
  });
});

it('every reason is one sentence', () => {
  const errors: RunFileError[] = [
    { kind: 'empty' },
    { kind: 'truncated', length: 12 },
    { kind: 'notJson' },
    { kind: 'garbled' },
    { kind: 'foreign', format: null },
    { kind: 'foreign', format: 'other' },
    { kind: 'newer', version: 3, known: 1 },
    { kind: 'wrongShape', path: 'header.seed', fault: 'is missing' },
    { kind: 'damaged', written: 'a', found: 'b' },
    { kind: 'scenarioChanged', written: 'a', found: 'b' },
  ];
  for (const error of errors) expect(runFileErrorWords(error)).toMatch(/^[A-Z][^.!?]*(?:\.[^ .!?][^.!?]*)*\.$/);
});

describe('Whatever happens to a file on its way', () => {
  /** One accident: a byte flipped, a stretch lost, doubled or moved, the end cut, a digit or bracket replaced. */
  function accident(rng: Rng): string {
    const at = Math.floor(rng.between(0, text.length));
    const length = Math.floor(rng.between(1, 40));
    const stretch = text.slice(at, at + length);
    switch (Math.floor(rng.between(0, 7))) {
      case 0:
        return text.slice(0, at) + String.fromCharCode(text.charCodeAt(at) ^ (1 << Math.floor(rng.between(0, 7)))) + text.slice(at + 1);
      case 1:
        return text.slice(0, at) + text.slice(at + length);
      case 2:
        return text.slice(0, at) + stretch + text.slice(at);
      case 3:
        return text.slice(0, at);
      case 4:
        return text.slice(0, at) + String(Math.floor(rng.between(0, 10))) + text.slice(at + 1);
      case 5:
        return text.slice(0, at) + '{}[]",:\\'[Math.floor(rng.between(0, 8))]! + text.slice(at + 1);
      default:
        return text.slice(0, at) + stretch.split('').reverse().join('') + text.slice(at + length);
    }
  }

  it('reading it neither throws nor accepts another content (2,000 accidents)', () => {
    const rng = new Rng(20260203);
    const original = readRunFile(text);
    const kinds = new Set<string>();
    for (let k = 0; k < 2000; k++) {
      const read = readRunFile(accident(rng));
      if (read.ok) expect(read).toEqual(original);
      else kinds.add(read.error.kind);
    }
    expect([...kinds].sort()).toEqual(expect.arrayContaining(['damaged', 'garbled', 'truncated']));
  });

  it('reading forged content neither throws nor hangs (2,000 forgeries)', () => {
    const rng = new Rng(77);
    const values: unknown[] = [null, true, -1, 1e308, 0.5, '', 'A'.repeat(50), [], {}, [[]], { toString: 1, __proto__: null, constructor: 2 }];
    const paths = Object.keys(flat(JSON.parse(text)));
    for (let k = 0; k < 2000; k++) {
      const path = paths[Math.floor(rng.between(0, paths.length))]!.split('.');
      const value = values[Math.floor(rng.between(0, values.length))];
      const forged = changed((content) => {
        const parent = path.slice(0, -1).reduce((part: Content, key) => part[key] as Content, content);
        parent[path.at(-1)!] = value;
      });
      expect(() => readRunFile(forged)).not.toThrow();
    }
  });

  const flat = (value: unknown, path = ''): Record<string, true> => {
    const here = path === '' ? {} : { [path]: true as const };
    if (typeof value !== 'object' || value === null) return here;
    return Object.assign(here, ...Object.entries(value).map(([key, child]) => flat(child, path === '' ? key : `${path}.${key}`)));
  };
});
