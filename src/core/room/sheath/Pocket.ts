import { length } from '../../base/portableMath.ts';
import { otherSide, type Side } from '../../base/side.ts';
import { HAND } from '../handShape.ts';
import type { Scene } from '../scene.ts';
import { isInside } from './isInside.ts';
import { POCKET_LINKS } from './loading.ts';

/** How far thumb and fingers of one hand spread the mouth (m): less than the span of a hand; common practice. */
const SPREAD_M = 0.07;
/** How fast an edge of the mouth comes to where it is held, and the folds pay out or are gathered (m per step of 1/120 s). */
const EDGE_M = 0.004;
const PAY_OUT_M = 0.006;
/** Where the film waits while it is folded: out of the room. */
const AWAY_Y = -5;

/** One edge of the mouth: the hand that holds it, and where in its frame it is (m). */
interface Edge {
  by: Side;
  u: number;
  v: number;
}

interface Saved {
  readonly depthM: number;
  readonly edges: readonly [Edge, Edge] | null;
  readonly pushN: number;
}

/** Share by which a new push enters the one that counts: about 0.1 s. */
const PUSH_BLEND = 0.08;

/** The opened sheath: a film that hangs from the edges of its mouth, moved by the solver. Plain data in `save`. */
export class Pocket {
  depthM = 0;
  /** First and last node of the film, while it is open. */
  private edges: readonly [Edge, Edge] | null = null;
  /** What the film bears of the probe, averaged (N). */
  pushN = 0;

  constructor(
    private readonly scene: Scene,
    private readonly strand: number,
  ) {}

  get isOpen(): boolean {
    return this.edges !== null;
  }

  /** Points where the film waits while it is not open. */
  static away(): (readonly [number, number])[] {
    return Array.from({ length: POCKET_LINKS + 1 }, (_, k): readonly [number, number] => [k * 0.015, AWAY_Y]);
  }

  holds(side: Side): boolean {
    return this.edges?.some(({ by }) => by === side) ?? false;
  }

  /** Opens it from a hand that holds it folded, with another hand at the other edge of the mouth. */
  open(first: Side, second: Side): void {
    const { world, hands } = this.scene;
    const body = hands[first];
    const x = world.bodyX[body]! + world.bodyC[body]! * HAND.gripU;
    const y = world.bodyY[body]! + world.bodyS[body]! * HAND.gripU;
    this.depthM = 0.02;
    world.setLinkLength(this.strand, (2 * this.depthM) / POCKET_LINKS);
    const start = world.strandStart(this.strand);
    const half = POCKET_LINKS / 2;
    // Edge to edge a fold hangs down as far as it is paid out; the edges lie beside each other yet.
    const points = Array.from({ length: POCKET_LINKS + 1 }, (_, k): readonly [number, number] => [x + (k - half) * 0.0005, y - this.depthM * (1 - Math.abs(k - half) / half)]);
    world.placeStrand(this.strand, points);
    for (let k = 0; k <= POCKET_LINKS; k++) world.unpinNode(start + k);
    this.edges = [this.edgeAt(first, points[0]!), this.edgeAt(second, points[POCKET_LINKS]!)];
    this.edges.forEach((edge, k) => world.attachNode(this.node(k), hands[edge.by], edge.u, edge.v));
  }

  /** A hand takes the edge of the mouth that the other hand spreads. */
  take(side: Side): void {
    if (!this.edges || this.holds(side)) return;
    this.handOver(1, side);
  }

  /** A hand lets go of its edge: the other hand spreads the mouth then. False when no hand is left. */
  letGo(side: Side): boolean {
    if (!this.edges) return false;
    const other = otherSide(side);
    if (!this.holds(other)) return false;
    this.edges.forEach(({ by }, k) => {
      if (by === side) this.handOver(k as 0 | 1, other);
    });
    return true;
  }

  /** Takes the film out of the room. */
  close(): void {
    const { world } = this.scene;
    const start = world.strandStart(this.strand);
    this.edges = null;
    this.pushN = 0;
    for (const k of [0, 1] as const) world.detachNode(this.node(k));
    world.placeStrand(this.strand, Pocket.away());
    for (let k = 0; k <= POCKET_LINKS; k++) world.pinNode(start + k);
  }

