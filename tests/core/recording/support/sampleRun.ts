import { STEPS_PER_SECOND } from '../../../../src/core/base/time.ts';
import type { Command } from '../../../../src/core/commands/command.ts';
import { Recorder } from '../../../../src/core/recording/Recorder.ts';
import { runHeader, type RunFile, type RunHeader } from '../../../../src/core/recording/recording.ts';
import { FakeRun, testScenario } from './FakeRun.ts';
import { busyHands } from './handMotion.ts';

export const testHeader = (runId = 'run-1'): RunHeader =>
  runHeader({ runId, engine: 'test engine 1', startedAt: '2026-02-03T10:20:30Z', scenario: testScenario(), seed: 7 });

/** A run at some step with its recorder, played with busy hands. */
export function playFor(steps: number, header: RunHeader = testHeader()): { run: FakeRun; recorder: Recorder } {
  const run = new FakeRun(header.scenario, header.seed);
  const recorder = new Recorder(header);
  play(run, recorder, steps);
  return { run, recorder };
}

/** Plays on up to a step. */
export function play(run: FakeRun, recorder: Recorder, toStep: number): void {
  const commands = busyHands(Math.ceil(toStep / STEPS_PER_SECOND), 1);
  while (run.stepCount < toStep) step(run, recorder, commands.get(run.stepCount) ?? []);
}

/** One step, recorded. */
export function step(run: FakeRun, recorder: Recorder, commands: readonly Command[]): void {
  run.step(commands);
  recorder.played(commands, run);
}

/** A finished run of so many steps. */
export function finishedRun(steps = 500): RunFile {
  const { run, recorder } = playFor(steps - 1);
  step(run, recorder, [{ type: 'notice' }, { type: 'run.end' }]);
  return recorder.finish(run);
}
