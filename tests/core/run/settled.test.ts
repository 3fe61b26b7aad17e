import { describe, expect, it } from 'vitest';
import type { Command } from '../../../src/core/commands/command.ts';
import { buildScene } from '../../../src/core/room/scene.ts';
import { settle } from '../../../src/core/room/settle.ts';
import { Run } from '../../../src/core/run/run.ts';
import { shippedScenario } from '../../support/runOperator.ts';

const scenario = shippedScenario('restless-patient-head-down');
const settled = structuredClone(settle(scenario));

/** State after each half second of hands that take what lies there. */
function play(run: Run, seconds: number): string[] {
  const hashes = [run.hash()];
  for (let step = 0; step < seconds * 120; step++) {
    const commands: Command[] = [];
    if (step % 60 === 0) for (const hand of ['left', 'right'] as const) commands.push({ type: 'hand.move', hand, xMm: (hand === 'left' ? 1 : -1) * (300 - step / 4), yMm: 1060 + (step % 240) }, { type: step % 120 === 0 ? 'hand.grip' : 'hand.release', hand });
    run.step(commands);
    if (step % 60 === 59) hashes.push(run.hash());
  }
  return hashes;
}

describe('A run from a state settled before', () => {
  it('has the same bits as one that settles by itself', () => {
    const [plain, ahead] = [new Run(scenario, 5), new Run(scenario, 5, settled)];
    expect(ahead.openingFacts).toEqual(plain.openingFacts);
    expect(play(ahead, 6)).toEqual(play(plain, 6));
    expect(ahead.result()).toEqual(plain.result());
  });

  it('leaves the state as it was, for further runs and other seeds', () => {
    const before = structuredClone(settled);
    const first = play(new Run(scenario, 1, settled), 2);
    expect(settled).toEqual(before);
    expect(play(new Run(scenario, 1, settled), 2)).toEqual(first);
    expect(new Run(scenario, 2, settled).hash()).toBe(new Run(scenario, 1, settled).hash());
  });
});

it('Settling does not depend on seed or coaching, and something has come to rest in it', () => {
  const other = settle({ ...scenario, seed: scenario.seed + 1, coaching: scenario.coaching === 'shown' ? 'silent' : 'shown' });
  expect(other).toEqual(settled);
  expect(buildScene(scenario, settled.sheets).world.snapshot()).not.toEqual(settled.world);
});
