import { IDBObjectStore as FDBObjectStore } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { resumeRun } from '../../src/core/recording/resumeRun.ts';
import { verifyRun } from '../../src/core/recording/verifyRun.ts';
import type { LoadedRun } from '../../src/storage/assembleRun.ts';
import type { RunJournal } from '../../src/storage/RunJournal.ts';
import { RunStore } from '../../src/storage/RunStore.ts';
import { makeFakeRun, type FakeRun } from '../core/recording/support/FakeRun.ts';
import { finishedRun, play, playFor, step, testHeader } from '../core/recording/support/sampleRun.ts';
import { pagesOfOneBrowser } from './support/fakeLocks.ts';
import { freshDatabase, rawDatabase } from './support/freshDatabase.ts';

beforeEach(() => freshDatabase());

/** Plays into a journal up to a step, an increment every half second and a snapshot every second; nothing is waited for. */
function playInto(journal: RunJournal, toStep: number) {
  const { run, recorder } = playFor(0);
  const writes: Promise<string | null>[] = [];
  while (run.stepCount < toStep) {
    play(run, recorder, run.stepCount + 60);
    writes.push(journal.append(recorder.takeIncrement()!, run.stepCount % 120 === 0 ? run.snapshot() : null));
  }
  return { run, recorder, writes };
}

const loaded = async (store: RunStore, runId = 'run-1'): Promise<LoadedRun> => {
  const load = await store.load(runId);
  if (!load.ok) throw new Error(load.error);
  return load.value;
};

describe('A run is kept as it is played', () => {
  it('and found again whole after the page is gone', async () => {
    const { recorder, run, writes } = playInto(await (await RunStore.open()).begin(testHeader()), 600);
    expect(await Promise.all(writes)).toEqual(Array(10).fill(null));
    const store = await RunStore.open();
    expect(await store.brokenOff()).toMatchObject([{ key: 'run-1', runId: 'run-1', title: 'Ein Übungsfeld', startedAt: '2026-02-03T10:20:30Z', seconds: 5, finished: false, inParts: true, fault: null }]);
    expect(await loaded(store)).toEqual({ recording: recorder.soFar(), snapshot: run.snapshot(), fault: null });
  });

  it('and continued, as one run that verifies', async () => {
    await Promise.all(playInto(await (await RunStore.open()).begin(testHeader()), 300).writes);
    const store = await RunStore.open();
    const { recording, snapshot } = await loaded(store);
    const resumed = resumeRun(recording, makeFakeRun, snapshot);
    if (!resumed.ok) throw new Error(resumed.error.kind);
    const { run, recorder } = resumed.value;
    const journal = await store.begin(recorder.header);
    play(run as FakeRun, recorder, 420);
    expect(await journal.append(recorder.takeIncrement()!)).toBeNull();
    const again = await loaded(await RunStore.open());
    expect(again.recording).toEqual(recorder.soFar());
    expect(again.recording.header.resumedAt).toEqual([300]);
    step(run as FakeRun, recorder, [{ type: 'run.end' }]);
    expect(await journal.finish(recorder.finish(run))).toBeNull();
    const whole = await loaded(await RunStore.open());
    expect(verifyRun(whole.recording, makeFakeRun)).toEqual({ verdict: 'verified' });
  });

  it('up to its end, even when the journal had missed a part', async () => {
    const store = await RunStore.open();
    const journal = await store.begin(testHeader());
    const run = finishedRun(500);
    await journal.finish(run);
    expect((await loaded(store)).recording).toEqual(run);
    expect(await store.brokenOff()).toEqual([]);
    expect(await store.list()).toMatchObject([{ runId: 'run-1', finished: true, seconds: 500 / 120, inParts: false }]);
  });

  it('until it is deleted, with all its parts', async () => {
    const store = await RunStore.open();
    await Promise.all(playInto(await store.begin(testHeader()), 300).writes);
    expect(await store.delete('run-1')).toBeNull();
    expect(await store.list()).toEqual([]);
    expect(await store.load('run-1')).toEqual({ ok: false, error: 'This run is no longer kept in this browser.' });
    const raw = await rawDatabase();
    expect(await Promise.all(['runs', 'parts', 'snapshots', 'bodies', 'summaries'].map((table) => raw.count(table)))).toEqual([0, 0, 0, 0, 0]);
  });

  it('however many there are: finished runs are never dropped by themselves', async () => {
    const store = await RunStore.open();
    await Promise.all(playInto(await store.begin(testHeader('broken-off')), 60).writes);
    const run = finishedRun(10);
    for (let k = 0; k < 60; k++) {
      const header = { ...run.header, runId: `run-${k}`, startedAt: `2026-03-01T10:00:${String(k).padStart(2, '0')}Z` };
      await (await store.begin(header)).finish({ ...run, header });
    }
    const runs = await store.list();
    expect(runs.map(({ runId }) => runId)).toEqual([...Array.from({ length: 60 }, (_, k) => `run-${59 - k}`), 'broken-off']);
    expect(await store.brokenOff()).toHaveLength(1);
  });

  it('and its line can be listed without its recording being read', async () => {
    const store = await RunStore.open();
    await (await store.begin(testHeader())).finish(finishedRun(500));
    const { get, getAll } = objectStores();
    const original = { get, getAll };
    const read: string[] = [];
    const spies = (['get', 'getAll'] as const).map((name) =>
      vi.spyOn(objectStores(), name).mockImplementation(function (this: IDBObjectStore, ...asked: unknown[]) {
        read.push(this.name);
        return original[name].apply(this, asked as never);
      }),
    );
    expect(await store.list()).toHaveLength(1);
    for (const spy of spies) spy.mockRestore();
    expect(read).toEqual(['summaries']);
  });
});

