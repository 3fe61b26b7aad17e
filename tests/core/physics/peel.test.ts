import { describe, expect, it } from 'vitest';
import { World } from '../../../src/core/physics/index.ts';
import { box } from '../../support/physics/geometry.ts';
import { PeelExperiment } from '../../support/physics/peelExperiment.ts';
import { peelForce } from '../../support/physics/references.ts';

const degrees = (value: number): number => (value * Math.PI) / 180;
const cases = [1, 3].flatMap((strength) => [60, 90, 135, 170].map((angle) => [strength, angle] as const));

describe.each(cases)('an edge glued with %f N, pulled at %f degrees', (strength, angle) => {
  const expected = peelForce(strength, degrees(angle)); // Kendall's energy balance

  it('comes off within 4 % of the peel force of a rising load', () => {
    const force = new PeelExperiment(strength, degrees(angle)).firstPeel(0.7 * expected, 0.1 * expected, 2 * expected);
    expect(Math.abs(force / expected - 1)).toBeLessThan(0.04);
  });

  it('holds at 95 % of it', () => {
    const experiment = new PeelExperiment(strength, degrees(angle));
    for (let k = 0; k < 480; k++) experiment.load(0.95 * expected * Math.min(1, k / 120));
    expect(experiment.gluedCount).toBe(40);
  });

  it('lets go progressively when drawn at 30 mm/s: steady load within 2 %, and the front goes back as fast as it is drawn', () => {
    const experiment = new PeelExperiment(strength, degrees(angle));
    const loads = experiment.draw(0.03, 4).slice(120);
    const mean = loads.reduce((sum, load) => sum + load, 0) / loads.length;
    expect(Math.abs(mean / expected - 1)).toBeLessThan(0.02);
    for (const load of loads) expect(Math.abs(load / expected - 1)).toBeLessThan(0.1);
    expect(Math.abs(experiment.gluedCount - (40 - 12))).toBeLessThanOrEqual(1); // 120 mm at 10 mm per node
  });
});

describe('an adhesive edge', () => {
  it('comes off from the free end, node after node, and reports each once', () => {
    const experiment = new PeelExperiment(1, degrees(90));
    const nodes: number[] = [];
    for (let k = 0; k < 480; k++) {
      experiment.load(1.3 * Math.min(1, k / 120));
      for (const event of experiment.world.peeled) nodes.push(event.node);
    }
    expect(nodes.length).toBeGreaterThan(3);
    nodes.forEach((node, k) => expect(node).toBe(39 - k));
  });

  it('bears a pull along the skin without limit, unless a shear limit is given', () => {
    const experiment = new PeelExperiment(1, 0); // cos 0 = 1: no peel force at any load
    for (let k = 0; k < 240; k++) experiment.load(10 * Math.min(1, k / 120));
    expect(experiment.gluedCount).toBe(40);
  });

  it.each([120, 154])('folded back and pulled at %f degrees comes off to its last node at the same force', (angle) => {
    const world = new World({ gravity: 0, sleep: false });
    const skin = world.addBody({ kind: 'static', x: 0, y: -0.1, shapes: [box(1, 0.1)], friction: 0 });
    const [dirX, dirY] = [Math.cos(degrees(angle)), Math.sin(degrees(angle))];
    const points = Array.from({ length: 20 }, (_, i): [number, number] => [0.01 * Math.min(i, 2) + 0.01 * Math.max(0, i - 2) * dirX, 0.0015 + 0.01 * Math.max(0, i - 2) * dirY]);
    world.addStrand({ points, massPerM: 0.06, radius: 0.0015, stiffnessN: 5e3, bendingNm2: 2e-6, friction: 0, airDragPerS: 3, selfCollide: false });
    world.finalize();
    for (let node = 0; node < 3; node++) world.glueNode(node, skin, 1);
    const expected = peelForce(1, degrees(angle)); // Kendall's energy balance
    const glued = (): number => [0, 1, 2].filter((node) => world.isGlued(node)).length;
    for (let k = 0; k <= 960; k++) {
      const load = expected * Math.min(0.9, 0.9 * (k / 120)) + (k > 240 ? (0.15 * expected * (k - 240)) / 720 : 0);
      world.setNodeForce(19, load * dirX, load * dirY);
      world.step();
      if (load < 0.95 * expected) expect(glued()).toBe(3);
    }
    expect(glued()).toBe(0); // at 1.05 of it
  });

  it('goes with skin that moves', () => {
    const experiment = new PeelExperiment(1, degrees(90), true);
    const { world, skin } = experiment;
    const before = world.x[5]!;
    for (let k = 1; k <= 60; k++) {
      world.driveBody(skin, 0.0005 * k, -0.1, 1, 0);
      world.step();
    }
    expect(world.x[5]! - before).toBeCloseTo(0.03, 9);
  });
});
