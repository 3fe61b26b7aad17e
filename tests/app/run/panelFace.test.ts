import { describe, expect, it } from 'vitest';
import { LiveRun, type Coaching } from '../../../src/app/run/LiveRun.ts';
import { panelFace } from '../../../src/app/run/panelFace.ts';
import { Recorder } from '../../../src/core/recording/Recorder.ts';
import { runHeader } from '../../../src/core/recording/recording.ts';
import { breakWith } from '../support/breakWith.ts';
import { FakeRun } from '../support/FakeRun.ts';
import { scenarioWith } from '../support/scenario.ts';

function liveRun(coaching: Coaching): { run: FakeRun; live: LiveRun } {
  const scenario = scenarioWith();
  const run = new FakeRun(scenario);
  const recorder = new Recorder(runHeader({ runId: 'run-1', engine: 'test', startedAt: '2026-01-01T00:00:00Z', scenario, seed: 1 }));
  const keeper = { notice: null, afterStep: () => undefined, left: async () => undefined, finished: async () => undefined };
  return { run, live: new LiveRun({ run, recorder, keeper, coaching, slowdown: 1 }) };
}

describe('What the panels show', () => {
  it('stays the same within a second in which nothing happens, though hands move', () => {
    const { live } = liveRun('shown');
    live.stepMany(1);
    const before = panelFace(live);
    live.hands.moveTo('right', -0.2, 1.3);
    live.stepMany(20);
    expect(panelFace(live)).toBe(before);
    live.stepMany(100);
    expect(panelFace(live)).not.toBe(before);
  });

  it('changes with what is held, done, asked for and, under shown coaching, broken', () => {
    const { run, live } = liveRun('shown');
    const faces = [panelFace(live)];
    const look = (): number => faces.push(panelFace(live));
    run.reach.right = 'probe';
    live.hands.flipGrip('right');
    live.stepMany(1);
    look();
    run.progress = { ...run.progress, hint: 'Park the probe.' };
    look();
    run.nextRequest = 'takeCord';
    look();
    run.remedy = { remedy: 'newSheath', phase: 'running', progress: 0.5, secondsLeft: 3 } as never;
    look();
    run.breaks = [breakWith({})];
    look();
    expect(new Set(faces).size).toBe(faces.length);
  });

  it('tells nothing of breaks under silent coaching', () => {
    const { run, live } = liveRun('silent');
    const before = panelFace(live);
    run.breaks = [breakWith({})];
    expect(panelFace(live)).toBe(before);
  });
});
