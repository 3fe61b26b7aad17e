import { parse } from 'csv-parse/sync';
import { crc32, gzipSync, inflateRawSync } from 'node:zlib';
import { createHash } from 'node:crypto';
import { zipSync, type Zippable } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { RunFile } from '../../src/core/recording/recording.ts';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { csvText } from '../../src/storage/archive/csv.ts';
import { readArchive, type ArrivedFile } from '../../src/storage/archive/readArchive.ts';
import { readRunMember } from '../../src/storage/archive/readRunMember.ts';
import { ArchiveWriter } from '../../src/storage/archive/writeArchive.ts';
import { finishedRun } from '../core/recording/support/sampleRun.ts';

const NOW = '2026-05-06T07:08:09Z';
const base = finishedRun(200);
const named = (runId: string): RunFile => ({ ...base, header: { ...base.header, runId } });
const zippedRun = (run: RunFile): Uint8Array<ArrayBuffer> => new Uint8Array(gzipSync(writeRunFile(run)));

async function archiveOf(...runs: RunFile[]): Promise<Uint8Array<ArrayBuffer>> {
  const archive = new ArchiveWriter(NOW);
  for (const run of runs) {
    const read = await readRunMember(zippedRun(run), NOW);
    if (!read.ok) throw new Error(read.error);
    await archive.addRun(read.value.summary, read.value.zipped);
  }
  return new Uint8Array(await (await archive.finish()).arrayBuffer());
}

async function arrivals(bytes: BlobPart, name = 'runs.zip'): Promise<ArrivedFile[]> {
  const found: ArrivedFile[] = [];
  for await (const arrived of readArchive(new File([bytes], name), NOW)) found.push(arrived);
  return found;
}

const told = (found: readonly ArrivedFile[]): string[] => found.map((arrived) => ('run' in arrived ? arrived.run.summary.runId : arrived.refusal));

