import { PI } from '../core/base/portableMath.ts';
import type { ShapeSpec } from '../core/physics/index.ts';
import { arc, march, type Point } from './pathPoints.ts';
import type { SceneEngine } from './sceneEngine.ts';

export const RAIL_RADIUS = 0.015;
export const CORD_RADIUS = 0.0035;
export const DRAPE_RADIUS = 0.0015;
export const HAND_RADIUS = 0.045;
export const RAIL_X = 0.47;
export const RAIL_TOP = 0.35 - RAIL_RADIUS;
export const CORD_LENGTH = 2;
export const DRAPE_LENGTH = 1.8;

/** A bed seen from its foot: rails, patient, drape over all, a cord with a probe, three packets and two hands. y = 0 is the mattress top. */
export interface BedScene {
  readonly engine: SceneEngine;
  readonly statics: readonly ShapeSpec[];
  readonly hands: readonly [number, number];
  readonly probe: number;
  readonly packets: readonly number[];
  readonly drape: number;
  readonly cord: number;
  readonly drapeNodes: number;
  readonly cordNodes: number;
}

/** Builds the scene with the given numbers of nodes; friction 0.3 throughout. */
export function buildBedScene(engine: SceneEngine, drapeNodes: number, cordNodes: number): BedScene {
  const friction = 0.3;
  const hump = humpOutline();
  const statics = fixedShapes(hump);
  for (const shape of statics) engine.addStatic(shape, 0, 0, friction);
  const cordLink = CORD_LENGTH / (cordNodes - 1);
  const cordPoints = cordPath(cordLink, cordNodes);
  const tip = cordPoints[cordNodes - 1]!;
  const boxShape = (w: number, h: number): ShapeSpec => ({ verts: [[-w, -h], [w, -h], [w, h], [-w, h]], radius: 0 });
  const probe = engine.addBody({ shape: boxShape(0.06, 0.025), x: tip[0] - 0.06, y: tip[1], massKg: 0.15, friction });
  const addHand = (x: number, y: number): number =>
    engine.addBody({ shape: { verts: [[0, 0]], radius: HAND_RADIUS }, x, y, massKg: 0.4, friction, floats: true, lockRotation: true });
  const hands = [addHand(-0.3, 0.6), addHand(0.7, 0.6)] as const;
  const places: Point[] = [[-0.13, 0.21], [-0.02, 0.32], [0.14, 0.34]];
  const packets = places.map(([x, y]) => engine.addBody({ shape: boxShape(0.05, 0.006), x, y, massKg: 0.04, friction }));
  const drapeLink = DRAPE_LENGTH / (drapeNodes - 1);
  const drape = engine.addStrand({
    points: drapePath(hump, drapeLink, drapeNodes), linkM: drapeLink, massPerM: 0.06, radius: DRAPE_RADIUS, radiusOnStatic: DRAPE_RADIUS,
    stiffnessN: 5e3, bendingNm2: 2e-6, friction, airDragPerS: 1,
  });
  const cord = engine.addStrand({
    points: cordPoints, linkM: cordLink, massPerM: 0.09, radius: CORD_RADIUS, radiusOnStatic: CORD_RADIUS + 2 * DRAPE_RADIUS,
    stiffnessN: 2e4, bendingNm2: 3e-4, friction, airDragPerS: 0.5, startPinned: true, endBody: { body: probe, x: 0.06, y: 0 },
  });
  engine.finalize();
  return { engine, statics, hands, probe, packets, drape, cord, drapeNodes, cordNodes };
}

/** Half an ellipse of 0.4 by 0.15 m, sunk a little into the mattress; counter-clockwise. */
function humpOutline(): Point[] {
  const outline: Point[] = [];
  for (let i = 8; i >= 0; i--) {
    const u = -1 + i / 4;
    const y = 0.15 * Math.sqrt(Math.max(0, 1 - u * u));
    outline.push([0.2 * u, y < 1e-9 ? -0.02 : y]);
  }
  return outline;
}

function fixedShapes(hump: readonly Point[]): ShapeSpec[] {
  const block = (x0: number, y0: number, x1: number, y1: number): ShapeSpec => ({ verts: [[x0, y0], [x1, y0], [x1, y1], [x0, y1]], radius: 0 });
  const rail = (x: number): ShapeSpec => ({ verts: [[x, -0.24], [x, RAIL_TOP]], radius: RAIL_RADIUS });
  return [
    block(-RAIL_X, -0.25, RAIL_X, 0), block(-3, -1.2, 3, -0.7), { verts: hump, radius: 0 },
    block(-2.2, -1, -1.7, 3), block(1.7, -1, 2.2, 3), rail(-RAIL_X), rail(RAIL_X),
  ];
}

/** From the left rail over the patient and the right rail, hanging outside both. */
function drapePath(hump: readonly Point[], link: number, nodes: number): Point[] {
  const r = RAIL_RADIUS + DRAPE_RADIUS + 0.0005;
  const over = hump.filter(([x, y]) => y > 0 && x >= -1e-9).map(([x, y]): Point => [x * 1.02, y + DRAPE_RADIUS + 0.002]);
  over.sort((p, q) => p[0] - q[0]);
  const right: Point[] = [...over, [0.28, 0.07], [0.4, 0.2], ...arc(RAIL_X, RAIL_TOP, r, PI * 0.75, 0, 12), [RAIL_X + r, -0.6]];
  const half = march(right, link, Math.floor(nodes / 2) + 1);
  const mirrored = half.slice(1).map(([x, y]): Point => [-x, y]).reverse();
  return [...mirrored, ...half].slice(0, nodes);
}

/** From the outlet down in a loop, over the right rail and back over the patient; as low a loop as leaves the tip right of the middle. */
function cordPath(link: number, nodes: number): Point[] {
  for (let low = -0.1; low > -0.6; low -= 0.01) {
    const path: Point[] = [[1.1, 0.3], [0.9, low], [0.62, 0.3], [0.5, 0.4], [0.4, 0.4], [0.25, 0.27], [0.1, 0.22], [-0.35, 0.3]];
    const points = march(path, link, nodes);
    if (points.length === nodes && points[nodes - 1]![0] > 0.02) return points;
  }
  throw new Error('the cord does not fit into the scene');
}
