import type { ShapeStore } from './shapes.ts';

/** Separation of cores (m) down to which they count as apart: arithmetic is no better. */
const ROUNDING = 1e-9;
/** Distance (m) below which two corners give no direction. */
const TOUCHING = 1e-6;
/** Feature of a contact of two corners. */
const CORNERS = 63;

/** Where two rounded convex shapes touch: up to two points. Normals point from the first shape to the second. */
export class Manifold {
  count = 0;
  readonly nx = new Float64Array(2);
  readonly ny = new Float64Array(2);
  /** Points on the surfaces of the first and the second shape (m). */
  readonly ax = new Float64Array(2);
  readonly ay = new Float64Array(2);
  readonly bx = new Float64Array(2);
  readonly by = new Float64Array(2);
  readonly sep = new Float64Array(2);
  readonly feature = new Int32Array(2);
  private bestFace = 0;

  constructor(private readonly shapes: ShapeStore) {}

  /** Finds the points closer than `slack` (m): separating axes over the edges of both cores, then clipping. */
  find(a: number, b: number, slack: number): void {
    const { first, radius } = this.shapes;
    this.count = 0;
    const limit = radius[a] + radius[b] + slack;
    if (first[a + 1] - first[a] === 1) return this.pointAgainst(a, b, true, limit);
    if (first[b + 1] - first[b] === 1) return this.pointAgainst(b, a, false, limit);
    const sepA = this.deepestFace(a, b);
    const faceA = this.bestFace;
    if (sepA > limit) return;
    const sepB = this.deepestFace(b, a);
    const faceB = this.bestFace;
    if (sepB > limit) return;
    const areApart = Math.max(sepA, sepB) > -ROUNDING;
    if (sepB > sepA + 1e-4) this.clip(b, faceB, a, true, limit, areApart);
    else this.clip(a, faceA, b, false, limit, areApart);
  }

  /** Largest separation of the core of `other` from a face of `shape`; remembers that face. */
  private deepestFace(shape: number, other: number): number {
    const { first, vx, vy, nx, ny } = this.shapes;
    let best = -1e9;
    for (let f = first[shape]; f < first[shape + 1]; f++) {
      let nearest = 1e9;
      for (let q = first[other]; q < first[other + 1]; q++) {
        const d = (vx[q] - vx[f]) * nx[f] + (vy[q] - vy[f]) * ny[f];
        if (d < nearest) nearest = d;
      }
      if (nearest > best) {
        best = nearest;
        this.bestFace = f;
      }
    }
    return best;
  }

  /** Stores a point p of the incident core, the reference core lying `coreSep` under it along the normal. */
  private put(flip: boolean, nx: number, ny: number, px: number, py: number, refRadius: number, incRadius: number, coreSep: number, feature: number): void {
    const k = this.count++;
    const incX = px - incRadius * nx;
    const incY = py - incRadius * ny;
    const refX = px - (coreSep - refRadius) * nx;
    const refY = py - (coreSep - refRadius) * ny;
    this.nx[k] = flip ? -nx : nx;
    this.ny[k] = flip ? -ny : ny;
    this.ax[k] = flip ? incX : refX;
    this.ay[k] = flip ? incY : refY;
    this.bx[k] = flip ? refX : incX;
    this.by[k] = flip ? refY : incY;
    this.sep[k] = coreSep - refRadius - incRadius;
    this.feature[k] = feature;
  }

  /** A circle against any shape. `circleFirst` tells that the circle is the first shape of the pair. */
  private pointAgainst(circle: number, other: number, circleFirst: boolean, limit: number): void {
    const { first, radius, vx, vy } = this.shapes;
    const centre = first[circle];
    const near = nearestOnCore(this.shapes, other, vx[centre], vy[centre]);
    if (near.distance > limit) return;
    this.put(circleFirst, near.nx, near.ny, vx[centre], vy[centre], radius[other], radius[circle], near.distance, 0);
  }

