import { afterEach, describe, expect, it, vi } from 'vitest';
import { openDebrief } from '../../../src/app/wire/debriefClient.ts';
import { runLog } from '../../core/debrief/runLogs.ts';
import { log } from '../../core/ledger/log.ts';
import { runHeader, type RunFile } from '../../../src/core/recording/recording.ts';
import type { DebriefReply } from '../../../src/app/wire/debriefMessages.ts';

/** Stands for the thread: keeps what it is asked and says what it is told to. */
class FakeWorker {
  static last: FakeWorker;
  asked: unknown[] = [];
  terminated = 0;
  private readonly listeners = new Map<string, (event: unknown) => void>();

  constructor() {
    FakeWorker.last = this;
  }

  addEventListener(kind: string, listener: (event: unknown) => void): void {
    this.listeners.set(kind, listener);
  }

  postMessage(message: unknown): void {
    this.asked.push(message);
  }

  terminate(): void {
    this.terminated++;
  }

  say(data: DebriefReply): void {
    this.listeners.get('message')!({ data });
  }

  fail(): void {
    this.listeners.get('error')!({});
  }
}

const { scenario, result, facts } = runLog(log().tap('gloveR#1:palm', 'railR:all').facts);
const file: RunFile = { header: runHeader({ runId: 'a', engine: 'test', startedAt: '2026-01-01T00:00:00.000Z', scenario, seed: 1 }), steps: 480, commands: [], hashes: [], result, score: null };
const empty = { rows: 0, first: new Int16Array(0), kinds: new Uint8Array(0), small: new Int8Array(0), whole: new Int16Array(0) };
const news = (steps: number): DebriefReply => ({ kind: 'news', news: { chunk: { sampleSteps: [], numbers: empty, forms: [], clearances: [], facts: steps === 240 ? facts : [], steps, result }, verification: steps < 480 ? null : { verdict: 'verified' } } });

const opened = () => {
  vi.stubGlobal('Worker', FakeWorker);
  const source = openDebrief(file);
  return { source, worker: FakeWorker.last };
};

afterEach(() => vi.unstubAllGlobals());

describe('A debrief beside the page', () => {
  it('asks for the recording and grows with what comes', () => {
    const { source, worker } = opened();
    expect(worker.asked).toEqual([{ file, settled: undefined }]);
    const shares: number[] = [];
    source.onGrow(() => shares.push(source.share));
    worker.say(news(240));
    worker.say(news(480));
    worker.say({ kind: 'done' });
    expect(shares).toEqual([0.5, 1, 1]);
    expect([source.verification, source.log!.complete, source.log!.facts]).toEqual([{ verdict: 'verified' }, true, facts]);
    source.stop();
    expect(worker.terminated, 'its thread is given back, once').toBe(1);
  });

  it('ends the work when it is stopped, and listens no more', () => {
    const { source, worker } = opened();
    worker.say(news(240));
    source.stop();
    worker.say(news(480));
    expect([worker.terminated, source.share]).toEqual([1, 0.5]);
  });

  it('says so when the thread cannot be had', () => {
    const { source, worker } = opened();
    let told = 0;
    source.onGrow(() => told++);
    worker.fail();
    expect([source.fault, told, worker.terminated]).toEqual(['The run could not be played again in this browser.', 1, 1]);
  });
});
