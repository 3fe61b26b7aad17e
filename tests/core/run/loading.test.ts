import { beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '../../../src/core/commands/command.ts';
import type { RunSnapshot } from '../../../src/core/run/contract.ts';
import { Run } from '../../../src/core/run/run.ts';
import { settle, type SettledState } from '../../../src/core/room/settle.ts';
import { Loading } from '../../support/loading.ts';
import { runOperator, shippedScenario, type OperatorRun } from '../../support/runOperator.ts';

/** Seconds at which a run is taken up again: sheath in the hand, gel running, probe swinging, being lowered, in the sheath, film drawn by the hand, by its end, a band on. */
const AT_S = [8, 22, 34, 45, 53, 57, 62, 76];

describe('A run in which the probe is loaded', () => {
  const scenario = shippedScenario('sheath-short');
  let played: OperatorRun;
  let byStep: Map<number, Command[]>;
  let settled: SettledState;
  let whole: string;

  const go = (run: Run, to: number, look: (run: Run) => void = () => {}): void => {
    while (run.stepCount < to) {
      run.step(byStep.get(run.stepCount) ?? []);
      look(run);
    }
  };

  beforeAll(() => {
    played = runOperator((op) => void new Loading(op).all(), scenario);
    whole = played.run.hash();
    byStep = new Map();
    for (const { step, command } of played.commands) byStep.set(step, [...(byStep.get(step) ?? []), command]);
    settled = settle(scenario);
  }, 300_000);

  it('comes to the same bits when its commands are played again', () => {
    const again = new Run(scenario, scenario.seed, settled);
    go(again, played.run.stepCount);
    expect(again.hash()).toBe(whole);
    expect(again.result()).toEqual(played.result);
  });

  it.each(AT_S)('goes on bit for bit in a fresh run from its snapshot at %i s', (seconds) => {
    const first = new Run(scenario, scenario.seed, settled);
    go(first, seconds * 120);
    const kept = structuredClone(first.snapshot()) as RunSnapshot;
    const second = new Run(scenario, scenario.seed, settled);
    second.restore(kept);
    expect(second.hash()).toBe(first.hash());
    go(first, seconds * 120 + 600);
    go(second, seconds * 120 + 600);
    expect(second.hash()).toBe(first.hash());
    expect(second.progress).toEqual(first.progress);
  });
});