  /**
   * Clips the edge of `inc` that faces the reference edge `face` of `ref` to the width of that edge. Where the nearest points of cores
   * that lie apart are two corners, they alone touch: what clipping leaves would be farther away, or nothing. Of cores that overlap at
   * least the lowest point of the edge is a contact.
   */
  private clip(ref: number, face: number, inc: number, flip: boolean, limit: number, areApart: boolean): void {
    const { first, radius, vx, vy, nx, ny } = this.shapes;
    const faceEnd = face + 1 === first[ref + 1] ? first[ref] : face + 1;
    const ax = nx[face];
    const ay = ny[face];
    const p = this.mostOpposed(inc, ax, ay);
    const pEnd = p + 1 === first[inc + 1] ? first[inc] : p + 1;
    const length = (vy[faceEnd] - vy[face]) * ax - (vx[faceEnd] - vx[face]) * ay;
    const from = (vy[p] - vy[face]) * ax - (vx[p] - vx[face]) * ay;
    const to = (vy[pEnd] - vy[face]) * ax - (vx[pEnd] - vx[face]) * ay;
    const heightFrom = (vx[p] - vx[face]) * ax + (vy[p] - vy[face]) * ay;
    const heightTo = (vx[pEnd] - vx[face]) * ax + (vy[pEnd] - vy[face]) * ay;
    const lowest = heightFrom < heightTo ? p : pEnd;
    const low = lowest === p ? from : to;
    if (areApart && (low < 0 || low > length) && this.corners(ref, low < 0 ? face : faceEnd, inc, p, pEnd, flip, limit)) return;
    const span = to - from;
    for (let q = 0; q < 2; q++) {
      const t = q === 0 ? from : to;
      const clipped = t < 0 ? 0 : t > length ? length : t;
      const u = Math.abs(span) > 1e-9 ? (clipped - from) / span : q;
      if (u < -1e-9 || u > 1 + 1e-9) continue;
      const height = heightFrom + u * (heightTo - heightFrom);
      if (height > limit) continue;
      const feature = (flip ? 32 : 0) + q + 1 + (clipped !== t ? 4 : 0);
      this.put(flip, ax, ay, vx[p] + u * (vx[pEnd] - vx[p]), vy[p] + u * (vy[pEnd] - vy[p]), radius[ref], radius[inc], height, feature);
    }
    if (this.count === 0) this.put(flip, ax, ay, vx[lowest], vy[lowest], radius[ref], radius[inc], Math.min(heightFrom, heightTo), flip ? 32 : 0);
  }

  /** Whether the end of the edge p that is nearest to a corner of `ref` is its nearest point; then they are the contact. */
  private corners(ref: number, corner: number, inc: number, p: number, pEnd: number, flip: boolean, limit: number): boolean {
    const { radius, vx, vy } = this.shapes;
    const t = along(vx[corner], vy[corner], vx[p], vy[p], vx[pEnd], vy[pEnd]);
    if (t > 0 && t < 1) return false;
    const other = t <= 0 ? p : pEnd;
    const ux = vx[other] - vx[corner];
    const uy = vy[other] - vy[corner];
    const d = Math.sqrt(ux * ux + uy * uy);
    if (d < TOUCHING) return false;
    if (d <= limit) this.put(flip, ux / d, uy / d, vx[other], vy[other], radius[ref], radius[inc], d, CORNERS);
    return true;
  }

  private mostOpposed(shape: number, ax: number, ay: number): number {
    const { first, nx, ny } = this.shapes;
    let best = first[shape];
    let least = 1e9;
    for (let v = first[shape]; v < first[shape + 1]; v++) {
      const d = nx[v] * ax + ny[v] * ay;
      if (d < least) {
        least = d;
        best = v;
      }
    }
    return best;
  }
}

/** Distance (m, negative inside a polygon) of a point from the core of a posed shape, and the unit vector away from it. */
export interface NearestPoint {
  distance: number;
  nx: number;
  ny: number;
}

const nearest: NearestPoint = { distance: 0, nx: 0, ny: 1 };

/** Nearest point of a shape's core. The result is overwritten by the next call. */
export function nearestOnCore(shapes: ShapeStore, shape: number, px: number, py: number): NearestPoint {
  const { first, vx, vy, nx, ny } = shapes;
  const start = first[shape];
  const corners = first[shape + 1] - start;
  if (corners > 2) {
    let face = start;
    let depth = -1e9;
    for (let v = start; v < first[shape + 1]; v++) {
      const d = (px - vx[v]) * nx[v] + (py - vy[v]) * ny[v];
      if (d > depth) {
        depth = d;
        face = v;
      }
    }
    const next = face + 1 === first[shape + 1] ? start : face + 1;
    const t = along(px, py, vx[face], vy[face], vx[next], vy[next]);
    if (depth <= 0 || (t >= 0 && t <= 1)) {
      nearest.distance = depth;
      nearest.nx = nx[face];
      nearest.ny = ny[face];
      return nearest;
    }
    const corner = t < 0 ? face : next;
    return away(px - vx[corner], py - vy[corner]);
  }
  if (corners === 1) return away(px - vx[start], py - vy[start]);
  const t = along(px, py, vx[start], vy[start], vx[start + 1], vy[start + 1]);
  const k = t < 0 ? 0 : t > 1 ? 1 : t;
  return away(px - vx[start] - k * (vx[start + 1] - vx[start]), py - vy[start] - k * (vy[start + 1] - vy[start]));
}

function along(px: number, py: number, ax: number, ay: number, bx: number, by: number): number {
  const ex = bx - ax;
  const ey = by - ay;
  return ((px - ax) * ex + (py - ay) * ey) / (ex * ex + ey * ey);
}

function away(ux: number, uy: number): NearestPoint {
  const d = Math.sqrt(ux * ux + uy * uy);
  nearest.distance = d;
  nearest.nx = d > 1e-9 ? ux / d : 0;
  nearest.ny = d > 1e-9 ? uy / d : 1;
  return nearest;
}
