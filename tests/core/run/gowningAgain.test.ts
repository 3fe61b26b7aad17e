import { expect, it } from 'vitest';
import type { Command } from '../../../src/core/commands/command.ts';
import { Run } from '../../../src/core/run/run.ts';
import { settle } from '../../../src/core/room/settle.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { BY_HAND_AT_BED, ROOMY } from '../../support/gownRooms.ts';
import { GownWork } from '../../support/gownWork.ts';
import { Operator } from '../../support/operator.ts';

/** What a scripted operator does, and the state hash in the end. A change of a hash raises SIMULATION_VERSION. */
const GOLDEN: readonly (readonly [string, Scenario, (op: Operator) => unknown, string])[] = [
  // The gown carried, falling, on the arms, being tied, a glove laid and half drawn.
  ['gowning', ROOMY, (op) => new GownWork(op).gowned().glove('right'), '1ab4d7bcb1975f8d'],
  // A glove being pulled off, the new one opened, held, entered and drawn over.
  ['changing a glove by hand at the bed', BY_HAND_AT_BED, (op) => GownWork.changedAtBed(op, 'left', (work) => work.openGlove('left')), '6a0d79f9a8d45b43'],
];

it.each(GOLDEN)('%s comes to the same bits again, also from snapshots in the midst of it', (_, room, play, golden) => {
  const settled = settle(room);
  const first = new Run(room, 5, settled);
  const op = new Operator(first);
  play(op);
  const bySteps = new Map<number, Command[]>();
  for (const { step, command } of op.commands) bySteps.set(step, [...(bySteps.get(step) ?? []), command]);
  let second = new Run(room, 5, settled);
  while (second.stepCount < first.stepCount) {
    second.step(bySteps.get(second.stepCount) ?? []);
    if (second.stepCount % 700 === 0) {
      const next = new Run(room, 5, settled);
      next.restore(structuredClone(second.snapshot()));
      expect(next.hash()).toBe(second.hash());
      second = next;
    }
  }
  expect(second.hash()).toBe(first.hash());
  expect(first.hash()).toBe(golden);
});
