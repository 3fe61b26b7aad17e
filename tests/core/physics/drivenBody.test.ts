import { describe, expect, it } from 'vitest';
import { World } from '../../../src/core/physics/index.ts';
import { box, circle } from '../../support/physics/geometry.ts';
import { capstanRatio, GRAVITY } from '../../support/physics/references.ts';
import { arc, march, type Point } from '../../../src/bench/pathPoints.ts';

const FRICTION = 0.3;

/** A strand and a block on a plate that accelerates from rest; returns their ways and the plate's after `seconds` (m). */
function accelerate(acceleration: number, seconds: number): { plate: number; strand: number; block: number } {
  const world = new World();
  const plate = world.addBody({ kind: 'driven', x: 0, y: -0.1, shapes: [box(3, 0.1)], friction: FRICTION });
  const block = world.addBody({ kind: 'dynamic', x: 1, y: 0.02, massKg: 0.2, shapes: [box(0.05, 0.02)], friction: FRICTION });
  const points = Array.from({ length: 31 }, (_, i): Point => [-0.3 + 0.01 * i, 0.0035]);
  world.addStrand({ points, massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 3e-4, friction: FRICTION, airDragPerS: 0 });
  world.finalize();
  for (let k = 0; k < 30; k++) world.step();
  const strandStart = world.x[0]!;
  const blockStart = world.bodyX[block]!;
  let way = 0;
  for (let k = 1; k <= seconds * 120; k++) {
    way = (acceleration * (k / 120) * (k / 120)) / 2;
    world.driveBody(plate, way, -0.1, 1, 0);
    world.step();
  }
  return { plate: way, strand: world.x[0]! - strandStart, block: world.bodyX[block]! - blockStart };
}

describe('a driven plate', () => {
  it('carries a strand and a block along while its acceleration is below µ g', () => {
    const { plate, strand, block } = accelerate(0.9 * FRICTION * GRAVITY, 0.5);
    // The plate's speed rises in steps of 1/120 s, so that both slip a little at each.
    expect(Math.abs(strand / plate - 1)).toBeLessThan(0.02);
    expect(Math.abs(block / plate - 1)).toBeLessThan(0.02);
  });

  it('slides under them above it, and they follow with µ g (Coulomb)', () => {
    const { strand, block } = accelerate(2 * FRICTION * GRAVITY, 0.5);
    const expected = (FRICTION * GRAVITY * 0.5 * 0.5) / 2;
    expect(Math.abs(strand / expected - 1)).toBeLessThan(0.03);
    expect(Math.abs(block / expected - 1)).toBeLessThan(0.03);
  });

  it('ends each step exactly where it was sent', () => {
    const world = new World();
    const hump = world.addBody({ kind: 'driven', x: 0, y: 0, shapes: [box(0.2, 0.1)], friction: FRICTION });
    world.finalize();
    world.driveBody(hump, 0.003, 0.001, 0.8, 0.6);
    world.step();
    expect([world.bodyX[hump], world.bodyY[hump], world.bodyC[hump], world.bodyS[hump]]).toEqual([0.003, 0.001, 0.8, 0.6]);
  });
});

describe('a turning drum', () => {
  it.each([0.2, 0.3])('pulls a taut cord with the capstan ratio, friction %f', (friction) => {
    const radius = 0.05;
    const r = radius + 0.0035;
    const world = new World({ gravity: 0 });
    const drum = world.addBody({ kind: 'driven', x: 0, y: 0, shapes: [circle(radius)], friction: 5 });
    const points = march([[-r, -0.2], ...arc(0, 0, r, Math.PI, 0, 40), [r, -0.6]], 0.01, 60);
    world.addStrand({ points, linkM: 0.01, massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 0, friction, airDragPerS: 2 });
    world.finalize();
    world.pinNode(0);
    const turn = 2 * (2 * Math.PI / 120); // two turns per second towards the weight
    let tension = 0;
    for (let k = 1; k <= 240; k++) {
      world.setNodeForce(59, 0, -1 * Math.min(1, k / 60));
      world.driveBody(drum, 0, 0, Math.cos(k * turn), -Math.sin(k * turn));
      world.step();
      if (k > 120) tension += world.endTensions(0).first / 120;
    }
    expect(Math.abs(tension / capstanRatio(friction) - 1)).toBeLessThan(0.05);
  });
});
