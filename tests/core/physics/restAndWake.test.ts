import { describe, expect, it } from 'vitest';
import { World } from '../../../src/core/physics/index.ts';
import { OwnEngine } from '../../../src/bench/ownEngine.ts';
import { buildBedScene } from '../../../src/bench/bedScene.ts';
import { HandScript, STILL } from '../../../src/bench/handScript.ts';
import { box, circle } from '../../support/physics/geometry.ts';

/** A block and a cord on a table, a finger above the cord. */
function smallScene(): { world: World; block: number; finger: number } {
  const world = new World();
  world.addBody({ kind: 'static', x: 0, y: -0.1, shapes: [box(2, 0.1)], friction: 0.3 });
  const block = world.addBody({ kind: 'dynamic', x: 0.8, y: 0.02, massKg: 0.1, shapes: [box(0.04, 0.02)], friction: 0.3 });
  const finger = world.addBody({ kind: 'driven', x: 0, y: 0.1, shapes: [circle(0.01)], friction: 0.3 });
  world.addStrand({ points: Array.from({ length: 41 }, (_, i) => [-0.4 + 0.02 * i, 0.004] as const), massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 3e-4, friction: 0.3, airDragPerS: 0.5 });
  world.finalize();
  return { world, block, finger };
}

const positions = (world: World): number[] => [...world.x, ...world.y, ...world.bodyX, ...world.bodyY, ...world.bodyC, ...world.bodyS];

const settle = (world: World, seconds: number): void => {
  for (let k = 0; k < seconds * 120; k++) world.step();
};

describe('a scene left alone', () => {
  it('of few parts comes to rest exactly within 5 s', () => {
    const { world } = smallScene();
    settle(world, 5);
    expect(world.isAsleep()).toBe(true);
    const before = positions(world);
    settle(world, 2);
    expect(positions(world)).toEqual(before);
  });

  it.each([[60, 50], [121, 101]])('of a draped bed with %i and %i nodes comes to rest exactly within 5 s of landing', (drapeNodes, cordNodes) => {
    const engine = new OwnEngine();
    const script = new HandScript(buildBedScene(engine, drapeNodes, cordNodes), STILL, 1);
    const run = (seconds: number): void => {
      for (let k = 0; k < seconds * 120; k++) {
        script.drive();
        engine.step();
      }
    };
    run(2); // packets and probe start in the air and the sheet out of balance
    run(5);
    expect(engine.world.isAsleep()).toBe(true);
    const before = positions(engine.world);
    run(1);
    expect(positions(engine.world)).toEqual(before);
  });

  it('sleeps only where it would stay anyway: woken up, nothing moves more than 5 mm in 2 s', () => {
    const engine = new OwnEngine();
    const script = new HandScript(buildBedScene(engine, 60, 50), STILL, 1);
    const { world } = engine;
    for (let k = 0; k < 8 * 120; k++) {
      script.drive();
      world.step();
    }
    expect(world.isAsleep()).toBe(true);
    const x = world.x.slice();
    const y = world.y.slice();
    world.wakeStrand(0);
    world.wakeStrand(1);
    settle(world, 2);
    const away = [...x].map((before, i) => Math.hypot(world.x[i]! - before, world.y[i]! - y[i]!));
    expect(Math.max(...away)).toBeLessThan(0.005);
  });
});

describe('a sleeping scene', () => {
  it('wakes when a driven body touches it, and only what is touched', () => {
    const { world, block, finger } = smallScene();
    settle(world, 5);
    const blockBefore = world.bodyX[block];
    for (let k = 1; k <= 60; k++) {
      world.driveBody(finger, 0.002 * k, 0.1 - 0.0015 * k, 1, 0);
      world.step();
    }
    expect(world.isAsleep()).toBe(false);
    expect(Math.max(...[...world.x].map((x, i) => Math.abs(x + 0.4 - 0.02 * i)))).toBeGreaterThan(1e-4);
    expect(world.bodyX[block]).toBe(blockBefore);
  });

  it.each<[string, (parts: ReturnType<typeof smallScene>) => void]>([
    ['a force on a body', ({ world, block }) => world.setBodyForce(block, 0.5, 0)],
    ['a force on a node', ({ world }) => world.setNodeForce(3, 0, 0.5)],
    ['a pin that is drawn', ({ world }) => { world.pinNode(0); world.drivePin(0, -0.41, 0.02); }],
    ['a grip', ({ world, finger }) => world.gripNode(finger, 20, 10)],
  ])('wakes by %s', (_, disturb) => {
    const parts = smallScene();
    settle(parts.world, 5);
    const before = positions(parts.world);
    disturb(parts);
    settle(parts.world, 0.1);
    expect(parts.world.isAsleep()).toBe(false);
    if (_ !== 'a grip') expect(positions(parts.world)).not.toEqual(before);
  });

  it('falls when what it lay on is taken away', () => {
    const world = new World();
    const table = world.addBody({ kind: 'static', x: 0, y: -0.1, shapes: [box(2, 0.1)], friction: 0.3 });
    const block = world.addBody({ kind: 'dynamic', x: 0, y: 0.02, massKg: 0.1, shapes: [box(0.04, 0.02)], friction: 0.3 });
    world.finalize();
    settle(world, 3);
    expect(world.isAsleep()).toBe(true);
    world.setBodyEnabled(table, false);
    settle(world, 0.5);
    expect(world.bodyY[block]!).toBeCloseTo(0.02 - (9.81 * 0.25) / 2, 1); // free fall
  });
});
