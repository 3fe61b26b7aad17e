import type { Command } from '../../src/core/commands/command.ts';
import { Recorder } from '../../src/core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../../src/core/recording/recording.ts';
import { Run } from '../../src/core/run/run.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';
import type { Operator } from './operator.ts';
import { runOperator } from './runOperator.ts';

/** The recording of what a scripted operator does in a room up to the end of the run, with its state hashes. */
export function recordedScript(play: (op: Operator) => unknown, scenario: Scenario): RunFile {
  const { commands } = runOperator((op) => {
    play(op);
    op.finish();
  }, scenario);
  const byStep = new Map<number, Command[]>();
  for (const { step, command } of commands) byStep.set(step, [...(byStep.get(step) ?? []), command]);
  const run = new Run(scenario);
  const recorder = new Recorder(runHeader({ runId: 'scripted', engine: 'test', scenario, seed: scenario.seed, startedAt: '2026-01-01T00:00:00.000Z' }));
  while (!run.finished) {
    const given = byStep.get(run.stepCount) ?? [];
    run.step(given);
    recorder.played(given, run);
  }
  return recorder.finish(run);
}
