import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { readRunFile } from '../../src/core/recording/readRunFile.ts';
import { Recorder } from '../../src/core/recording/Recorder.ts';
import { runHeader, type MakeRun, type RunFile } from '../../src/core/recording/recording.ts';
import { replayTo } from '../../src/core/recording/Replayer.ts';
import { resumeRun } from '../../src/core/recording/resumeRun.ts';
import { verifyRun } from '../../src/core/recording/verifyRun.ts';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { Run } from '../../src/core/run/run.ts';
import { parseScenario } from '../../src/core/scenario/parseScenario.ts';
import { RunStore } from '../../src/storage/RunStore.ts';
import { busyHands } from '../core/recording/support/handMotion.ts';
import { freshDatabase } from './support/freshDatabase.ts';

const makeRun: MakeRun = (scenario, seed) => new Run(scenario, seed);
const BROKEN_OFF_STEP = 300;
const SNAPSHOT_STEP = 240;
const END_STEP = 600;
/** The room settles before its first step; a busy machine may need long for that (ms). */
const PATIENCE_MS = 120_000;
const commands = busyHands(END_STEP / 120, 11);

/** Plays the room itself, up to a step. */
function playTo(run: ReturnType<MakeRun>, recorder: Recorder, toStep: number): void {
  while (run.stepCount < toStep) {
    const now = run.stepCount === END_STEP - 1 ? [{ type: 'run.end' as const }] : (commands.get(run.stepCount) ?? []);
    run.step(now);
    recorder.played(now, run);
  }
}

function begin(): { run: Run; recorder: Recorder } {
  const read = parseScenario(readFileSync('scenarios/high-rails-short-sheath.json', 'utf8'));
  if (!read.ok) throw new Error(read.error.message);
  const header = runHeader({ runId: 'played', engine: 'test', startedAt: '2026-02-03T10:20:30Z', scenario: read.value, seed: read.value.seed });
  return { run: new Run(header.scenario, header.seed), recorder: new Recorder(header) };
}

describe('A run in the room', () => {
  let straight: RunFile;

  beforeAll(() => {
    const { run, recorder } = begin();
    playTo(run, recorder, END_STEP);
    straight = recorder.finish(run);
  }, PATIENCE_MS);

  it('follows from its own file', () => {
    const read = readRunFile(writeRunFile(straight));
    if (!read.ok) throw new Error(JSON.stringify(read.error));
    expect(read.value).toEqual(straight);
    expect(verifyRun(read.value, makeRun)).toEqual({ verdict: 'verified' });
  });

  it('does not follow from a file in which one hand was one millimetre elsewhere', () => {
    const nth = straight.commands.findIndex(({ step, commands: given }) => step > 130 && given.some(({ type }) => type === 'hand.move'));
    const nudged = straight.commands.map((recorded, k) => (k === nth ? { ...recorded, commands: recorded.commands.map((command) => (command.type === 'hand.move' ? { ...command, xMm: command.xMm + 1 } : command)) } : recorded));
    expect(verifyRun({ ...straight, commands: nudged }, makeRun)).toEqual({ verdict: 'diverged', firstDivergentStep: 240 });
  });

  it('broken off, kept, and continued comes to the same end as without the break', async () => {
    freshDatabase();
    const { run, recorder } = begin();
    const journal = await (await RunStore.open()).begin(recorder.header);
    playTo(run, recorder, SNAPSHOT_STEP);
    await journal.append(recorder.takeIncrement()!, run.snapshot());
    playTo(run, recorder, BROKEN_OFF_STEP);
    await journal.append(recorder.takeIncrement()!);

    const kept = await (await RunStore.open()).load('played');
    if (!kept.ok) throw new Error(kept.error);
    let stepsMade = 0;
    const counting: MakeRun = (scenario, seed) => {
      const made = makeRun(scenario, seed);
      const step = made.step.bind(made);
      made.step = (given) => (stepsMade++, step(given));
      return made;
    };
    const resumed = resumeRun(kept.value.recording, counting, kept.value.snapshot);
    if (!resumed.ok) throw new Error(resumed.error.kind);
    expect(stepsMade, 'only what came after the snapshot is played again').toBe(BROKEN_OFF_STEP - SNAPSHOT_STEP);
    playTo(resumed.value.run, resumed.value.recorder, END_STEP);
    const whole = resumed.value.recorder.finish(resumed.value.run);
    expect(whole).toEqual({ ...straight, header: { ...straight.header, resumedAt: [BROKEN_OFF_STEP] } });
  });

  it('stands at any step where it stood when it was played', () => {
    const { run, recorder } = begin();
    playTo(run, recorder, 77);
    expect(replayTo(straight, makeRun, 77).hash()).toBe(run.hash());
  });
});
