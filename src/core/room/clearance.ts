import { SIDES, type Side } from '../base/side.ts';
import { nearestPoints, noNearestPoints } from '../touch/segmentGap.ts';
import type { TrackedCapsule } from '../touch/trackedCapsule.ts';
import { CLEARANCE_THINGS, type ClearanceThing } from './clearanceThings.ts';
import type { HandState } from './handState.ts';
import type { Scene } from './scene.ts';
import { skinKind } from './skin.ts';
import type { Slot, Slots } from './surfaces.ts';
import { mayTouch, TOUCH_GROUPS } from './touchGeometry.ts';

/** A reading is taken every so many steps (30 a second). */
export const CLEARANCE_EVERY_STEPS = 4;
/** Beyond this everything is far, in metres: longer than a hand. */
export const CLEARANCE_FAR_M = 0.3;

/** Gap in metres between what must be sterile at a hand and each thing to keep clear of; Infinity beyond `CLEARANCE_FAR_M`. */
export type Clearances = Readonly<Record<Side, Readonly<Record<ClearanceThing, number>>>>;

/** The smallest gap that a hand kept to a thing, and when. */
export interface LeastClearance {
  readonly hand: Side;
  readonly thing: ClearanceThing;
  readonly metres: number;
  readonly step: number;
}

/** Everything touchable as it is now. */
export interface ShapesNow {
  readonly capsules: readonly TrackedCapsule[];
  slotOf(capsule: TrackedCapsule): Slot;
  /** Of a stretch of drape: it lies in the strip that does not count as sterile. */
  inMargin(slot: Slot): boolean;
  /** Of a hand or an arm: bare skin, which has nothing to keep clear. */
  isBare(slot: Slot): boolean;
}

/** What must be sterile at one hand: capsules and the box around them. */
interface Kept {
  readonly capsules: TrackedCapsule[];
  left: number;
  right: number;
  low: number;
  high: number;
}

const THINGS = CLEARANCE_THINGS.length;
const NONE = -1;

/**
 * Measures how far each hand (fingers to elbow, with what it holds) keeps from unsterile things. Only pairs that can meet count:
 * what passes in depth is no danger. A hand beside the body, out of the plane, is far from everything.
 */
export class ClearanceWatch {
  /** By side, then by thing. */
  private readonly now = new Float64Array(2 * THINGS).fill(Infinity);
  private readonly least = new Float64Array(2 * THINGS).fill(Infinity);
  private readonly leastStep = new Float64Array(2 * THINGS).fill(-1);
  /** For each slot the place in SIDES of the hand that it is part of now, and the thing that it is. */
  private readonly owner: Int8Array;
  private readonly thing: Int8Array;
  /** What is to be kept clear of in this reading. */
  private readonly near: { readonly thing: number; readonly capsule: TrackedCapsule }[] = [];
  private readonly kept: readonly Kept[] = SIDES.map(() => ({ capsules: [], left: 0, right: 0, low: 0, high: 0 }));
  private readonly pairs: readonly boolean[] = Array.from({ length: TOUCH_GROUPS * TOUCH_GROUPS }, (_, k) => mayTouch(Math.floor(k / TOUCH_GROUPS), k % TOUCH_GROUPS));
  private readonly p = new Float64Array(4);
  private readonly q = new Float64Array(4);
  private readonly nearest = noNearestPoints();

  constructor(
    scene: Scene,
    private readonly slots: Slots,
  ) {
    this.owner = ownersOf(slots);
    this.thing = thingsOf(scene, slots);
  }

  /** The last reading. */
  get reading(): Clearances {
    const of = (side: Side) => Object.fromEntries(CLEARANCE_THINGS.map((thing, k) => [thing, this.now[SIDES.indexOf(side) * THINGS + k]!])) as Record<ClearanceThing, number>;
    return { left: of('left'), right: of('right') };
  }

  /** The smallest gaps so far, of every pair that was ever near. */
  get smallest(): readonly LeastClearance[] {
    return SIDES.flatMap((hand, s) =>
      CLEARANCE_THINGS.flatMap((thing, k) => {
        const metres = this.least[s * THINGS + k]!;
        return metres < Infinity ? [{ hand, thing, metres, step: this.leastStep[s * THINGS + k]! }] : [];
      }),
    );
  }

  /** Takes a reading if one is due at this step. */
  step(step: number, shapes: ShapesNow, hands: Readonly<Record<Side, HandState>>): void {
    if (step % CLEARANCE_EVERY_STEPS !== 0) return;
    this.now.fill(Infinity);
    this.near.length = 0;
    this.collect(shapes, hands);
    for (const { thing, capsule } of this.near) for (let s = 0; s < SIDES.length; s++) this.measure(s, thing, capsule);
    for (let k = 0; k < this.now.length; k++) {
      if (this.now[k]! >= this.least[k]!) continue;
      this.least[k] = this.now[k]!;
      this.leastStep[k] = step;
    }
  }

  save(): unknown {
    return { now: this.now.slice(), least: this.least.slice(), leastStep: this.leastStep.slice() };
  }

