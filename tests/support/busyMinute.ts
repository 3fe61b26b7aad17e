import { STEPS_PER_SECOND } from '../../src/core/base/time.ts';
import { Rng } from '../../src/core/base/rng.ts';
import { SIDES } from '../../src/core/base/side.ts';
import type { Command } from '../../src/core/commands/command.ts';
import { Recorder } from '../../src/core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../../src/core/recording/recording.ts';
import { Run } from '../../src/core/run/run.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';

/** How often each hand gets a new goal, and how often it closes or opens, in steps. */
const GOAL_STEPS = 50;
const GRIP_STEPS = 90;

/**
 * A run of `seconds` in which both hands go to places all over the field and close and open there, as a seed decides: careless, but
 * it moves everything that can move. Gives the recording with its state hashes.
 */
export function busyRun(scenario: Scenario, seconds: number, seed: number): RunFile {
  const run = new Run(scenario);
  const recorder = new Recorder(runHeader({ runId: `busy-${seed}`, engine: 'test', scenario, seed: scenario.seed, startedAt: '2026-01-01T00:00:00.000Z' }));
  const chance = new Rng(seed);
  const last = seconds * STEPS_PER_SECOND - 1;
  for (let step = 0; step <= last; step++) {
    const commands: Command[] = SIDES.flatMap((hand, k) => handCommands(hand, step + k * 17, chance));
    if (step === last) commands.push({ type: 'run.end' });
    run.step(commands);
    recorder.played(commands, run);
  }
  return recorder.finish(run);
}

function handCommands(hand: 'left' | 'right', step: number, chance: Rng): Command[] {
  const commands: Command[] = [];
  if (step % GOAL_STEPS === 0) {
    commands.push({ type: 'hand.move', hand, xMm: Math.round(chance.between(-450, 450)), yMm: Math.round(chance.between(1000, 1350)) });
    commands.push({ type: 'hand.turn', hand, angleDeg: Math.round(chance.between(-60, 10)) });
  }
  if (step % GRIP_STEPS === 0) commands.push({ type: chance.next() < 0.5 ? 'hand.grip' : 'hand.release', hand });
  return commands;
}
