import { beforeEach, describe, expect, it } from 'vitest';
import { LiveRun } from '../../../src/app/run/LiveRun.ts';
import type { RunKeeper } from '../../../src/app/run/RunKeeper.ts';
import { Recorder } from '../../../src/core/recording/Recorder.ts';
import { runHeader } from '../../../src/core/recording/recording.ts';
import { FakeRun } from '../support/FakeRun.ts';
import { scenarioWith } from '../support/scenario.ts';

const keeper: RunKeeper = { notice: null, afterStep: () => undefined, left: async () => undefined, finished: async () => undefined };

describe('a run on the page', () => {
  let run: FakeRun;
  let live: LiveRun;
  beforeEach(() => {
    const scenario = scenarioWith();
    run = new FakeRun(scenario);
    const recorder = new Recorder(runHeader({ runId: 'run-1', engine: 'test', startedAt: '2026-01-01T00:00:00Z', scenario, seed: 1 }));
    live = new LiveRun({ run, recorder, keeper, coaching: 'silent', slowdown: 2 });
  });

  it('records the pace first', () => {
    live.stepMany(1);
    expect(run.received).toEqual([{ step: 0, command: { type: 'pace', slowdown: 2 } }]);
  });

  it('steps with the time that passes, at its pace', () => {
    for (let k = 0; k < 60; k++) live.advance(1000 / 60);
    expect(Math.abs(run.stepCount - 60)).toBeLessThanOrEqual(1);
  });

  it('stands still during a pause, and does not make up for it', () => {
    live.mode.send({ type: 'pause' });
    live.advance(1000);
    live.mode.send({ type: 'resume' });
    live.advance(0);
    expect(run.stepCount).toBe(0);
  });

  it('gives the instants of the last two frames, and blends within the newest step', () => {
    live.stepMany(5);
    expect([live.previous.step, live.current.step]).toEqual([0, 5]);
    expect(live.blend).toBeCloseTo(4 / 5, 12);
    live.stepMany(1);
    expect([live.previous.step, live.current.step]).toEqual([5, 6]);
    expect(live.blend).toBe(0);
  });

  it('says when a hand finds nothing to hold', () => {
    live.hands.flipGrip('left');
    for (let k = 0; k < 40; k++) live.stepMany(1);
    expect(live.note?.words).toBe('Nothing within reach of the left hand.');
    expect(run.received.map(({ command }) => command.type)).toEqual(['pace', 'hand.grip', 'hand.release']);
  });

  it('says when a hand loses what it held', () => {
    run.reach.right = 'probe';
    live.hands.flipGrip('right');
    live.stepMany(1);
    run.slip('right');
    for (let k = 0; k < 40; k++) live.stepMany(1);
    expect(live.note?.words).toBe('The right hand lost its hold.');
  });

  it('gives a recording of all that was done when it ends', async () => {
    live.stepMany(10);
    const file = await live.end();
    expect(file.steps).toBe(11);
    expect(file.commands.map(({ step, commands }) => [step, commands[0]!.type])).toEqual([
      [0, 'pace'],
      [10, 'run.end'],
    ]);
    expect(file.result).not.toBeNull();
  });
});