  /** Edges come to where they are held; the folds pay out toward `goalM` of depth. Before the world moves. */
  step(goalM: number): void {
    if (!this.edges) return;
    const { world } = this.scene;
    this.depthM += Math.min(PAY_OUT_M, Math.max(-PAY_OUT_M, goalM - this.depthM));
    world.setLinkLength(this.strand, (2 * this.depthM) / POCKET_LINKS);
    this.edges.forEach((edge, k) => {
      const alone = this.edges!.every(({ by }) => by === edge.by);
      const goalU = HAND.gripU + (alone && k === 1 ? SPREAD_M : 0);
      const far = length(goalU - edge.u, edge.v);
      const share = far > EDGE_M ? EDGE_M / far : 1;
      edge.u += (goalU - edge.u) * share;
      edge.v -= edge.v * share;
      world.moveHold(this.node(k), edge.u, edge.v);
    });
  }

  /** What the film bears of the probe now. After the world has moved. */
  feel(probe: number): void {
    if (!this.edges) return;
    const { world } = this.scene;
    const first = world.strandStart(this.strand);
    let push = 0;
    world.forEachContact(({ node, body, otherBody, normalForceN }) => {
      if (node >= first && node <= first + POCKET_LINKS && (body === probe || otherBody === probe)) push += normalForceN;
    });
    this.pushN += (push - this.pushN) * PUSH_BLEND;
  }

  /** Pull of the film at a hand (N). */
  pullN(side: Side): number {
    const { world } = this.scene;
    return this.edges?.reduce((sum, { by }, k) => sum + (by === side ? world.holdForce(this.node(k)) : 0), 0) ?? 0;
  }

  /** Middle of the mouth (m). */
  mouth(): readonly [number, number] {
    const { x, y } = this.scene.world;
    const [a, b] = [this.node(0), this.node(1)];
    return [(x[a]! + x[b]!) / 2, (y[a]! + y[b]!) / 2];
  }

  /** Middle of the closed end (m). */
  end(): readonly [number, number] {
    const { world } = this.scene;
    const middle = world.strandStart(this.strand) + POCKET_LINKS / 2;
    return [world.x[middle]!, world.y[middle]!];
  }

  /** Gap between (x, y) and the nearer edge of the mouth (m). */
  edgeGap(x: number, y: number): number {
    const { world } = this.scene;
    return Math.min(...([0, 1] as const).map((k) => length(world.x[this.node(k)]! - x, world.y[this.node(k)]! - y)));
  }

  /** Whether (x, y) is between the walls. */
  contains(x: number, y: number): boolean {
    return this.edges !== null && isInside(this.scene.world, this.strand, x, y);
  }

  save(): unknown {
    const saved: Saved = { depthM: this.depthM, edges: this.edges && [{ ...this.edges[0] }, { ...this.edges[1] }], pushN: this.pushN };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.depthM = s.depthM;
    this.pushN = s.pushN;
    this.edges = s.edges && [{ ...s.edges[0] }, { ...s.edges[1] }];
  }

  private node(edge: number): number {
    const { world } = this.scene;
    return world.strandStart(this.strand) + edge * POCKET_LINKS;
  }

  private handOver(k: 0 | 1, to: Side): void {
    const { world, hands } = this.scene;
    const node = this.node(k);
    const edge = this.edgeAt(to, [world.x[node]!, world.y[node]!]);
    Object.assign(this.edges![k], edge);
    world.attachNode(node, hands[to], edge.u, edge.v);
  }

  private edgeAt(by: Side, [x, y]: readonly [number, number]): Edge {
    const { world, hands } = this.scene;
    const body = hands[by];
    const dx = x - world.bodyX[body]!;
    const dy = y - world.bodyY[body]!;
    return { by, u: world.bodyC[body]! * dx + world.bodyS[body]! * dy, v: world.bodyC[body]! * dy - world.bodyS[body]! * dx };
  }
}
