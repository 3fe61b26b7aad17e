import { assert } from '../base/assert.ts';
import type { StrandSpec } from './types.ts';

/**
 * Inner friction of cord and cloth: the share of a change of curvature that is taken out, per second and at most per sub-step.
 * It acts on kinks of single links above all; a stretch of ten links loses about 1/s, a swing of the whole nothing.
 */
const CURL_RATE = 30;
const CURL_LIMIT = 0.05;

/** What all nodes of one strand share. Node i of the strand has the global index start + i. */
export class Strand {
  readonly start: number;
  readonly size: number;
  /** One past the last node. */
  readonly end: number;
  readonly linkM: number;
  readonly nodeMass: number;
  readonly radius: number;
  readonly radiusOnStatic: number;
  readonly stiffnessN: number;
  readonly bendingNm2: number;
  readonly friction: number;
  readonly airDrag: number;
  readonly selfCollide: boolean;
  readonly collides: number;
  readonly collidesWith: number;
  /** Friction against each body. */
  readonly bodyFriction: Float64Array;
  /** Stretch of a link per unit of constraint multiplier: l / (EA h²). */
  compliance = 0;
  /** Bending force per second difference, as displacement: EI h² / l³, limited for stability. */
  bendFactor = 0;
  /** Mass (kg) with which changes of curvature are damped within a sub-step. */
  curlDamping = 0;
  /** Smoothed greatest tension (N). */
  tension = 0;
  /** Tension of the first and last link in the last sub-step (N). */
  tensionAtStart = 0;
  tensionAtEnd = 0;
  hasForces = false;
  awake = true;
  calm = 0;
  island = -1;
  /** Greatest distance (m) of a node from where it was when the pairs of strands were collected, now and when the shape lists were. */
  travel = 0;
  travelAtShapes = 0;
  /** Boxes of runs of six links: firstBox .. endBox − 1 in the candidate lists. */
  firstBox = 0;
  endBox = 0;

  constructor(spec: StrandSpec, start: number, bodyFriction: Float64Array) {
    const a = spec.points[0]!;
    const b = spec.points[1]!;
    const dx = b[0] - a[0];
    const dy = b[1] - a[1];
    this.start = start;
    this.size = spec.points.length;
    this.end = start + this.size;
    this.linkM = spec.linkM ?? Math.sqrt(dx * dx + dy * dy);
    this.nodeMass = spec.massPerM * this.linkM;
    this.radius = spec.radius;
    this.radiusOnStatic = spec.radiusOnStatic ?? spec.radius;
    this.stiffnessN = spec.stiffnessN;
    this.bendingNm2 = spec.bendingNm2;
    this.friction = spec.friction;
    this.airDrag = spec.airDragPerS;
    this.selfCollide = spec.selfCollide ?? true;
    this.collides = spec.collides ?? 1;
    this.collidesWith = spec.collidesWith ?? -1;
    this.bodyFriction = bodyFriction;
    assert(this.size >= 3, `a strand needs at least 3 points, got ${this.size}`);
    assert(this.nodeMass > 0 && this.linkM > 0, 'a strand needs mass and length');
  }

  /** Adapts the coefficients to a sub-step of h seconds. */
  setSubstep(h: number): void {
    const hh = h * h;
    this.compliance = this.linkM / (this.stiffnessN * hh);
    this.curlDamping = Math.min(CURL_LIMIT, CURL_RATE * h) * this.nodeMass;
    this.bendFactor = Math.min((this.bendingNm2 * hh) / (this.linkM * this.linkM * this.linkM), 0.1 * this.nodeMass);
  }
}

/** All nodes as columns. The displacement of the last sub-step is (x − prevX, y − prevY); speed is that over h. */
export class NodeStore {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly prevX: Float64Array;
  readonly prevY: Float64Array;
  /** Inverse mass (1/kg), 0 while pinned. */
  readonly inverseMass: Float64Array;
  readonly freeInverseMass: Float64Array;
  readonly forceX: Float64Array;
  readonly forceY: Float64Array;
  /** Where the node was when the pairs of strands were collected. */
  readonly listedX: Float64Array;
  readonly listedY: Float64Array;
  readonly strand: Int32Array;
  /** Rest length (m) of the link to the next node. */
  readonly rest: Float64Array;
  /** Body that a node is fixed to, or −1, and where in the body's frame. */
  readonly holder: Int32Array;
  readonly localX: Float64Array;
  readonly localY: Float64Array;
  /** Force (N) above which the hold lets go, and the smoothed force it carries. */
  readonly holdLimit: Float64Array;
  readonly holdForce: Float64Array;
  /** Pinned nodes that are moved reach this point at the end of the step. */
  readonly pinX: Float64Array;
  readonly pinY: Float64Array;
  readonly pinMoves: Uint8Array;
  /** Contact state in the chain solve: 0 free, 1 sticks, 2 slides; and the direction of friction when it slides. */
  readonly contactState: Int8Array;
  readonly slideSign: Int8Array;

  constructor(specs: readonly StrandSpec[], strands: readonly Strand[]) {
    const n = (this.count = strands.reduce((sum, strand) => sum + strand.size, 0));
    const points = specs.flatMap((spec) => spec.points);
    this.x = Float64Array.from(points, (point) => point[0]);
    this.y = Float64Array.from(points, (point) => point[1]);
    this.prevX = this.x.slice();
    this.prevY = this.y.slice();
    this.inverseMass = new Float64Array(n);
    this.forceX = new Float64Array(n);
    this.forceY = new Float64Array(n);
    this.listedX = this.x.slice();
    this.listedY = this.y.slice();
    this.strand = new Int32Array(n);
    this.rest = new Float64Array(n);
    this.holder = new Int32Array(n).fill(-1);
    this.localX = new Float64Array(n);
    this.localY = new Float64Array(n);
    this.holdLimit = new Float64Array(n).fill(Infinity);
    this.holdForce = new Float64Array(n);
    this.pinX = new Float64Array(n);
    this.pinY = new Float64Array(n);
    this.pinMoves = new Uint8Array(n);
    this.contactState = new Int8Array(n);
    this.slideSign = new Int8Array(n);
    strands.forEach((strand, k) => {
      for (let i = strand.start; i < strand.end; i++) {
        const isEnd = i === strand.start || i === strand.end - 1; // an end carries half a link
        this.inverseMass[i] = (isEnd ? 2 : 1) / strand.nodeMass;
        this.strand[i] = k;
        this.rest[i] = strand.linkM;
      }
    });
    this.freeInverseMass = this.inverseMass.slice();
  }

  /** Takes the velocity out of a node. */
  stop(node: number): void {
    this.prevX[node] = this.x[node];
    this.prevY[node] = this.y[node];
  }
}
