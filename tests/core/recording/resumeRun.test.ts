import { describe, expect, it } from 'vitest';
import { SIMULATION_VERSION } from '../../../src/core/recording/simulationVersion.ts';
import { resumeErrorWords, resumeRun } from '../../../src/core/recording/resumeRun.ts';
import { verifyRun } from '../../../src/core/recording/verifyRun.ts';
import { makeFakeRun, type FakeRun } from './support/FakeRun.ts';
import { finishedRun, play, playFor, step } from './support/sampleRun.ts';

/** Broken off at step 333, with a snapshot from step 240. */
function brokenOff() {
  const { run, recorder } = playFor(240);
  const snapshot = run.snapshot();
  play(run, recorder, 333);
  return { run, snapshot, recording: recorder.soFar() };
}

describe('A broken-off run', () => {
  it.each(['with', 'without'])('goes on %s a snapshot exactly as if nothing had happened', (way) => {
    const { snapshot, recording, run } = brokenOff();
    const resumed = resumeRun(recording, makeFakeRun, way === 'with' ? snapshot : null);
    if (!resumed.ok) throw new Error(resumed.error.kind);
    expect(resumed.value.run.hash()).toBe(run.hash());
    const { recorder } = resumed.value;
    play(resumed.value.run as FakeRun, recorder, 600);
    step(resumed.value.run as FakeRun, recorder, [{ type: 'run.end' }]);
    const whole = recorder.finish(resumed.value.run);
    expect(whole.header.resumedAt).toEqual([333]);
    expect(whole.steps).toBe(601);
    expect(verifyRun(whole, makeFakeRun)).toEqual({ verdict: 'verified' });
  });

  it('goes on without a snapshot that does not fit', () => {
    const { snapshot, recording, run } = brokenOff();
    for (const bad of [{ step: 240, parts: {} }, { ...snapshot, step: 360 }, { ...snapshot, step: 250 }, { step: 240, parts: { ...snapshot.parts, state: 'other' } }]) {
      const resumed = resumeRun(recording, makeFakeRun, bad);
      expect(resumed.ok && resumed.value.run.hash()).toBe(run.hash());
    }
  });

  it('hands its journal only what is new after it was taken up', () => {
    const { recording } = brokenOff();
    const resumed = resumeRun(recording, makeFakeRun, null);
    if (!resumed.ok) throw new Error(resumed.error.kind);
    expect(resumed.value.recorder.takeIncrement()).toBeNull();
    step(resumed.value.run as FakeRun, resumed.value.recorder, [{ type: 'notice' }]);
    expect(resumed.value.recorder.takeIncrement()).toEqual({ fromStep: 333, toStep: 334, commands: [{ step: 333, commands: [{ type: 'notice' }] }], hashes: [] });
  });

  it('is not continued when it cannot be continued exactly', () => {
    const { recording } = brokenOff();
    const other = { ...recording, header: { ...recording.header, simulation: SIMULATION_VERSION + 1 } };
    const tampered = { ...recording, commands: recording.commands.slice(1) };
    const errors = [resumeRun(other, makeFakeRun, null), resumeRun(tampered, makeFakeRun, null), resumeRun(finishedRun(), makeFakeRun, null)].map((resumed) => (resumed.ok ? null : resumed.error));
    expect(errors).toEqual([{ kind: 'otherSimulation' }, { kind: 'diverged', step: 120 }, { kind: 'finished' }]);
    for (const error of errors) expect(resumeErrorWords(error!)).toMatch(/^This run .*\.$/);
  });
});

describe('A recorder', () => {
  it('gives increments that add up to the recording', () => {
    const { run, recorder } = playFor(0);
    const increments = [];
    for (let to = 60; to <= 600; to += 60) {
      play(run, recorder, to);
      increments.push(recorder.takeIncrement()!);
    }
    const whole = recorder.soFar();
    expect(increments.flatMap(({ commands }) => commands)).toEqual(whole.commands);
    expect(increments.flatMap(({ hashes }) => hashes)).toEqual(whole.hashes);
    expect(increments.map(({ fromStep }) => fromStep)).toEqual([0, ...increments.slice(0, -1).map(({ toStep }) => toStep)]);
    expect(recorder.takeIncrement()).toBeNull();
  });

  it('refuses a step that it was not told of', () => {
    const { run, recorder } = playFor(10);
    run.step([]);
    run.step([]);
    expect(() => recorder.played([], run)).toThrow('step 11');
    expect(() => recorder.finish(run)).toThrow('recorded 10 steps');
  });
});
