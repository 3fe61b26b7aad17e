import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../src/core/base/hash.ts';
import { buildBedScene } from '../../../src/bench/bedScene.ts';
import { ABUSED, HandScript } from '../../../src/bench/handScript.ts';
import { OwnEngine } from '../../../src/bench/ownEngine.ts';
import { scriptedSceneHash } from '../../../src/bench/scriptedScene.ts';
import { PeelExperiment } from '../../support/physics/peelExperiment.ts';
import type { World, WorldSnapshot } from '../../../src/core/physics/index.ts';

const hashOf = (world: World): string => {
  const hash = new StateHash();
  world.hashInto(hash);
  return hash.digest();
};

/** Steps without hands, which keep whatever they hold and are pushed by their last force. */
const coast = (world: World, steps: number): string => {
  for (let k = 0; k < steps; k++) world.step();
  return hashOf(world);
};

function bedAfter(steps: number, seed: number, drapeNodes = 60, cordNodes = 50): { world: World; fresh: () => World; grips: number } {
  const engine = new OwnEngine();
  const script = new HandScript(buildBedScene(engine, drapeNodes, cordNodes), ABUSED, seed);
  for (let k = 0; k < steps; k++) {
    script.drive();
    engine.step();
  }
  const fresh = (): World => {
    const other = new OwnEngine();
    buildBedScene(other, drapeNodes, cordNodes);
    return other.world;
  };
  return { world: engine.world, fresh, grips: script.hands.filter((hand) => hand.holds).length };
}

describe('a snapshot', () => {
  it.each([[300, 1], [611, 2], [900, 3], [1187, 4]])('taken at step %i (seed %i) continues bit for bit, in place and in a new world', (steps, seed) => {
    const { world, fresh } = bedAfter(steps, seed);
    const snapshot = structuredClone(world.snapshot());
    const continued = coast(world, 300);
    world.restore(snapshot);
    expect(coast(world, 300)).toBe(continued);
    const other = fresh();
    other.restore(snapshot);
    expect(coast(other, 300)).toBe(continued);
  });

  it('does not disturb the running world', () => {
    const { world } = bedAfter(400, 5);
    const { world: twin } = bedAfter(400, 5);
    world.snapshot();
    expect(coast(world, 200)).toBe(coast(twin, 200));
  });

  it('keeps a peel front in the middle of a link', () => {
    const one = new PeelExperiment(1, 1.5);
    one.draw(0.03, 0.5);
    const snapshot: WorldSnapshot = structuredClone(one.world.snapshot());
    const continued = coast(one.world, 120);
    const two = new PeelExperiment(1, 1.5);
    two.world.restore(snapshot);
    expect(coast(two.world, 120)).toBe(continued);
  });

  it('of a sleeping scene stays asleep', () => {
    const engine = new OwnEngine();
    buildBedScene(engine, 60, 50);
    for (let k = 0; k < 1200; k++) engine.step();
    const other = new OwnEngine();
    buildBedScene(other, 60, 50);
    other.world.restore(structuredClone(engine.world.snapshot()));
    expect(other.world.isAsleep()).toBe(engine.world.isAsleep());
    expect(coast(other.world, 60)).toBe(coast(engine.world, 60));
  });

  it('is refused by a world of other parts', () => {
    const { world } = bedAfter(10, 1);
    const { fresh } = bedAfter(0, 1, 121, 101);
    expect(() => fresh().restore(world.snapshot())).toThrow(/nodes/);
  });
});

describe('the scripted scene', () => {
  it('gives the same hashes twice', () => {
    expect(scriptedSceneHash(3)).toEqual(scriptedSceneHash(3));
  });

  it('calls no function that engines may round differently', () => {
    const names = ['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'atan2', 'exp', 'log', 'pow', 'hypot', 'cbrt', 'random'] as const;
    const kept = names.map((name) => Math[name]);
    const called: string[] = [];
    const table = Math as unknown as Record<string, unknown>;
    try {
      for (const name of names) table[name] = () => called.push(name);
      scriptedSceneHash(1);
    } finally {
      names.forEach((name, k) => (table[name] = kept[k]));
    }
    expect(called).toEqual([]);
  });
});
