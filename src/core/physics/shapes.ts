import type { BodyStore } from './bodies.ts';
import type { BodySpec } from './types.ts';

/** All shapes as flat vertex lists: in the body's frame, and posed in the world once per sub-step. */
export class ShapeStore {
  readonly count: number;
  /** First vertex of each shape; entry `count` closes the list. */
  readonly first: Int32Array;
  readonly radius: Float64Array;
  readonly body: Int32Array;
  /** Axis-aligned box of each posed shape: min x, min y, max x, max y. */
  readonly box: Float64Array;
  readonly shapeOfVertex: Int32Array;
  /** Whether the shape is a capsule that does not yield, such as a rail. */
  readonly isPost: Uint8Array;
  private readonly localX: Float64Array;
  private readonly localY: Float64Array;
  private readonly localNormalX: Float64Array;
  private readonly localNormalY: Float64Array;
  /** Posed vertices, and the outward normal of the edge that starts at each. */
  readonly vx: Float64Array;
  readonly vy: Float64Array;
  readonly nx: Float64Array;
  readonly ny: Float64Array;
  /** Shapes of body b are firstOfBody[b] .. firstOfBody[b + 1] − 1. */
  readonly firstOfBody: Int32Array;

  constructor(specs: readonly BodySpec[]) {
    const shapes = specs.flatMap((spec, body) => spec.shapes.map((shape) => ({ body, shape })));
    const vertexCount = shapes.reduce((sum, one) => sum + one.shape.verts.length, 0);
    this.count = shapes.length;
    this.first = new Int32Array(this.count + 1);
    this.radius = Float64Array.from(shapes, (one) => one.shape.radius);
    this.body = Int32Array.from(shapes, (one) => one.body);
    this.box = new Float64Array(4 * this.count);
    this.isPost = Uint8Array.from(shapes, (one) => (one.shape.verts.length === 2 && specs[one.body]!.kind !== 'dynamic' ? 1 : 0));
    this.shapeOfVertex = new Int32Array(vertexCount);
    this.localX = new Float64Array(vertexCount);
    this.localY = new Float64Array(vertexCount);
    this.localNormalX = new Float64Array(vertexCount);
    this.localNormalY = new Float64Array(vertexCount);
    this.vx = new Float64Array(vertexCount);
    this.vy = new Float64Array(vertexCount);
    this.nx = new Float64Array(vertexCount);
    this.ny = new Float64Array(vertexCount);
    this.firstOfBody = new Int32Array(specs.length + 1);
    specs.forEach((spec, body) => (this.firstOfBody[body + 1] = this.firstOfBody[body] + spec.shapes.length));
    let v = 0;
    shapes.forEach(({ shape }, k) => {
      this.first[k] = v;
      shape.verts.forEach((_, q) => this.fillVertex(v++, k, shape.verts, q));
    });
    this.first[this.count] = v;
  }

  private fillVertex(v: number, shape: number, verts: readonly (readonly [number, number])[], q: number): void {
    const a = verts[q]!;
    const b = verts[(q + 1) % verts.length]!;
    const ex = b[0] - a[0];
    const ey = b[1] - a[1];
    const length = Math.sqrt(ex * ex + ey * ey) || 1;
    this.localX[v] = a[0];
    this.localY[v] = a[1];
    this.localNormalX[v] = ey / length;
    this.localNormalY[v] = -ex / length;
    this.shapeOfVertex[v] = shape;
  }

  /** Poses all shapes of a body where it will be after the displacement of this sub-step. */
  poseBody(bodies: BodyStore, body: number): void {
    for (let shape = this.firstOfBody[body]; shape < this.firstOfBody[body + 1]; shape++) this.pose(bodies, body, shape);
  }

  private pose(bodies: BodyStore, body: number, shape: number): void {
    const { localX, localY, localNormalX, localNormalY, vx, vy, nx, ny, box } = this;
    const turn = bodies.turn[body];
    const c = bodies.c[body] - turn * bodies.s[body];
    const s = bodies.s[body] + turn * bodies.c[body];
    const x = bodies.x[body] + bodies.dx[body];
    const y = bodies.y[body] + bodies.dy[body];
    let minX = 1e9;
    let minY = 1e9;
    let maxX = -1e9;
    let maxY = -1e9;
    for (let v = this.first[shape], end = this.first[shape + 1]; v < end; v++) {
      const px = x + c * localX[v] - s * localY[v];
      const py = y + s * localX[v] + c * localY[v];
      vx[v] = px;
      vy[v] = py;
      nx[v] = c * localNormalX[v] - s * localNormalY[v];
      ny[v] = s * localNormalX[v] + c * localNormalY[v];
      if (px < minX) minX = px;
      if (px > maxX) maxX = px;
      if (py < minY) minY = py;
      if (py > maxY) maxY = py;
    }
    const r = this.radius[shape];
    const o = 4 * shape;
    box[o] = minX - r;
    box[o + 1] = minY - r;
    box[o + 2] = maxX + r;
    box[o + 3] = maxY + r;
  }
}
