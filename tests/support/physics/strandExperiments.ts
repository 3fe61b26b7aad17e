import { World } from '../../../src/core/physics/index.ts';
import { arc, march, type Point } from '../../../src/bench/pathPoints.ts';
import { box, circle, polygon } from './geometry.ts';

export const GRAVITY = 9.81;

/** A cord of length L between two points at the same height, hanging at rest. Returns sag (m) and relative stretch. */
export function hangCord(nodes: number, span: number, length: number): { sag: number; stretch: number } {
  const world = new World({ sleep: false });
  const link = length / (nodes - 1);
  const half = (nodes - 1) / 2;
  const depth = Math.sqrt(length * length - span * span) / 2;
  const points = Array.from({ length: nodes }, (_, i): Point => {
    const t = i <= half ? i / half : (nodes - 1 - i) / half;
    return [((i <= half ? -1 : 1) * span * (1 - t)) / 2, -t * depth];
  });
  world.addStrand({ points, linkM: link, massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 0, friction: 0.3, airDragPerS: 2 });
  world.finalize();
  world.pinNode(0);
  world.pinNode(nodes - 1);
  for (let k = 0; k < 30 * 120; k++) world.step();
  let sum = 0;
  for (let i = 1; i < nodes; i++) sum += Math.hypot(world.x[i]! - world.x[i - 1]!, world.y[i]! - world.y[i - 1]!);
  return { sag: -Math.min(...world.y), stretch: sum / length - 1 };
}

/**
 * A sheet on a table with `overhang` m hanging straight down from its rounded edge. Returns how far it moved (m) in `seconds`.
 * It is held by high friction while it settles; then it must hold by itself. `edgeFriction` tells whether the edge rubs too.
 */
export function hangSheet(friction: number, overhang: number, edgeFriction: boolean, seconds: number, nodes = 121): number {
  const length = 1.8;
  const half = 0.0015;
  const edge = EDGE_RADIUS;
  const link = length / (nodes - 1);
  const r = edge + half;
  const onArc = (r * Math.PI) / 2;
  const path: Point[] = [[-(length - onArc - overhang), half], ...arc(0, -edge, r, Math.PI / 2, 0, 24), [r, -edge - 3]];
  const world = new World({ sleep: false });
  world.addBody({ kind: 'static', x: 0, y: 0, shapes: [polygon([[-2.5, -0.3], [-0.02, -0.3], [-0.02, 0], [-2.5, 0]])], friction: 5 });
  world.addBody({ kind: 'static', x: 0, y: -edge, shapes: [circle(edge)], friction: edgeFriction ? 5 : 0 });
  const sheet = world.addStrand({ points: march(path, link, nodes), linkM: link, massPerM: 0.06, radius: half, stiffnessN: 5e3, bendingNm2: 0, friction, airDragPerS: 0.5 });
  world.finalize();
  // Laying it down is not part of the test: the tail is pinned for a second and then let go.
  const tail = world.strandStart(sheet);
  world.pinNode(tail);
  for (let k = 0; k < 180; k++) world.step();
  world.unpinNode(tail);
  const start = world.x[tail]!;
  for (let k = 0; k < seconds * 120; k++) {
    world.step();
    if (world.x[tail]! - start > 0.08) break;
  }
  return world.x[tail]! - start;
}

export const EDGE_RADIUS = 0.03;

/**
 * Overhang (m) at which the sheet of `hangSheet` slips: friction of the lying part equals the pull over the edge. Without edge
 * friction the hanging weight is balanced by µ times the lying weight; with it the tension grows along the arc as in the capstan
 * equation with weight, dT/dφ = µ (T + w R cos φ) − w R sin φ (Timoshenko & Young, Engineering Mechanics, belt friction).
 */
