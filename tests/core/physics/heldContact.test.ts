import { describe, expect, it } from 'vitest';
import { World } from '../../../src/core/physics/index.ts';
import { circle } from '../../support/physics/geometry.ts';

const CORD = { massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 3e-4, friction: 0, airDragPerS: 0 };

/** A cord along x whose middle node is held by a resting body above it; another body comes from below. No gravity; seven short links weigh next to nothing. */
function collide(offset: number): { momentum: number; holder: number; striker: number; fastest: number } {
  const world = new World({ gravity: 0 });
  const holder = world.addBody({ kind: 'dynamic', x: 0, y: 0.1, massKg: 0.4, friction: 0, lockRotation: true, shapes: [circle(0.03)] });
  const striker = world.addBody({ kind: 'dynamic', x: offset, y: -0.08, massKg: 0.8, friction: 0, lockRotation: true, shapes: [circle(0.045)] });
  const points = Array.from({ length: 7 }, (_, i): [number, number] => [0.04 * (i - 3), 0]);
  world.addStrand({ ...CORD, massPerM: 0.002, points });
  world.finalize();
  world.attachNode(3, holder, 0, -0.1);
  world.setBodyVelocity(striker, 0, 0.5);
  let fastest = 0;
  for (let k = 0; k < 24; k++) {
    const before = [...world.y];
    world.step();
    world.y.forEach((y, i) => (fastest = Math.max(fastest, Math.abs(y - before[i]!) * 120)));
  }
  return { momentum: 0.4 * world.bodyVy[holder]! + 0.8 * world.bodyVy[striker]!, holder: world.bodyVy[holder]!, striker: world.bodyVy[striker]!, fastest };
}

describe('a body that runs into a cord where another holds it', () => {
  it.each([0, 0.003, 0.006])('takes the holder along: momentum is conserved, and both go on as one (contact %f m beside the hold)', (offset) => {
    const { momentum, holder, striker } = collide(offset);
    expect(Math.abs(momentum / (0.8 * 0.5) - 1)).toBeLessThan(0.02);
    const common = (0.8 * 0.5) / (0.4 + 0.8); // perfectly inelastic collision
    expect(Math.abs(holder / common - 1)).toBeLessThan(0.05);
    expect(Math.abs(striker / common - 1)).toBeLessThan(0.05);
  });

  it.each([0.0005, 0.003, 0.006])('throws no part of the cord about (contact %f m beside the hold)', (offset) => {
    expect(collide(offset).fastest).toBeLessThan(2 * 0.5); // a free end follows at the speed of what it hangs on
  });
});

describe('a cord held close above the end of a rail and drawn down over it', () => {
  it.each([0.0005, 0.002, 0.01])('stands as if its holder stood on the rail (%f m beside the hold): the free end stays where it is', (offset) => {
    const world = new World({ gravity: 0 });
    world.addBody({ kind: 'static', x: 0, y: 0, friction: 0, shapes: [{ verts: [[offset, -0.4], [offset, 0]], radius: 0.015 }] });
    const holder = world.addBody({ kind: 'dynamic', x: 0, y: 0.1, massKg: 0.4, friction: 0, lockRotation: true, gravityScale: 0, shapes: [circle(0.01)] });
    const points = Array.from({ length: 9 }, (_, i): [number, number] => [0.04 * i, 0.0195]);
    world.addStrand({ ...CORD, points });
    world.finalize();
    world.attachNode(0, holder, 0, -0.0805);
    world.setBodyForce(holder, 0, -20);
    let moved = 0;
    for (let k = 0; k < 12; k++) {
      world.step();
      moved = Math.max(moved, Math.hypot(world.x[1]! - 0.04, world.y[1]! - 0.0195));
    }
    expect(moved).toBeLessThan(0.01);
    expect(Math.abs(world.bodyY[holder]! - 0.1)).toBeLessThan(0.002);
  });
});
