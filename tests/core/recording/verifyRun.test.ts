import { describe, expect, it } from 'vitest';
import type { RunFile } from '../../../src/core/recording/recording.ts';
import { Replayer, replayTo } from '../../../src/core/recording/Replayer.ts';
import { SIMULATION_VERSION } from '../../../src/core/recording/simulationVersion.ts';
import { verifyInSlices, verifyRun } from '../../../src/core/recording/verifyRun.ts';
import { FakeRun, makeFakeRun } from './support/FakeRun.ts';
import { finishedRun, playFor } from './support/sampleRun.ts';

/** The recording with the commands of its n-th step that has any replaced. */
const withCommands = (run: RunFile, nth: number, commands: RunFile['commands'][number]['commands']): RunFile => ({
  ...run,
  commands: run.commands.map((recorded, k) => (k === nth ? { ...recorded, commands } : recorded)),
});

describe('Verifying a run', () => {
  const run = finishedRun(500);

  it('agrees with what was played', () => {
    expect(verifyRun(run, makeFakeRun)).toEqual({ verdict: 'verified' });
  });

  it('finds the first second in which the states part, and only the first', () => {
    const nth = run.commands.findIndex(({ step }) => step >= 130);
    expect(verifyRun(withCommands(run, nth, []), makeFakeRun)).toEqual({ verdict: 'diverged', firstDivergentStep: 240 });
  });

  it('finds a change after the last full second', () => {
    const nth = run.commands.findIndex(({ step }) => step > 480);
    expect(verifyRun(withCommands(run, nth, []), makeFakeRun)).toEqual({ verdict: 'diverged', firstDivergentStep: 500 });
  });

  it('finds a result that does not follow, to the last bit', () => {
    const result = { ...run.result!, handling: { ...run.result!.handling, pathM: { right: run.result!.handling.pathM.right, left: 0.3 } } };
    expect(verifyRun({ ...run, result }, makeFakeRun)).toEqual({
      verdict: 'resultDiffers',
      differences: [{ path: 'handling.pathM.left', written: '0.3', replayed: '0.30000000000000004' }],
    });
  });

  it('does not judge a run of another simulation', () => {
    const header = { ...run.header, simulation: SIMULATION_VERSION + 1 };
    expect(verifyRun({ ...run, header }, makeFakeRun)).toEqual({ verdict: 'otherSimulation', simulation: SIMULATION_VERSION + 1 });
  });

  it('says of a broken-off run how far it goes, unless its states part', () => {
    const brokenOff = playFor(333).recorder.soFar();
    expect(verifyRun(brokenOff, makeFakeRun)).toEqual({ verdict: 'brokenOff', steps: 333 });
    expect(verifyRun(withCommands(brokenOff, 0, []), makeFakeRun)).toEqual({ verdict: 'diverged', firstDivergentStep: 120 });
  });

  it('takes a run that ends before its recording for diverged', () => {
    expect(verifyRun(withCommands(run, 3, [{ type: 'run.end' }]), makeFakeRun).verdict).toBe('diverged');
  });

  it('takes a simulation that refuses what was recorded for diverged, with its words', () => {
    class Refusing extends FakeRun {
      override step(): never {
        throw new Error('no such hand');
      }
    }
    expect(verifyRun(run, (scenario, seed) => new Refusing(scenario, seed))).toEqual({ verdict: 'diverged', firstDivergentStep: 0, fault: 'no such hand' });
  });

  it('tells its progress once a second, and can be done in slices', () => {
    const told: number[][] = [];
    verifyRun(run, makeFakeRun, (done, steps) => told.push([done, steps]));
    expect(told).toEqual([120, 240, 360, 480].map((done) => [done, 500]));
    expect([...verifyInSlices(run, makeFakeRun)]).toEqual([120, 240, 360, 480]);
  });
});

describe('Replaying a run', () => {
  const run = finishedRun(500);

  it('stands at every step where the played run stood', () => {
    const played = new FakeRun(run.header.scenario, run.header.seed);
    const straight = new Replayer(run, () => played);
    while (!straight.done) {
      if (played.stepCount % 37 === 0) expect(replayTo(run, makeFakeRun, played.stepCount).hash()).toBe(played.hash());
      straight.step();
    }
    expect(straight.firstDivergentStep).toBeNull();
    expect(replayTo(run, makeFakeRun, 10_000).stepCount).toBe(500);
  });

  it('goes on after it has diverged, and keeps the first step', () => {
    const replayer = new Replayer(withCommands(run, 0, []), makeFakeRun);
    while (!replayer.done) replayer.step();
    expect(replayer.firstDivergentStep).toBe(120);
    expect(replayer.run.stepCount).toBe(500);
  });
});
