import { IDBObjectStore as FDBObjectStore } from 'fake-indexeddb';
import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { packCommands } from '../../src/core/recording/packedCommands.ts';
import { readRunFile } from '../../src/core/recording/readRunFile.ts';
import { runFileErrorWords } from '../../src/core/recording/runFileError.ts';
import type { RunFile } from '../../src/core/recording/recording.ts';
import { SIMULATION_VERSION } from '../../src/core/recording/simulationVersion.ts';
import { contentHashOf } from '../../src/storage/contentHash.ts';
import { RunStore } from '../../src/storage/RunStore.ts';
import { readRunMember } from '../../src/storage/archive/readRunMember.ts';
import type { ArrivedRun } from '../../src/storage/keepRun.ts';
import { finishedRun, playFor, testHeader } from '../core/recording/support/sampleRun.ts';
import { freshDatabase, oldDatabase, rawDatabase } from './support/freshDatabase.ts';
import { withBreaks } from './support/withBreaks.ts';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';

const NOW = '2026-05-06T07:08:09Z';
const HOUR_MS = 3_600_000;

beforeEach(() => freshDatabase());

async function storeWith(...runs: RunFile[]): Promise<RunStore> {
  const store = await RunStore.open();
  for (const run of runs) await (await store.begin(run.header)).finish(run);
  return store;
}

const named = (runId: string, steps = 200): RunFile => {
  const run = finishedRun(steps);
  return { ...run, header: { ...run.header, runId } };
};

async function arrived(run: RunFile): Promise<ArrivedRun> {
  const read = await readRunMember(new Uint8Array(new TextEncoder().encode(writeRunFile(run))), NOW);
  if (!read.ok) throw new Error(read.error);
  return read.value;
}

async function change(table: string, key: string, value: unknown): Promise<void> {
  const raw = await rawDatabase();
  if (value === undefined) await raw.delete(table, key);
  else await raw.put(table, value);
  raw.close();
}

describe('The line of a run', () => {
  it('tells breaks by severity and what was left without a remedy', async () => {
    const store = await storeWith(withBreaks(named('a'), ['critical', 'critical', 'minor'], [0]));
    const [line] = await store.list();
    expect(line).toMatchObject({ verdict: named('a').score!.verdict, total: named('a').score!.total });
    expect(line).toMatchObject({ scenarioId: 'recording-test', simulation: SIMULATION_VERSION, breaks: { minor: 1, major: 0, critical: 2 }, unremediedCriticals: 1, finished: true, deletedAt: null, exportedAt: null });
    expect(line?.contentHash).toMatch(/^[0-9a-f]{16}$/);
  });

  it('that is damaged is made again from the recording, which the list says', async () => {
    const store = await storeWith(named('a'), named('b'));
    const before = await store.list();
    await change('summaries', 'a', { key: 'a', version: 1, title: 5 });
    const listing = await store.listing();
    expect(listing.runs).toEqual(before);
    expect(listing.notes).toEqual(['The line of “Ein Übungsfeld” of 2026-02-03 10:20 in the list was damaged and has been made again from its recording.']);
    expect(await store.listing()).toEqual({ runs: before, notes: [] });
  });

  it('that is missing is made again, and one whose recording is gone says so', async () => {
    const store = await storeWith(named('a'), named('b'));
    const before = await store.list();
    await change('summaries', 'a', undefined);
    await change('bodies', 'b', undefined);
    const runs = await store.list();
    expect(runs[0]).toEqual(before[0]);
    expect(runs[1]).toMatchObject({ key: 'b', fault: expect.stringMatching(/^The recording of this run is no longer in this browser.*\.$/) });
    expect(await store.load('b')).toMatchObject({ ok: false });
  });

  it('is listed with its fault when the recording is damaged as well, and the rest with it', async () => {
    const store = await storeWith(named('a'), named('b'));
    await change('summaries', 'a', undefined);
    await change('bodies', 'a', { version: 1, key: 'a', zipped: new Uint8Array([0x1f, 0x8b, 1, 2]) });
    expect((await store.list()).map(({ key, fault }) => [key, fault === null])).toEqual([['b', true], ['a', false]]);
    expect(await store.load('a')).toEqual({ ok: false, error: 'What the browser kept of this run is damaged and cannot be read; it is left as it is until you delete it.' });
  });

  it('is found singly when the list cannot be read as one', async () => {
    const store = await storeWith(named('a'), named('b'), named('c'));
    const prototype = FDBObjectStore.prototype as unknown as IDBObjectStore;
    const { get } = prototype;
    const { getAll } = prototype;
    const all = vi.spyOn(prototype, 'getAll').mockImplementation(function (this: IDBObjectStore, ...asked) {
      if (this.name === 'summaries') throw new DOMException('One record is damaged.', 'DataError');
      return getAll.apply(this, asked);
    });
    const single = vi.spyOn(prototype, 'get').mockImplementation(function (this: IDBObjectStore, key) {
      if (this.name === 'summaries' && key === 'b') throw new DOMException('This record is damaged.', 'DataError');
      return get.call(this, key);
    });
    const { runs, notes } = await store.listing();
    all.mockRestore();
    single.mockRestore();
    expect(runs.map(({ key, fault }) => [key, fault])).toEqual([['a', null], ['b', null], ['c', null]]);
    expect(notes).toHaveLength(1);
  });
});

