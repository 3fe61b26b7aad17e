import { describe, expect, it } from 'vitest';
import { World } from '../../../src/core/physics/index.ts';
import { box } from '../../support/physics/geometry.ts';
import { catenarySag, swingPeriod } from '../../support/physics/references.ts';
import { hangCord } from '../../support/physics/strandExperiments.ts';

describe('a hanging cord', () => {
  it.each([51, 101])('sags like a catenary with %i nodes', (nodes) => {
    const { sag, stretch } = hangCord(nodes, 1.2, 2);
    expect(Math.abs(sag / catenarySag(1.2, 2) - 1)).toBeLessThan(1e-3); // catenarySag: closed form
    expect(Math.abs(stretch)).toBeLessThan(5e-4);
  });

  it('stretches by F l / (E A) under a pull along it', () => {
    const world = new World({ gravity: 0 });
    world.addStrand({ points: Array.from({ length: 11 }, (_, i) => [0.02 * i, 0] as const), massPerM: 0.09, radius: 0.003, stiffnessN: 2000, bendingNm2: 0, friction: 0, airDragPerS: 5 });
    world.finalize();
    world.pinNode(0);
    for (let k = 0; k < 600; k++) {
      world.setNodeForce(10, 4 * Math.min(1, k / 120), 0);
      world.step();
    }
    expect((world.x[10]! - 0.2) / 0.2).toBeCloseTo(4 / 2000, 6); // Hooke's law
    expect(world.endTensions(0).first).toBeCloseTo(4, 2);
  });
});

/** Swings a probe on its cord by about 2 cm and measures the mean period over several passes of the middle. */
function measurePeriod(cordLength: number, link: number): number {
  const world = new World({ sleep: false });
  const count = Math.round(cordLength / link) + 1;
  const angle = 0.03;
  const points = Array.from({ length: count }, (_, i) => [Math.sin(angle) * i * link, -Math.cos(angle) * i * link] as const);
  const [tipX, tipY] = points[count - 1]!;
  const arm = 0.06;
  const probe = world.addBody({
    kind: 'dynamic', x: tipX + arm * Math.sin(angle), y: tipY - arm * Math.cos(angle), c: Math.cos(angle), s: Math.sin(angle),
    massKg: 0.15, shapes: [box(0.025, 0.06)], friction: 0.3,
  });
  const cord = world.addStrand({ points, linkM: link, massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 0, friction: 0.3, airDragPerS: 0 });
  world.finalize();
  world.pinNode(world.strandStart(cord));
  world.attachNode(world.strandStart(cord) + count - 1, probe, 0, arm);
  const passes: number[] = [];
  let before = world.bodyX[probe]!;
  for (let k = 1; passes.length < 7; k++) {
    world.step();
    const now = world.bodyX[probe]!;
    if (before * now < 0) passes.push((k - now / (now - before)) / 120);
    before = now;
  }
  return ((passes[6]! - passes[0]!) / 6) * 2;
}

describe('a probe hanging on its cord', () => {
  it.each([[0.3, 0.015], [0.8, 0.02]])('swings with the period of a heavy cord with a rigid end, length %f m', (cordLength, link) => {
    const inertia = (0.15 * (0.05 * 0.05 + 0.12 * 0.12)) / 12; // rectangle about its centre
    const reference = swingPeriod({ cordLength, massPerM: 0.09, probeKg: 0.15, arm: 0.06, inertia });
    expect(Math.abs(measurePeriod(cordLength, link) / reference - 1)).toBeLessThan(0.02);
  });
});
