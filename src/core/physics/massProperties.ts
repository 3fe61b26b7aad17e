import Matter from 'matter-js';
import type { ShapeSpec } from './types.ts';

/**
 * Mass properties are found once, when a body is added: `matter-js` computes area and inertia of vertex lists with exact
 * arithmetic (+ − × ÷ only). Its bounds and pair finding work on objects and would allocate in every sub-step, so the
 * solver keeps flat boxes of its own for that.
 */
export interface MassProperties {
  readonly inverseMass: number;
  readonly inverseInertia: number;
}

const ARC_PIECES = 16;

/**
 * Inverse mass (1/kg) and inverse moment of inertia about the body's origin (1/(kg m²)) of a mass spread evenly over the shapes.
 * The rounded outline is replaced by a polygon with 16 pieces per corner (error below 0.2 %).
 */
export function massProperties(shapes: readonly ShapeSpec[], massKg: number, lockRotation: boolean): MassProperties {
  if (!(massKg > 0)) return { inverseMass: 0, inverseInertia: 0 };
  if (lockRotation) return { inverseMass: 1 / massKg, inverseInertia: 0 };
  const outlines = shapes.map(outline);
  const areas = outlines.map((points) => Matter.Vertices.area(points, false));
  const area = areas.reduce((sum, one) => sum + one, 0);
  const inertia = outlines.reduce((sum, points, k) => sum + inertiaAboutOrigin(points, (massKg * areas[k]!) / area), 0);
  return { inverseMass: 1 / massKg, inverseInertia: 1 / inertia };
}

/** Moment of inertia about the origin: about the own centre, plus m d² (parallel axes). */
function inertiaAboutOrigin(points: Matter.Vector[], massKg: number): number {
  const centre = Matter.Vertices.centre(points);
  const centred = points.map((point) => ({ x: point.x - centre.x, y: point.y - centre.y }));
  return Matter.Vertices.inertia(centred, massKg) + massKg * (centre.x * centre.x + centre.y * centre.y);
}

/** Corner points of a rounded shape, its arcs cut into pieces (unit vectors between the neighbouring normals, normalised). */
function outline(shape: ShapeSpec): Matter.Vector[] {
  const { verts, radius } = shape;
  const points: Matter.Vector[] = [];
  verts.forEach((vertex, k) => {
    const before = edgeNormal(verts[(k + verts.length - 1) % verts.length]!, vertex);
    const after = edgeNormal(vertex, verts[(k + 1) % verts.length]!);
    for (const [nx, ny] of arc(before, after)) points.push({ x: vertex[0] + radius * nx, y: vertex[1] + radius * ny });
  });
  return points;
}

function edgeNormal(a: readonly [number, number], b: readonly [number, number]): readonly [number, number] | null {
  const ex = b[0] - a[0];
  const ey = b[1] - a[1];
  const length = Math.sqrt(ex * ex + ey * ey);
  return length > 0 ? [ey / length, -ex / length] : null;
}

/** Unit vectors from one normal counter-clockwise to the next; a full circle if there is no edge. */
function arc(from: readonly [number, number] | null, to: readonly [number, number] | null): (readonly [number, number])[] {
  if (from === null || to === null) {
    const quarter = [[1, 0], [0, 1], [-1, 0], [0, -1]] as const;
    return quarter.flatMap((start, k) => arc(start, quarter[(k + 1) % 4]!).slice(0, -1));
  }
  const dot = from[0] * to[0] + from[1] * to[1];
  if (dot < -0.5) { // more than 120°: go by way of the middle, which a capsule's end needs
    const middle = [from[0] - from[1] + to[0] + to[1], from[1] + from[0] + to[1] - to[0]] as const;
    const length = Math.sqrt(middle[0] * middle[0] + middle[1] * middle[1]);
    const unit = [middle[0] / length, middle[1] / length] as const;
    return [...arc(from, unit).slice(0, -1), ...arc(unit, to)];
  }
  return Array.from({ length: ARC_PIECES + 1 }, (_, k) => {
    const t = k / ARC_PIECES;
    const x = from[0] + t * (to[0] - from[0]);
    const y = from[1] + t * (to[1] - from[1]);
    const length = Math.sqrt(x * x + y * y);
    return [x / length, y / length] as const;
  });
}
