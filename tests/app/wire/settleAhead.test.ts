import { expect, it } from 'vitest';
import { SettleAhead } from '../../../src/app/wire/SettleAhead.ts';
import type { SettledState } from '../../../src/core/room/settle.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { scenarioWith } from '../support/scenario.ts';

/** Stands for the worker; answers when told to. */
class FakeWorker extends EventTarget {
  static readonly all: FakeWorker[] = [];
  asked: Scenario | null = null;
  ended = false;
  constructor() {
    super();
    FakeWorker.all.push(this);
  }
  postMessage(asked: Scenario): void {
    this.asked = asked;
  }
  terminate(): void {
    this.ended = true;
  }
  answer(state: SettledState): void {
    this.dispatchEvent(Object.assign(new Event('message'), { data: state }));
  }
}

const scenario = scenarioWith();
const start = (): Worker => new FakeWorker() as unknown as Worker;
const state = { name: 'settled' } as unknown as SettledState;
const other: Scenario = { ...scenario, room: { ...scenario.room, bed: { ...scenario.room.bed, mattressTopM: 0.9 } } };
const newest = (): FakeWorker => FakeWorker.all.at(-1)!;

it('settles a room once for all seeds and coachings', async () => {
  const ahead = new SettleAhead(start);
  const first = ahead.settled(scenario);
  const worker = newest();
  const second = ahead.settled({ ...scenario, seed: scenario.seed + 1, coaching: scenario.coaching === 'shown' ? 'silent' : 'shown' });
  worker.answer(state);
  expect([await first, await second]).toEqual([state, state]);
  expect(worker.ended).toBe(true);
  expect(newest()).toBe(worker);
});

it('gives up a room when another is wanted: who waits for it settles it himself', async () => {
  const ahead = new SettleAhead(start);
  const first = ahead.settled(scenario);
  const worker = newest();
  const second = ahead.settled(other);
  expect(await first).toBeUndefined();
  expect(worker.ended).toBe(true);
  newest().answer(state);
  expect(await second).toBe(state);
  void ahead.settled(scenario);
  expect(newest().asked).toBe(scenario);
});

it('keeps what is done when another room is wanted', async () => {
  const ahead = new SettleAhead(start);
  const first = ahead.settled(scenario);
  newest().answer(state);
  void ahead.settled(other);
  const worker = newest();
  expect(await ahead.settled(scenario)).toBe(await first);
  expect(newest()).toBe(worker);
});

it('gives nothing where no worker can be had or it fails', async () => {
  const none = new SettleAhead(() => {
    throw new Error('no workers here');
  });
  expect(await none.settled(scenario)).toBeUndefined();
  const ahead = new SettleAhead(start);
  const failing = ahead.settled(scenario);
  const worker = newest();
  worker.dispatchEvent(new Event('error'));
  expect(await failing).toBeUndefined();
  void ahead.settled(scenario);
  expect(newest()).not.toBe(worker);
});
