import { beforeEach, describe, expect, it } from 'vitest';
import { RunStore } from '../../src/storage/RunStore.ts';
import { play, playFor, testHeader } from '../core/recording/support/sampleRun.ts';
import { freshDatabase, rawDatabase } from './support/freshDatabase.ts';

/** A run of five seconds in ten parts. */
async function keptRun(): Promise<void> {
  freshDatabase();
  const journal = await (await RunStore.open()).begin(testHeader());
  const { run, recorder } = playFor(0);
  while (run.stepCount < 600) {
    play(run, recorder, run.stepCount + 60);
    await journal.append(recorder.takeIncrement()!, run.snapshot());
  }
}

type Change = (record: any) => unknown; // eslint-disable-line typescript/no-explicit-any -- damage of any kind

async function damage(table: string, key: IDBValidKey, change: Change): Promise<void> {
  const raw = await rawDatabase();
  const record: unknown = await raw.get(table, key);
  await raw.put(table, change(record));
  raw.close();
}

/** Everything in the database, to see that reading leaves it alone. */
async function everything(): Promise<unknown> {
  const raw = await rawDatabase();
  const all = [await raw.getAll('runs'), await raw.getAll('parts'), await raw.getAll('snapshots'), await raw.getAll('bodies')];
  raw.close();
  return all;
}

beforeEach(() => keptRun());

describe('A damaged kept run', () => {
  it('with a part missing can be looked at up to there', async () => {
    const raw = await rawDatabase();
    await raw.delete('parts', ['run-1', 4]);
    raw.close();
    const before = await everything();
    const load = await (await RunStore.open()).load('run-1');
    expect(load).toMatchObject({ ok: true, value: { snapshot: null, fault: 'The kept run is damaged after 0:02 of 0:05; the part before can be looked at and saved, but not continued.' } });
    expect(load.ok && load.value.recording).toEqual(playFor(240).recorder.soFar());
    expect(await everything()).toEqual(before);
  });

  it.each<[string, Change]>([
    ['its steps', (part) => ({ ...part, fromStep: 1 })],
    ['its commands', (part) => ({ ...part, commands: { ...part.commands, leftX: '=' } })],
    ['its commands gone', (part) => ({ runId: part.runId, part: part.part })],
    ['commands of another part', (part) => ({ ...part, commands: { ...part.commands, steps: `A${part.commands.steps.slice(2)}` } })],
  ])('with a part wrong in %s can be looked at up to there', async (_what, change) => {
    await damage('parts', ['run-1', 7], change);
    const load = await (await RunStore.open()).load('run-1');
    expect(load.ok && load.value.recording.steps).toBe(420);
    expect(load.ok && load.value.fault).toMatch(/damaged after 0:03 of 0:05/);
  });

  it.each<[string, Change]>([
    ['no header', (run) => ({ ...run, header: null })],
    ['another scenario', (run) => ({ ...run, header: { ...run.header, scenario: { ...run.header.scenario, title: 'Other' } } })],
    ['no number of steps', (run) => ({ ...run, steps: 'many' })],
  ])('with %s says so in one sentence, and stays until it is deleted', async (_what, change) => {
    await damage('runs', 'run-1', change);
    const before = await everything();
    const store = await RunStore.open();
    expect(await store.load('run-1')).toEqual({ ok: false, error: 'What the browser kept of this run is damaged and cannot be read; it is left as it is until you delete it.' });
    expect(await store.list()).toHaveLength(1);
    expect(await everything()).toEqual(before);
    expect(await store.delete('run-1')).toBeNull();
    expect(await store.list()).toEqual([]);
  });

  it('does not keep the other runs from being listed', async () => {
    await damage('runs', 'run-1', (run) => ({ ...run, header: null }));
    await damage('summaries', 'run-1', () => ({ key: 'run-1', title: 7 }));
    const store = await RunStore.open();
    const { recorder } = playFor(60, testHeader('run-2'));
    await (await store.begin(testHeader('run-2'))).append(recorder.takeIncrement()!);
    const runs = await store.list();
    expect(runs.map(({ runId, fault }) => [runId, fault === null])).toEqual([['run-2', true], ['run-1', false]]);
  });

  it('with a bad snapshot is read without it', async () => {
    await damage('snapshots', 'run-1', (record) => ({ ...record, snapshot: 'none' }));
    expect(await (await RunStore.open()).load('run-1')).toMatchObject({ ok: true, value: { snapshot: null, fault: null } });
  });
});

describe('What a newer trainer kept', () => {
  it('as a record is named and left alone', async () => {
    await damage('runs', 'run-1', (run) => ({ ...run, version: 2 }));
    await damage('summaries', 'run-1', (line) => ({ ...line, version: 2, verdict: 'other' }));
    const before = await everything();
    const store = await RunStore.open();
    expect(await store.load('run-1')).toEqual({ ok: false, error: 'This run was kept by a newer trainer; it is left as it is and can be opened with that one.' });
    expect((await store.list())[0]?.fault).toMatch(/newer trainer/);
    expect(await everything()).toEqual(before);
  });

  it('as a whole database leaves the trainer usable, with a notice', async () => {
    (await rawDatabase(3)).close();
    const store = await RunStore.open();
    expect(store.notice).toBe('The runs kept in this browser belong to a newer trainer and are left as they are; save each run as a file.');
    await expectUsable(store);
  });
});

describe('A newer trainer in another window', () => {
  it('takes the store over at once; the older one says so and can still end its run', async () => {
    const store = await RunStore.open();
    const journal = await store.begin(testHeader('run-2'));
    const { run, recorder } = playFor(60, testHeader('run-2'));
    expect(await journal.append(recorder.takeIncrement()!)).toBeNull();
    const newer = await rawDatabase(3);
    play(run, recorder, 120);
    expect(await journal.append(recorder.takeIncrement()!)).toMatch(/^The browser closed its store of runs .*\.$/);
    expect(await newer.count('parts', IDBKeyRange.bound(['run-2', 0], ['run-2', 9]))).toBe(1);
    expect(await store.list()).toEqual([]);
    expect((await store.load('run-2')).ok).toBe(false);
    newer.close();
  });
});

describe('A browser that keeps nothing', () => {
  it.each<[string, () => void]>([
    ['refuses to open', () => (globalThis.indexedDB = { open: () => { throw new DOMException('Denied.', 'SecurityError'); } } as unknown as IDBFactory)],
    ['has no database', () => Reflect.deleteProperty(globalThis, 'indexedDB')],
  ])('because it %s leaves the trainer usable, with a notice', async (_why, prepare) => {
    prepare();
    const store = await RunStore.open();
    expect(store.notice).toMatch(/^This browser does not let the trainer keep runs .*\.$/);
    await expectUsable(store);
  });
});

async function expectUsable(store: RunStore): Promise<void> {
  expect(await store.list()).toEqual([]);
  expect(await store.load('run-1')).toEqual({ ok: false, error: store.notice });
  expect(await store.delete('run-1')).toBeNull();
  const journal = await store.begin(testHeader());
  const { run, recorder } = playFor(60);
  expect(await journal.append(recorder.takeIncrement()!, run.snapshot())).toBe(store.notice);
  expect(await journal.finish(recorder.finish(run))).toBe(store.notice);
  await journal.close();
}
