import { beforeAll, describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';
import { SIDES } from '../../../src/core/base/side.ts';
import type { Command } from '../../../src/core/commands/command.ts';
import { settle } from '../../../src/core/room/settle.ts';
import type { RunSnapshot } from '../../../src/core/run/contract.ts';
import { Run } from '../../../src/core/run/run.ts';
import { Loading } from '../../support/loading.ts';
import { runOperator, shippedScenario } from '../../support/runOperator.ts';

/** Seconds of a good loading at which hands go mad: sheath lying, in the hand, probe swinging, in the sheath, film half drawn, laid down. */
const AT_S = [3, 22, 45, 53, 57, 87];
const MAD_STEPS = 10 * 120;
const ASKS = ['bringProbe', 'lower', 'stop', 'letGo', 'takeCord', 'pullTail', 'giveSlack', 'openPacket', 'offerPacket', 'takeAway', 'wipeFace'] as const;
/** Half of the room's width, its height, and how deep a thing may be in the floor (m). */
const ROOM = { halfM: 2.6, highM: 2.6, floorM: -0.05 };

/** Commands of seeded hands that fly, turn, grip, let go and squeeze anywhere, and ask for anything. */
function madness(chance: Rng, step: number): Command[] {
  const commands = SIDES.flatMap((hand, k): Command[] => {
    const own = step + 31 * k;
    const some: Command[] = [];
    if (own % 60 === 0) {
      some.push({ type: 'hand.move', hand, xMm: Math.round(chance.between(-900, 900)), yMm: Math.round(chance.between(850, 1500)) });
      some.push({ type: 'hand.turn', hand, angleDeg: Math.round(chance.between(-80, 80)) });
    }
    if (own % 130 === 0) some.push({ type: chance.next() < 0.6 ? 'hand.grip' : 'hand.release', hand });
    if (own % 170 === 0) some.push({ type: 'hand.use', hand, on: chance.next() < 0.6 });
    return some;
  });
  return step % 200 === 0 ? [...commands, { type: 'ask', request: ASKS[Math.floor(chance.next() * ASKS.length)]! }] : commands;
}

describe('A loading under hands that go mad', () => {
  const scenario = shippedScenario('sheath-short');
  const settled = settle(scenario);
  const kept: RunSnapshot[] = [];

  beforeAll(() => {
    const { commands } = runOperator((op) => void new Loading(op).all(), scenario);
    const byStep = new Map<number, Command[]>();
    for (const { step, command } of commands) byStep.set(step, [...(byStep.get(step) ?? []), command]);
    const run = new Run(scenario, scenario.seed, settled);
    for (const seconds of AT_S) {
      while (run.stepCount < seconds * 120) run.step(byStep.get(run.stepCount) ?? []);
      kept.push(structuredClone(run.snapshot()) as RunSnapshot);
    }
  }, 300_000);

  it.each(AT_S)('stays finite and keeps everything in the room, from %i s', (seconds) => {
    const run = new Run(scenario, scenario.seed, settled);
    run.restore(kept[AT_S.indexOf(seconds)]!);
    const chance = new Rng(seconds);
    const { world } = run.room.scene;
    const astray: string[] = [];
    for (let k = 0; k < MAD_STEPS; k++) {
      run.step(madness(chance, k));
      if (![world.x, world.y].every((all) => all.every(Number.isFinite))) astray.push(`a node in step ${k}`);
      world.bodyY.forEach((y, b) => {
        const x = world.bodyX[b]!;
        if (!(Math.abs(x) < ROOM.halfM && y > ROOM.floorM && y < ROOM.highM)) astray.push(`body ${b} at ${x}, ${y} in step ${k}`);
      });
    }
    expect(astray).toEqual([]);
  }, 300_000);
});
