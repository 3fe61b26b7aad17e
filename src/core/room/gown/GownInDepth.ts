import type { StateHash } from '../../base/hash.ts';
import { length } from '../../base/portableMath.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { World } from '../../physics/world.ts';
import type { WorldSnapshot } from '../../physics/snapshot.ts';
import { TouchTracker, type TouchTrackerSnapshot } from '../../touch/TouchTracker.ts';
import type { TrackedCapsule } from '../../touch/trackedCapsule.ts';
import type { Point } from '../layout.ts';
import type { LineFromSide, NearestFromSide } from '../picture.ts';
import type { Scene } from '../scene.ts';
import type { Slot, Slots } from '../surfaces.ts';
import { addEdge, addSleeve, BED, CLOTH, CLOTH_R } from './clothStrands.ts';
import { foldedCloth } from './foldedCloth.ts';
import { GOWN_LINKS, SLEEVE_LINKS } from './gownFacts.ts';
import { leadPin } from './leadPin.ts';
import { waitingCloth } from './waitingCloth.ts';
import { wearerProfile, type BodyPart } from './wearerProfile.ts';

/** Where cloth waits that does not hang: out of the room. */
const AWAY_Y = -6;
/** Scrubs on the cloth of a gown. */
const FRICTION = 0.3;
const GROUP = { cloth: 0, body: 1 } as const;

/** Cloth that meets the operator's clothes: the slot that it is of, and where that is in the room (m). */
export interface OnClothes {
  readonly slot: Slot;
  readonly x: number;
  readonly y: number;
}

/**
 * The open gown a second time, from the operator's side: how far before the clothes its two sides and empty sleeves hang. The same
 * cloth in the same solver, in a section of its own: x is the distance before the shoulders, y the height (m). Its inside faces the
 * wearer, so that only the hem and the sleeves, which have their outside all round, are touched; and only before the body's breadth.
 */