export function slipOverhang(friction: number, edgeFriction: boolean): number {
  const length = 1.8;
  const r = EDGE_RADIUS + 0.0015;
  const onArc = (r * Math.PI) / 2;
  const excess = (overhang: number): number => {
    let tension = friction * (length - onArc - overhang); // in units of weight per length
    if (!edgeFriction) return overhang + r - tension;
    const pieces = 2000;
    const d = Math.PI / 2 / pieces;
    for (let k = 0; k < pieces; k++) {
      const angle = (k + 0.5) * d;
      tension += d * (friction * (tension + r * Math.cos(angle)) - r * Math.sin(angle));
    }
    return overhang - tension;
  };
  let low = 0;
  let high = length - onArc;
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (excess(middle) > 0) high = middle;
    else low = middle;
  }
  return low;
}

/** A weightless pull over half a rail: `pullN` on one end, ratio · pullN on the other. Returns the way of the weaker end (m). */
export function pullOverRail(friction: number, ratio: number, railRadius: number, pullN: number): number {
  const nodes = 61;
  const length = 0.6;
  const link = length / (nodes - 1);
  const r = railRadius + 0.0035;
  const leg = (length - Math.PI * r) / 2;
  const world = new World({ gravity: 0, sleep: false });
  world.addBody({ kind: 'static', x: 0, y: 0, shapes: [circle(railRadius)], friction: 5 });
  const points = march([[-r, -leg], ...arc(0, 0, r, Math.PI, 0, 40), [r, -leg - 1]], link, nodes);
  world.addStrand({ points, linkM: link, massPerM: 0.09, radius: 0.0035, stiffnessN: 2e4, bendingNm2: 0, friction, airDragPerS: 2 });
  world.finalize();
  let start = 0;
  for (let k = 0; k < 360; k++) {
    const soft = Math.min(1, k / 30);
    const now = 1 + (ratio - 1) * Math.max(0, Math.min(1, (k - 60) / 60));
    world.setNodeForce(0, 0, -pullN * soft);
    world.setNodeForce(nodes - 1, 0, -pullN * soft * now);
    world.step();
    if (k === 59) start = world.y[0]!;
    if (k > 59 && !(world.y[0]! - start < 0.02)) break;
  }
  return world.y[0]! - start;
}

export interface CordOnSheet {
  /** Way of the cord and of the sheet's free end (m), the sheet's tension at its pin (N), and the cord's height (m). */
  readonly cordWay: number;
  readonly sheetWay: number;
  readonly pinTension: number;
  readonly height: number;
}

/** A cord of 1 m lies on a sheet on a table; `pullN` acts on its end. */
export function pullCordOnSheet(friction: number, pullN: number, options: { sheetPinned: boolean; tableFriction: number; seconds: number }): CordOnSheet {
  const world = new World({ sleep: false });
  world.addBody({ kind: 'static', x: 0, y: -0.1, shapes: [box(3, 0.1)], friction: options.tableFriction });
  const common = { friction, airDragPerS: 0.3, bendingNm2: 0 };
  const sheetPoints = Array.from({ length: 121 }, (_, i): Point => [-0.9 + (1.8 * i) / 120, 0.0015]);
  const cordPoints = Array.from({ length: 61 }, (_, i): Point => [-0.5 + i / 60, 0.0065]);
  const sheet = world.addStrand({ ...common, points: sheetPoints, massPerM: 0.06, radius: 0.0015, stiffnessN: 5e3 });
  const cord = world.addStrand({ ...common, points: cordPoints, massPerM: 0.09, radius: 0.0035, radiusOnStatic: 0.0063, stiffnessN: 2e4 });
  world.finalize();
  const sheetTail = world.strandStart(sheet);
  const cordTail = world.strandStart(cord);
  if (options.sheetPinned) world.pinNode(sheetTail);
  for (let k = 0; k < 60; k++) world.step();
  const cordStart = world.x[cordTail]!;
  const sheetStart = world.x[sheetTail]!;
  let tension = 0;
  let samples = 0;
  const steps = options.seconds * 120;
  for (let k = 0; k < steps; k++) {
    world.setNodeForce(cordTail + 60, pullN * Math.min(1, k / 60), 0);
    world.step();
    if (k < steps - 60) continue;
    tension += world.endTensions(sheet).first;
    samples++;
  }
  return { cordWay: world.x[cordTail]! - cordStart, sheetWay: world.x[sheetTail]! - sheetStart, pinTension: tension / samples, height: world.y[cordTail + 30]! };
}