describe('When the page is killed', () => {
  it('between any two writes, what was written is whole', async () => {
    const { put } = objectStores();
    // Of each half second a part, its run and its line are written, and every second a snapshot as well.
    const stepsKept = [0, 0, 0, 60, 60, 60, 60, 120, 120, 120, 180, 180, 180, 180, 240];
    for (const [survives, steps] of stepsKept.entries()) {
      freshDatabase();
      const journal = await (await RunStore.open()).begin(testHeader());
      let left = survives;
      const spy = vi.spyOn(objectStores(), 'put').mockImplementation(function (this: IDBObjectStore, value: unknown) {
        if (left-- <= 0) throw new DOMException('The page is gone.', 'AbortError');
        return put.call(this, value);
      });
      const { run, recorder } = playFor(0);
      for (const to of [60, 120, 180, 240]) {
        play(run, recorder, to);
        await journal.append(recorder.takeIncrement()!, to % 120 === 0 ? run.snapshot() : null);
      }
      spy.mockRestore();
      const raw = await rawDatabase();
      expect(await raw.count('parts'), `parts after ${survives} writes`).toBe(steps / 60);
      if (steps === 0) expect(await (await RunStore.open()).list()).toEqual([]);
      else expect(await loaded(await RunStore.open())).toMatchObject({ recording: playFor(steps).recorder.soFar(), fault: null });
    }
  });

  it('right after a call, that call is already under way', async () => {
    const journal = await (await RunStore.open()).begin(testHeader());
    playInto(journal, 600);
    const store = await RunStore.open();
    await journal.close();
    expect((await loaded(store)).recording.steps).toBe(600);
  });
});

describe('A store that fails for a while', () => {
  it('says so, keeps what is waiting, and catches up', async () => {
    const store = await RunStore.open();
    const journal = await store.begin(testHeader());
    const { run, recorder } = playFor(60);
    const full = vi.spyOn(objectStores(), 'put').mockImplementation(() => {
      throw new DOMException('Full.', 'QuotaExceededError');
    });
    expect(await journal.append(recorder.takeIncrement()!)).toMatch(/^The browser has no room left .*\.$/);
    full.mockRestore();
    expect(await store.list()).toEqual([]);
    play(run, recorder, 120);
    expect(await journal.append(recorder.takeIncrement()!)).toBeNull();
    expect(journal.notice).toBeNull();
    expect((await loaded(store)).recording).toEqual(recorder.soFar());
  });

  it('does not write a run with a hole when its beginning was deleted elsewhere', async () => {
    const store = await RunStore.open();
    const journal = await store.begin(testHeader());
    const { run, recorder } = playFor(60);
    await journal.append(recorder.takeIncrement()!);
    await store.delete('run-1');
    play(run, recorder, 120);
    expect(await journal.append(recorder.takeIncrement()!)).toMatch(/save it as a file/);
    expect(await store.list()).toEqual([]);
  });
});

describe('Two windows', () => {
  it('do not take a run being played for broken off, nor write it both', async () => {
    const [here, there] = pagesOfOneBrowser(2);
    const store = await RunStore.open(here);
    const journal = await store.begin(testHeader());
    await Promise.all(playInto(journal, 120).writes);
    const other = await RunStore.open(there);
    expect(await other.brokenOff()).toEqual([]);
    const second = await other.begin(testHeader());
    expect(second.notice).toBe('This run is open in another window, which keeps it.');
    await Promise.all(playInto(second, 120).writes);
    await journal.close();
    expect(await other.brokenOff()).toMatchObject([{ runId: 'run-1', seconds: 1 }]);
  });
});

/** What the page's object stores inherit from. */
function objectStores(): IDBObjectStore {
  return FDBObjectStore.prototype as unknown as IDBObjectStore;
}