export class GownInDepth {
  private readonly world = new World();
  private readonly strands: Readonly<Record<Side, { readonly edge: number; readonly sleeve: number }>>;
  private readonly body: readonly BodyPart[];
  private readonly tracker = new TouchTracker({ groups: 2, mayTouch: (a, b) => a !== b });
  private readonly before: { readonly x: Float64Array; readonly y: Float64Array };
  private readonly capsules: TrackedCapsule[] = [];
  /** Where in the room each slot is that could be touched in this step. */
  private readonly places = new Map<Slot, Point>();
  private hangs: Record<Side, boolean> = { left: false, right: false };
  /** Where each slot that is on the clothes met them. */
  private met = new Map<Slot, Point>();
  /** Where hem or sleeves are nearest to the clothes before which they hang, and how near (m); null where they hang before nothing. */
  nearest: NearestFromSide | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly slots: Slots,
  ) {
    const { scenario } = scene;
    const { lengthM, sleeveM } = scenario.gown;
    this.body = wearerProfile(scenario);
    for (const { low, high, r } of this.body) this.world.addBody({ kind: 'static', x: 0, y: 0, shapes: [{ verts: [[0, low], [0, high]], radius: r }], friction: FRICTION, collides: BED, collidesWith: CLOTH });
    const add = () => ({ edge: addEdge(this.world, scenario, waitingCloth(1, AWAY_Y, GOWN_LINKS, lengthM)), sleeve: addSleeve(this.world, scenario, waitingCloth(1, AWAY_Y, SLEEVE_LINKS, sleeveM)) });
    this.strands = { right: add(), left: add() };
    this.world.finalize();
    for (const side of SIDES) this.pin(side);
    this.before = { x: this.world.x.slice(), y: this.world.y.slice() };
  }

  /**
   * Moves the cloth for one step, after the room has moved. `shoulderM` is how far before the operator's shoulders each shoulder of the
   * open gown is held (m), null for one that no hand holds.
   */
  step(shoulderM: Readonly<Record<Side, number | null>>, torsoX: number): void {
    const { world, scene } = this;
    for (const side of SIDES) {
      const depth = shoulderM[side];
      if (depth === null) this.putAway(side);
      else this.lead(side, [depth, scene.world.y[scene.world.strandStart(scene.gown!.edges[side])]!]);
    }
    this.capsules.length = 0;
    this.places.clear();
    this.nearest = null;
    if (!SIDES.some((side) => this.hangs[side])) {
      if (this.tracker.count > 0) this.follow();
      return;
    }
    this.before.x.set(world.x);
    this.before.y.set(world.y);
    world.step();
    this.outline(torsoX);
    this.follow();
  }

  /** Hem and sleeves that are on the clothes now. */
  get onClothes(): readonly OnClothes[] {
    return [...this.met].map(([slot, [x, y]]) => ({ slot, x, y }));
  }

  /** Distances before the shoulders and heights of the nodes of a side and of its sleeve (m); null while that side does not hang. */
  lineOf(side: Side, what: 'edge' | 'sleeve'): LineFromSide | null {
    if (!this.hangs[side]) return null;
    const start = this.world.strandStart(this.strands[side][what]);
    const end = start + this.world.strandSize(this.strands[side][what]);
    return { x: this.world.x.slice(start, end), y: this.world.y.slice(start, end) };
  }

  hashInto(hash: StateHash): void {
    this.world.hashInto(hash);
    this.tracker.hashInto(hash);
  }

  save(): unknown {
    return { world: this.world.snapshot(), tracker: this.tracker.snapshot(), hangs: { ...this.hangs }, met: [...this.met], nearest: this.nearest };
  }

  restore(saved: unknown): void {
    const s = saved as { world: WorldSnapshot; tracker: TouchTrackerSnapshot; hangs: Record<Side, boolean>; met: [Slot, Point][]; nearest: NearestFromSide | null };
    this.world.restore(s.world);
    this.tracker.restore(s.tracker);
    this.hangs = { ...s.hangs };
    this.met = new Map(s.met);
    this.nearest = s.nearest;
  }

  private lead(side: Side, at: Point): void {
    const { world, scene } = this;
    const { edge, sleeve } = this.strands[side];
    const tops = [world.strandStart(edge), world.strandStart(sleeve)];
    if (this.hangs[side]) {
      for (const top of tops) leadPin(world, top, at);
      return;
    }
    this.hangs[side] = true;
    const { lengthM, sleeveM } = scene.scenario.gown;
    world.placeStrand(edge, foldedCloth(at[0], at[1], 1, lengthM));
    world.placeStrand(sleeve, Array.from({ length: SLEEVE_LINKS + 1 }, (_, k): Point => [at[0], at[1] - (k * sleeveM) / SLEEVE_LINKS]));
    for (const [top, links] of [[tops[0]!, GOWN_LINKS], [tops[1]!, SLEEVE_LINKS]] as const) for (let k = 1; k <= links; k++) world.unpinNode(top + k);
  }

  private putAway(side: Side): void {
    if (!this.hangs[side]) return;
    const { edge, sleeve } = this.strands[side];
    const { lengthM, sleeveM } = this.scene.scenario.gown;
    this.world.placeStrand(edge, waitingCloth(1, AWAY_Y, GOWN_LINKS, lengthM));
    this.world.placeStrand(sleeve, waitingCloth(1, AWAY_Y, SLEEVE_LINKS, sleeveM));
    this.pin(side);
    this.hangs[side] = false;
  }

  private pin(side: Side): void {
    const { world } = this;
    for (const strand of Object.values(this.strands[side])) for (let k = 0; k < world.strandSize(strand); k++) world.pinNode(world.strandStart(strand) + k);
  }

  /** What can be touched in this step: hem and sleeves before the body's breadth, and the body. */
  private outline(torsoX: number): void {
    const { slots, scene, strands } = this;
    const { gown, world } = scene;
    const parts = slots.gown!;
    const half = scene.scenario.operator.shoulderHalfWidthM;
    const put = (slot: Slot, node: number, inRoom: number): void => {
      const [x, y] = [(world.x[inRoom]! + world.x[inRoom + 1]!) / 2, (world.y[inRoom]! + world.y[inRoom + 1]!) / 2];
      if (Math.abs(x - torsoX) > half) return;
      this.places.set(slot, [x, y]);
      this.capsule(slot, node);
      this.lookAt(node + 1);
    };
    for (const side of SIDES) {
      if (!this.hangs[side]) continue;
      const last = GOWN_LINKS - 1;
      put(parts.hem, this.world.strandStart(strands[side].edge) + last, world.strandStart(gown!.edges[side]) + last);
      for (let k = 0; k < SLEEVE_LINKS; k++) put(parts.sleeves[side] + k, this.world.strandStart(strands[side].sleeve) + k, world.strandStart(gown!.sleeves[side]) + k);
    }
    for (const { low, high, r } of this.body) this.capsules.push({ surface: slots.count, group: GROUP.body, ax: 0, ay: low, bx: 0, by: high, Ax: 0, Ay: low, Bx: 0, By: high, r });
  }

  private capsule(surface: Slot, node: number): void {
    const { before, world } = this;
    this.capsules.push({
      surface, group: GROUP.cloth, r: CLOTH_R, ax: before.x[node]!, ay: before.y[node]!, bx: before.x[node + 1]!, by: before.y[node + 1]!,
      Ax: world.x[node]!, Ay: world.y[node]!, Bx: world.x[node + 1]!, By: world.y[node + 1]!,
    });
  }

  /** Keeps the node that is nearest to the clothes. */
  private lookAt(node: number): void {
    const [x, y] = [this.world.x[node]!, this.world.y[node]!];
    const gapM = Math.min(...this.body.map(({ low, high, r }) => length(x, Math.max(0, low - y, y - high)) - r)) - CLOTH_R;
    if (!this.nearest || gapM < this.nearest.gapM) this.nearest = { gapM, x, y };
  }

  /** Keeps which slots are on the clothes. */
  private follow(): void {
    for (const { kind, a } of this.tracker.step(this.capsules)) {
      if (kind === 'ended') this.met.delete(a);
      else this.met.set(a, this.places.get(a)!);
    }
  }
}