/** Members of a zip, read after its specification (APPNOTE 4.3.7, 4.3.12) with the zlib of Node, as a second reader. */
function membersOf(zip: Uint8Array): Map<string, Buffer> {
  const bytes = Buffer.from(zip);
  const members = new Map<string, Buffer>();
  const end = bytes.lastIndexOf(Buffer.from('PK\u0005\u0006'));
  let at = bytes.readUInt32LE(end + 16);
  for (let k = 0; k < bytes.readUInt16LE(end + 10); k++) {
    const [method, sum, packed, size, nameLength] = [bytes.readUInt16LE(at + 10), bytes.readUInt32LE(at + 16), bytes.readUInt32LE(at + 20), bytes.readUInt32LE(at + 24), bytes.readUInt16LE(at + 28)];
    const name = bytes.toString('utf8', at + 46, at + 46 + nameLength);
    const local = bytes.readUInt32LE(at + 42);
    const from = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const content = method === 0 ? bytes.subarray(from, from + packed) : inflateRawSync(bytes.subarray(from, from + packed));
    expect([content.length, crc32(content)], name).toEqual([size, sum]);
    members.set(name, content);
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return members;
}

describe('An archive of runs', () => {
  it('opens in a second reader: run files as they were, a table, and a manifest with the SHA-256 of each', async () => {
    const [a, b] = [named('aa'), named('bb')];
    const members = membersOf(await archiveOf(a, b));
    const manifest = JSON.parse(members.get('manifest.json')!.toString()) as { format: string; version: number; madeAt: string; files: { name: string; bytes: number; sha256: string }[] };
    expect(manifest).toMatchObject({ format: 'sterile-field-run-archive', version: 1, madeAt: NOW });
    expect([...members.keys()]).toEqual([...manifest.files.map(({ name }) => name), 'manifest.json']);
    expect(manifest.files.map(({ name }) => name)).toEqual(['runs/20260203-1020-recording-test-aa.json.gz', 'runs/20260203-1020-recording-test-bb.json.gz', 'runs.csv']);
    for (const { name, bytes, sha256 } of manifest.files) expect([members.get(name)!.length, createHash('sha256').update(members.get(name)!).digest('hex')]).toEqual([bytes, sha256]);
    expect(members.get(manifest.files[0]!.name)!.equals(Buffer.from(zippedRun(a)))).toBe(true);
  });

  it('has a table that an independent reader of RFC 4180 takes in, one row for each run', async () => {
    const text = membersOf(await archiveOf(named('aa'), named('bb'))).get('runs.csv')!.toString();
    expect(text).toMatch(/\r\n$/);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    const rows = parse(text, { columns: true, record_delimiter: '\r\n' }) as Record<string, string>[];
    expect(rows).toHaveLength(2);
    expect(rows[1]).toMatchObject({ run_id: 'bb', scenario_title: 'Ein Übungsfeld', started_at: '2026-02-03T10:20:30Z', seconds: '1.7', finished: 'yes', verdict: 'not yet', breaks_critical: '0', file: 'runs/20260203-1020-recording-test-bb.json.gz' });
  });

  it('gives its runs back', async () => {
    const found = await arrivals(await archiveOf(named('aa'), named('bb')));
    expect(told(found)).toEqual(['aa', 'bb']);
    expect(found.map(({ share }) => share)).toEqual([0.5, 1]);
    expect('run' in found[0]! && found[0].run).toMatchObject({ zipped: zippedRun(named('aa')), summary: { key: 'aa', exportedAt: NOW, finished: true } });
  });
});

describe('Cells of a table', () => {
  it('come back as they were, whatever stands in them', () => {
    const cells = ['plain', 'a,b', 'say "no"', 'two\r\nlines', ' edges ', '', 'Größe'];
    expect(parse(csvText([cells, cells]), { record_delimiter: '\r\n' })).toEqual([cells, cells]);
    expect(csvText([['a,b', 'say "no"', 3.5, null]])).toBe('"a,b","say ""no""",3.5,\r\n');
  });

  it('are no formulas to a spreadsheet', () => {
    const cells = ['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '=HYPERLINK("a","b")'];
    expect((parse(csvText([cells]), { record_delimiter: '\r\n' }) as string[][])[0]).toEqual(cells.map((cell) => `'${cell}`));
    expect(csvText([[-1]])).toBe('-1\r\n');
  });
});

describe('What is wrong in an archive is refused in one sentence each, and the rest is taken in', () => {
  const sentence = /^[A-Z].{20,}[a-z]\.$/;

  it.each<[string, (name: string, bytes: Uint8Array) => Zippable, RegExp]>([
    ['a run that is not the one listed', (name) => ({ [name]: zippedRun(named('zz')) }), /SHA-256/],
    ['a file of another kind', () => ({ 'letter.txt': new Uint8Array([65]) }), /not a run file/],
    ['a run cut off, not listed', (_name, bytes) => ({ 'runs/x.json.gz': bytes.slice(0, 300) }), /damaged zip/],
    ['JSON of another kind', () => ({ 'x.json': new TextEncoder().encode('{"format":"other"}') }), /“other”/],
    ['an empty file', () => ({ 'x.json': new Uint8Array() }), /empty/],
  ])('%s', async (_what, change, expected) => {
    const members = Object.fromEntries([...membersOf(await archiveOf(named('aa'), named('bb')))].map(([name, content]) => [name, new Uint8Array(content)]));
    const first = Object.keys(members)[0]!;
    const found = await arrivals(new Uint8Array(zipSync({ ...members, ...change(first, members[first]!) })));
    const refusals = found.flatMap((arrived) => ('refusal' in arrived ? [arrived.refusal] : []));
    expect(refusals).toEqual([expect.stringMatching(expected)]);
    expect(refusals[0]).toMatch(sentence);
    expect(told(found)).toContain('bb');
  });

  it('a listed file that is not there, a damaged list, a list of a newer trainer', async () => {
    const members = Object.fromEntries([...membersOf(await archiveOf(named('aa'), named('bb')))].map(([name, content]) => [name, new Uint8Array(content)]));
    const [first] = Object.keys(members) as [string];
    const { [first]: _, ...without } = members;
    expect(told(await arrivals(new Uint8Array(zipSync(without))))).toEqual(['bb', expect.stringMatching(/lists this file but does not hold it/)]);
    const list = (text: string): Uint8Array<ArrayBuffer> => new Uint8Array(zipSync({ ...members, 'manifest.json': new TextEncoder().encode(text) }));
    expect(told(await arrivals(list('{')))).toEqual([expect.stringMatching(sentence), 'aa', 'bb']);
    expect(told(await arrivals(list('{"format":"sterile-field-run-archive","version":2}')))).toEqual([expect.stringMatching(/newer trainer/)]);
  });

  it('nothing but what is no archive, and archives that are cut off anywhere', async () => {
    const whole = await archiveOf(named('aa'));
    for (const share of [0.01, 0.3, 0.9, 0.999]) expect(told(await arrivals(whole.slice(0, Math.floor(whole.length * share))))).toEqual([expect.stringMatching(sentence)]);
    expect(told(await arrivals(new Uint8Array(zipSync({}))))).toEqual([expect.stringMatching(/holds no runs|cut off/)]);
    expect(told(await arrivals('Dear reader', 'letter.json'))).toEqual([expect.stringMatching(/not JSON/)]);
  });

  it('an archive with any byte changed gives no other runs and no exception', async () => {
    const whole = await archiveOf(named('aa'), named('bb'));
    for (let k = 0; k < 60; k++) {
      const bytes = whole.slice();
      bytes[Math.floor((k / 60) * bytes.length)]! ^= 1 << (k % 8);
      for (const arrived of await arrivals(bytes)) {
        if ('refusal' in arrived) expect(arrived.refusal).toMatch(sentence);
        else expect(['aa', 'bb']).toContain(arrived.run.summary.runId);
      }
    }
  });

  it('zips that people pack themselves and single files are taken as well', async () => {
    const found = await arrivals(new Uint8Array(zipSync({ 'mine/one.json': new TextEncoder().encode(writeRunFile(named('aa'))), 'mine/.DS_Store': new Uint8Array([1]), '__MACOSX/one.json': new Uint8Array([1]) })));
    expect(told(found)).toEqual(['aa']);
    expect(told(await arrivals(zippedRun(named('cc')), 'run.json.gz'))).toEqual(['cc']);
    expect(told(await arrivals(writeRunFile(named('dd')), 'run.json'))).toEqual(['dd']);
  });
});
