import { BodyStore } from './bodies.ts';
import { Candidates } from './candidates.ts';
import { FixedContacts } from './fixedContacts.ts';
import { Manifold } from './manifold.ts';
import type { GlueSpec, PeelFront } from './peelFront.ts';
import { RigidContacts } from './rigidContacts.ts';
import type { Settings } from './settings.ts';
import { ShapeStore } from './shapes.ts';
import { SidePairs } from './sidePairs.ts';
import { SoftContacts } from './softContacts.ts';
import { NodeStore, Strand } from './strands.ts';
import { ChainScratch } from './chainScratch.ts';
import type { BodySpec, PeelEvent, SlipEvent, StrandSpec } from './types.ts';
import type { Weld } from './welds.ts';

/** Everything the sub-step loop reads and writes. The functions beside it each do one stage of the loop. */
export class SolverState {
  readonly settings: Settings;
  readonly bodies: BodyStore;
  readonly shapes: ShapeStore;
  readonly strands: readonly Strand[];
  readonly nodes: NodeStore;
  readonly fixed: FixedContacts;
  readonly soft: SoftContacts;
  readonly rigid = new RigidContacts();
  readonly manifold: Manifold;
  readonly candidates: Candidates;
  readonly pairs: SidePairs;
  readonly chain: ChainScratch;
  /** Nodes that are fixed to a body, in order of fixing. */
  held: number[] = [];
  welds: Weld[] = [];
  nextJoint = 0;
  /** Glued nodes and their adhesive, in order of gluing. */
  readonly glue = new Map<number, GlueSpec>();
  fronts: PeelFront[] = [];
  slipped: SlipEvent[] = [];
  peeled: PeelEvent[] = [];
  stepCount = 0;
  substeps = 0;
  /** Length of a sub-step in s. */
  h = 0;
  /** Steps for which fewer sub-steps would have done. */
  quietSteps = 0;
  /** Candidate lists must be rebuilt because something appeared, vanished or woke. */
  stale = true;
  someAsleep = false;
  /** Node positions at the beginning of the sub-step. */
  readonly startX: Float64Array;
  readonly startY: Float64Array;
  /** How long nothing outside has acted on the world (s), and the drag (1/s) that lets it settle then. */
  quietSeconds = 0;
  settleDrag = 0;
  /** Crossings between strands found in the last step. */
  crossings = 0;
  /** Smoothed node positions, and those at the last calm check; poses of bodies then as x, y, s. */
  readonly smoothX: Float64Array;
  readonly smoothY: Float64Array;
  readonly calmNodeX: Float64Array;
  readonly calmNodeY: Float64Array;
  readonly calmBody: Float64Array;
  /** Forces on bodies when they were last woken or awake. */
  readonly knownForce: Float64Array;

  constructor(settings: Settings, bodySpecs: readonly BodySpec[], strandSpecs: readonly StrandSpec[]) {
    this.settings = settings;
    this.bodies = new BodyStore(bodySpecs);
    this.shapes = new ShapeStore(bodySpecs);
    let start = 0;
    this.strands = strandSpecs.map((spec) => {
      const strand = new Strand(spec, start, Float64Array.from(bodySpecs, (body, b) => spec.frictionByBody?.[b] ?? Math.min(spec.friction, body.friction)));
      start = strand.end;
      return strand;
    });
    this.nodes = new NodeStore(strandSpecs, this.strands);
    this.fixed = new FixedContacts(this.nodes.count);
    this.soft = new SoftContacts(this.nodes.count);
    this.manifold = new Manifold(this.shapes);
    this.candidates = new Candidates(this.nodes.count, this.shapes.count);
    this.pairs = new SidePairs(this.nodes.count, this.strands.length);
    this.chain = new ChainScratch(this.strands.reduce((most, strand) => Math.max(most, strand.size), 3));
    this.startX = this.nodes.x.slice();
    this.startY = this.nodes.y.slice();
    this.smoothX = this.nodes.x.slice();
    this.smoothY = this.nodes.y.slice();
    this.calmNodeX = this.nodes.x.slice();
    this.calmNodeY = this.nodes.y.slice();
    this.calmBody = new Float64Array(3 * this.bodies.count);
    this.knownForce = new Float64Array(3 * this.bodies.count);
    for (let b = 0; b < this.bodies.count; b++) this.shapes.poseBody(this.bodies, b);
    this.setSubsteps(settings.minSubsteps);
  }

  /** Changes the number of sub-steps per step. Node speeds live in displacements, which scale with h. */
  setSubsteps(count: number): void {
    const { nodes, settings } = this;
    const h = settings.dt / count;
    if (this.h > 0 && h !== this.h) {
      const scale = h / this.h;
      for (let i = 0; i < nodes.count; i++) {
        nodes.prevX[i] = nodes.x[i] - (nodes.x[i] - nodes.prevX[i]) * scale;
        nodes.prevY[i] = nodes.y[i] - (nodes.y[i] - nodes.prevY[i]) * scale;
      }
      const { rigid } = this; // loads are in kg·m, which scale with h²
      for (let k = 0; k < rigid.oldCount; k++) {
        rigid.oldLoad[k] *= scale * scale;
        rigid.oldShear[k] *= scale * scale;
      }
    }
    this.substeps = count;
    this.h = h;
    for (const strand of this.strands) strand.setSubstep(h);
  }

  /** Whether two group masks admit each other. */
  static admits(groupA: number, maskA: number, groupB: number, maskB: number): boolean {
    return (groupA & maskB) !== 0 && (groupB & maskA) !== 0;
  }
}