describe('A deleted run', () => {
  it('can be taken back whole, also after the page was closed', async () => {
    const run = named('a');
    const store = await storeWith(run, named('b'));
    expect(await store.setDeleted(['a'], NOW)).toBeNull();
    expect((await store.list()).map(({ key }) => key)).toEqual(['b']);
    const later = await RunStore.open();
    await later.deleteExpired(Date.parse(NOW) + 23 * HOUR_MS);
    expect((await later.listing()).runs.find(({ key }) => key === 'a')?.deletedAt).toBe(NOW);
    expect(await later.setDeleted(['a'], null)).toBeNull();
    expect((await later.list()).map(({ key }) => key)).toEqual(['a', 'b']);
    expect(await later.load('a')).toMatchObject({ ok: true, value: { recording: run } });
  });

  it('goes for good once that time is over, and only then', async () => {
    const store = await storeWith(named('a'), named('b'));
    await store.setDeleted(['a'], NOW);
    await store.deleteExpired(Date.parse(NOW) - HOUR_MS);
    expect((await store.listing()).runs).toHaveLength(2);
    await store.deleteExpired(Date.parse(NOW) + 25 * HOUR_MS);
    expect((await store.listing()).runs.map(({ key }) => key)).toEqual(['b']);
    const raw = await rawDatabase();
    expect(await raw.getAllKeys('bodies')).toEqual(['b']);
    raw.close();
  });

  it('with a damaged line is marked without touching the rest, and taken back the same', async () => {
    const store = await storeWith(named('a'));
    await change('summaries', 'a', { key: 'a', version: 9, own: 'of a newer trainer' });
    await store.setDeleted(['a'], NOW);
    expect((await store.listing()).runs).toMatchObject([{ key: 'a', deletedAt: NOW }]);
    await store.setDeleted(['a'], null);
    const raw = await rawDatabase();
    expect(await raw.get('summaries', 'a')).toMatchObject({ version: 9, own: 'of a newer trainer', deletedAt: null });
    raw.close();
  });
});

