import type { Command } from '../../src/core/commands/command.ts';
import { Recorder } from '../../src/core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../../src/core/recording/recording.ts';
import { Run } from '../../src/core/run/run.ts';
import { Loading } from './loading.ts';
import { runOperator, shippedScenario } from './runOperator.ts';

/** The recording of a whole loading, with its state hashes. */
export function recordedLoading(): RunFile {
  const scenario = shippedScenario('sheath-short');
  const { commands } = runOperator((op) => void new Loading(op).all().op.finish(), scenario);
  const byStep = new Map<number, Command[]>();
  for (const { step, command } of commands) byStep.set(step, [...(byStep.get(step) ?? []), command]);
  const run = new Run(scenario);
  const recorder = new Recorder(runHeader({ runId: 'loading', engine: 'test', scenario, seed: scenario.seed, startedAt: '2026-01-01T00:00:00.000Z' }));
  while (!run.finished) {
    const given = byStep.get(run.stepCount) ?? [];
    run.step(given);
    recorder.played(given, run);
  }
  return recorder.finish(run);
}