  restore(saved: unknown): void {
    const s = saved as { now: Float64Array; least: Float64Array; leastStep: Float64Array };
    this.now.set(s.now);
    this.least.set(s.least);
    this.leastStep.set(s.leastStep);
  }

  private isDrape(slot: Slot): boolean {
    const { right, left } = this.slots.drape;
    return slot >= Math.min(right, left) && slot < this.slots.cord;
  }

  /** Finds what must be sterile at each hand now, and what is to be kept clear of. */
  private collect({ capsules, slotOf, inMargin, isBare }: ShapesNow, hands: Readonly<Record<Side, HandState>>): void {
    for (const kept of this.kept) {
      kept.capsules.length = 0;
      kept.left = kept.low = Infinity;
      kept.right = kept.high = -Infinity;
    }
    for (const side of SIDES) this.noteHeld(side, hands[side]);
    for (const capsule of capsules) {
      const slot = slotOf(capsule);
      const thing = this.thing[slot]!;
      if (thing !== NONE && (!this.isDrape(slot) || inMargin(slot))) this.near.push({ thing, capsule });
      const s = this.owner[slot]!;
      if (s === NONE || isBare(slot)) continue;
      const { Ax, Ay, Bx, By, r } = capsule;
      const kept = this.kept[s]!;
      kept.capsules.push(capsule);
      kept.left = Math.min(kept.left, Ax - r, Bx - r);
      kept.right = Math.max(kept.right, Ax + r, Bx + r);
      kept.low = Math.min(kept.low, Ay - r, By - r);
      kept.high = Math.max(kept.high, Ay + r, By + r);
    }
  }

  /** What a hand holds is part of it. */
  private noteHeld(side: Side, { hold }: HandState): void {
    const s = SIDES.indexOf(side);
    if (s === 0) for (const { solid, needle } of this.slots.thing) this.own(solid, needle, NONE);
    if (hold?.kind !== 'thing') return;
    const { solid, needle } = this.slots.thing[hold.thing]!;
    this.own(solid, needle, s);
  }

  private own(solid: Slot, needle: Slot, s: number): void {
    this.owner[solid] = s;
    if (needle >= 0) this.owner[needle] = s;
  }

  private measure(s: number, thing: number, capsule: TrackedCapsule): void {
    const kept = this.kept[s]!;
    const at = s * THINGS + thing;
    const { Ax, Ay, Bx, By, r } = capsule;
    const aside = Math.max(Math.min(Ax, Bx) - r - kept.right, kept.left - Math.max(Ax, Bx) - r);
    const above = Math.max(Math.min(Ay, By) - r - kept.high, kept.low - Math.max(Ay, By) - r);
    let best = Math.min(this.now[at]!, CLEARANCE_FAR_M);
    if (aside >= best || above >= best) return;
    this.q[0] = Ax;
    this.q[1] = Ay;
    this.q[2] = Bx;
    this.q[3] = By;
    for (const own of kept.capsules) {
      if (!this.pairs[own.group * TOUCH_GROUPS + capsule.group]) continue;
      this.p[0] = own.Ax;
      this.p[1] = own.Ay;
      this.p[2] = own.Bx;
      this.p[3] = own.By;
      nearestPoints(this.p, this.q, this.nearest);
      const gap = Math.max(0, this.nearest.distance - own.r - r);
      if (gap < best) this.now[at] = best = gap;
    }
  }
}

/** For each slot the place in SIDES of the hand or the sterile sleeve that it is. */
function ownersOf(slots: Slots): Int8Array {
  const owner = new Int8Array(slots.count).fill(NONE);
  SIDES.forEach((side, s) => {
    const { lowerSleeve, upperSleeve } = slots.sleeve[side];
    for (const slot of [...Object.values(slots.hand[side]), lowerSleeve, upperSleeve]) owner[slot] = s;
  });
  return owner;
}

/** For each slot the place in CLEARANCE_THINGS of what it is. */
function thingsOf(scene: Scene, slots: Slots): Int8Array {
  const things = new Int8Array(slots.count).fill(NONE);
  const put = (thing: ClearanceThing, slot: Slot): void => void (things[slot] = CLEARANCE_THINGS.indexOf(thing));
  for (const thing of ['bed', 'pole', 'machine', 'tableEdge', 'bin', 'floor', 'face'] as const) put(thing, slots[thing]);
  for (const side of SIDES) {
    put(`rail.${side}`, slots.rail[side]);
    for (let k = 0, links = scene.world.strandSize(scene.drapes[side]) - 1; k < links; k++) put(`edge.${side}`, slots.drape[side] + k);
  }
  const { cord, policy } = scene.scenario;
  for (let k = 0, links = scene.world.strandSize(scene.cord) - 1; k < links; k++)
    if ((k + 0.5) * cord.linkM > cord.coveredM - policy.sheathTailM) put('bareCord', slots.cord + k);
  const { skin } = scene.layout;
  for (let k = 0; k + 1 < skin.length; k++)
    if (skinKind(scene.scenario, (skin[k]![0] + skin[k + 1]![0]) / 2) === 'patientSkin') put('patientSkin', slots.skin + k);
  return things;
}
