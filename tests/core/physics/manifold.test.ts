import { describe, expect, it } from 'vitest';
import { Rng } from '../../../src/core/base/rng.ts';
import { World, type ShapeSpec } from '../../../src/core/physics/index.ts';
import { bisect, box, capsule, circle } from '../../support/physics/geometry.ts';
import { coreDistance, posed } from '../../support/physics/distances.ts';

const SLACK = 0.0015;
/** Of two faces whose separations differ by less (0.1 mm) the solver keeps to the first body's, so that it does not change from step to step. */
const KEPT = 1.1e-4;

interface Found {
  readonly count: number;
  /** Of the deepest point: separation (m), and the normal from the first shape to the second. */
  readonly sep: number;
  readonly nx: number;
  readonly ny: number;
}

function contactOf(a: ShapeSpec, b: ShapeSpec, x: number, y: number, c: number, s: number): Found {
  const world = new World();
  for (const [shape, pose] of [[a, { x: 0, y: 0 }], [b, { x, y, c, s }]] as const) world.addBody({ kind: 'static', shapes: [shape], friction: 0.5, ...pose });
  world.finalize();
  const { manifold } = world.state;
  manifold.find(0, 1, SLACK);
  const k = manifold.count === 2 && manifold.sep[1]! < manifold.sep[0]! ? 1 : 0;
  return { count: manifold.count, sep: manifold.sep[k]!, nx: manifold.nx[k]!, ny: manifold.ny[k]! };
}

/** Points on an ellipse round the origin, one in each sector: a convex polygon. */
function polygonOf(rng: Rng, corners: number, size: number): ShapeSpec {
  const flat = rng.between(0.1, 1);
  const angles = Array.from({ length: corners }, (_, k) => ((k + rng.next()) * 2 * Math.PI) / corners);
  return { verts: angles.map((angle) => [size * Math.cos(angle), flat * size * Math.sin(angle)] as const), radius: 0 };
}

function someShape(rng: Rng): ShapeSpec {
  const size = rng.between(0.01, 0.15);
  const kind = Math.floor(rng.next() * 5);
  const shape = kind === 0 ? circle(0) : kind < 3 ? capsule([-size, 0], [size, 0], 0) : kind === 3 ? box(size, size * rng.between(0.1, 1)) : polygonOf(rng, 5, size);
  return { ...shape, radius: kind < 3 || rng.next() < 0.8 ? rng.between(0.003, 0.03) : 0 };
}

/** Angles of all kinds, and nearly those of things that lie along or across each other. */
const someAngle = (rng: Rng): number => (rng.next() < 0.6 ? rng.between(0, 2 * Math.PI) : (Math.floor(rng.next() * 4) * Math.PI) / 2 + (rng.next() < 0.5 ? 0 : rng.between(-1e-3, 1e-3)));

/** Two shapes whose rounded surfaces are `gap` (m, negative: overlap) apart, the second in the direction `way`. */
function pairAt(rng: Rng, gap: number) {
  const a = someShape(rng);
  const b = someShape(rng);
  const angle = someAngle(rng);
  const way = someAngle(rng);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const gapAt = (d: number): number => coreDistance(a.verts, posed(b.verts, d * Math.cos(way), d * Math.sin(way), c, s)) - a.radius - b.radius;
  const d = bisect(0, 0.6, 50, (value) => gapAt(value) > gap);
  return { a, b, c, s, x: d * Math.cos(way), y: d * Math.sin(way) };
}

describe('contact of rounded convex shapes', () => {
  // Outside check: every corner against every edge (distances.ts), which is exact for convex figures that lie apart.
  it('has the distance of the surfaces as separation, and along the normal they come to touch', () => {
    const rng = new Rng(1);
    let judged = 0;
    for (let k = 0; k < 6000; k++) {
      const { a, b, c, s, x, y } = pairAt(rng, rng.between(-0.004, SLACK - KEPT));
      const cores = coreDistance(a.verts, posed(b.verts, x, y, c, s));
      if (cores < 1e-4) continue; // sharp corners that overlap have no such distance
      judged++;
      const found = contactOf(a, b, x, y, c, s);
      const told = JSON.stringify({ a, b, x, y, c, s });
      expect(found.count, told).toBeGreaterThan(0);
      expect(Math.abs(found.sep - (cores - a.radius - b.radius)), told).toBeLessThan(KEPT);
      const touching = coreDistance(a.verts, posed(b.verts, x - found.sep * found.nx, y - found.sep * found.ny, c, s));
      expect(Math.abs(Math.max(touching, 0) - a.radius - b.radius), told).toBeLessThan(KEPT);
    }
    expect(judged).toBeGreaterThan(4000);
  });

  it('is none beyond the slack', () => {
    const rng = new Rng(2);
    for (let k = 0; k < 1500; k++) {
      const { a, b, c, s, x, y } = pairAt(rng, rng.between(SLACK + KEPT, 0.01));
      expect(contactOf(a, b, x, y, c, s).count, JSON.stringify({ a, b, x, y, c, s })).toBe(0);
    }
  });

  it('is there for cores that overlap, too, and leads out of the overlap', () => {
    const rng = new Rng(3);
    let judged = 0;
    for (let k = 0; k < 4000; k++) {
      const [a, b] = [someShape(rng), someShape(rng)];
      const angle = someAngle(rng);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const [x, y] = [rng.between(-0.1, 0.1), rng.between(-0.1, 0.1)];
      if (a.verts.length === 1 || b.verts.length === 1 || coreDistance(a.verts, posed(b.verts, x, y, c, s)) >= 0) continue;
      judged++;
      const found = contactOf(a, b, x, y, c, s);
      const told = JSON.stringify({ a, b, x, y, c, s });
      expect(found.count, told).toBeGreaterThan(0);
      const out = KEPT - found.sep;
      expect(coreDistance(a.verts, posed(b.verts, x + out * found.nx, y + out * found.ny, c, s)), told).toBeGreaterThanOrEqual(a.radius + b.radius - 2 * KEPT);
    }
    expect(judged).toBeGreaterThan(500);
  });

  // A rail seen end-on; expected by hand from where the ends of the axes are.
  it.each([
    ['in line with it', { half: 0.035, x: 0, y: 0.084, c: 0, s: 1 }, [0, 0.049]],
    ['across, its left end beside the axis', { half: 0.05, x: 0.059, y: 0.049, c: 1, s: 0 }, [0.009, 0.049]],
    ['across, its right end beside the axis', { half: 0.05, x: -0.059, y: 0.049, c: 1, s: 0 }, [-0.009, 0.049]],
  ] as const)('of a capsule over the end of another, %s, is between the ends', (_, { half, x, y, c, s }, [dx, dy]) => {
    const found = contactOf(capsule([0, -0.5], [0, 0], 0.02), capsule([-half, 0], [half, 0], 0.03), x, y, c, s);
    const d = Math.hypot(dx, dy);
    expect(found.count).toBe(1);
    expect(found.sep).toBeCloseTo(d - 0.05, 9);
    expect(found.nx).toBeCloseTo(dx / d, 9);
    expect(found.ny).toBeCloseTo(dy / d, 9);
  });
});