describe('A run that arrives from a file', () => {
  it('is kept once, byte for byte', async () => {
    const store = await RunStore.open();
    const run = await arrived(named('a'));
    expect(await store.keep(run)).toEqual({ ok: true, value: 'new' });
    expect(await store.keep(run)).toEqual({ ok: true, value: 'same' });
    expect(await store.list()).toHaveLength(1);
    expect(await store.zipped('a')).toEqual({ ok: true, value: run.zipped });
  });

  it('and was played here is the same run', async () => {
    const run = named('a');
    const store = await storeWith(run);
    expect(await store.keep(await arrived(run))).toEqual({ ok: true, value: 'same' });
  });

  it('is taken back when it had been deleted here, or had lost its recording', async () => {
    const run = named('a');
    const store = await storeWith(run);
    await store.setDeleted(['a'], NOW);
    expect(await store.keep(await arrived(run))).toEqual({ ok: true, value: 'takenBack' });
    expect(await store.list()).toHaveLength(1);
    await change('bodies', 'a', undefined);
    expect(await store.keep(await arrived(run))).toEqual({ ok: true, value: 'takenBack' });
    expect(await store.load('a')).toMatchObject({ ok: true, value: { recording: run } });
  });

  it('under an id that is here with another content is kept beside it, once', async () => {
    const store = await storeWith(named('a'));
    const forged = await arrived(withBreaks(named('a'), ['minor']));
    expect(await store.keep(forged)).toEqual({ ok: true, value: 'beside' });
    expect(await store.keep(forged)).toEqual({ ok: true, value: 'same' });
    const runs = await store.list();
    expect(runs.map(({ key, runId, breaks }) => [key === 'a', runId, breaks.minor])).toEqual([[true, 'a', 0], [false, 'a', 1]]);
    for (const { key } of runs) expect(await store.load(key)).toMatchObject({ ok: true });
  });

  it('is compared with what is kept in parts, too', async () => {
    const store = await RunStore.open();
    const journal = await store.begin(testHeader('a'));
    const { recorder } = playFor(240, testHeader('a'));
    await journal.append(recorder.takeIncrement()!);
    expect(await store.keep(await arrived(recorder.soFar()))).toEqual({ ok: true, value: 'same' });
    expect(await store.keep(await arrived(named('a', 300)))).toEqual({ ok: true, value: 'beside' });
    expect((await store.brokenOff()).map(({ key }) => key)).toEqual(['a']);
  });

  it('is not kept in part when the room runs out', async () => {
    const store = await RunStore.open();
    const put = vi.spyOn(FDBObjectStore.prototype as unknown as IDBObjectStore, 'put');
    const { put: real } = rawStores;
    put.mockImplementation(function (this: IDBObjectStore, value: unknown) {
      if (this.name === 'summaries') throw new DOMException('Full.', 'QuotaExceededError');
      return real.call(this, value);
    });
    expect(await store.keep(await arrived(named('a')))).toMatchObject({ ok: false, error: expect.stringMatching(/^The browser has no room left .*\.$/) });
    put.mockRestore();
    const raw = await rawDatabase();
    expect([await raw.count('bodies'), await raw.count('summaries')]).toEqual([0, 0]);
    raw.close();
  });
});

const rawStores = { put: (FDBObjectStore.prototype as unknown as IDBObjectStore).put };

describe('Runs kept by version 1 of the store', () => {
  it('are all there after the change of version, finished or broken off', async () => {
    const text = readFileSync(new URL('../fixtures/run-v1.json', import.meta.url), 'utf8');
    const read = readRunFile(text);
    if (!read.ok) throw new Error(runFileErrorWords(read.error));
    const old = JSON.parse(text) as { header: { runId: string }; steps: number; commands: unknown; hashes: string; result: unknown };
    const { recorder } = playFor(240, testHeader('open'));
    const half = recorder.soFar();
    const kept = (runId: string, run: object): object => ({ version: 1, runId, parts: 1, ...run });
    const part = (runId: string, steps: number, commands: unknown, hashes: readonly string[]): object => ({ version: 1, runId, part: 0, fromStep: 0, toStep: steps, commands, hashes });
    const doneId = old.header.runId;
    await oldDatabase(async (database) => {
      await database.put('runs', kept(doneId, { header: old.header, steps: old.steps, result: old.result }));
      await database.put('parts', part(doneId, old.steps, old.commands, old.hashes.match(/.{16}/g)!));
      await database.put('runs', kept('open', { header: half.header, steps: half.steps, result: null }));
      await database.put('parts', part('open', half.steps, packCommands(half.commands), half.hashes));
      await database.put('runs', { version: 1, runId: 'broken', header: null });
    });
    const store = await RunStore.open();
    const { runs, notes } = await store.listing();
    expect(Object.fromEntries(runs.map(({ key, finished, fault }) => [key, [finished, fault === null]]))).toEqual({ [doneId]: [true, true], open: [false, true], broken: [false, false] });
    expect(notes).toEqual([]);
    expect(await store.load(doneId)).toMatchObject({ ok: true, value: { recording: read.value } });
    expect(await store.load('open')).toMatchObject({ ok: true, value: { recording: half } });
    expect((await store.brokenOff()).map(({ key }) => key)).toEqual(['open', 'broken']);
    const zipped = await store.zipped(doneId);
    const reread = await readRunMember(zipped.ok ? zipped.value : new Uint8Array(), NOW);
    expect(reread).toMatchObject({ ok: true, value: { summary: { contentHash: contentHashOf(read.value).contentHash } } });
    expect(await store.keep(await arrived(read.value))).toEqual({ ok: true, value: 'same' });
  });
});
