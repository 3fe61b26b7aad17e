import type { StateHash } from '../base/hash.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import type { Fact } from '../ledger/fact.ts';
import { TouchTracker, type TouchEvent, type TouchTrackerSnapshot } from '../touch/TouchTracker.ts';
import type { AssistantLook } from './assistant/assistantBody.ts';
import type { ShapesNow } from './clearance.ts';
import { armOf } from './driveHands.ts';
import type { HandState } from './handState.ts';
import type { Scene } from './scene.ts';
import type { Slot, Surfaces } from './surfaces.ts';
import { mayTouch, TOUCH_GROUPS, TouchGeometry } from './touchGeometry.ts';
import { pocketTurn } from './sheath/pocketTurn.ts';
import { holderOf } from './work.ts';
import { ZoneWatch } from './zones.ts';

/** Numbers of touches by gripping start here, so that they never meet the tracker's own. */
const GRIP_TOUCHES = 1_000_000;
/** Links of a sheet on either side of the held place that lie in the fold between the fingers. */
const FOLD_LINKS = 4;

export interface TouchSight {
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly torsoX: number;
  readonly humpX: number;
  readonly humpY: number;
  readonly gone: readonly boolean[];
  readonly assistant: AssistantLook;
  /** Thing that each hand touches by taking or stroking it, −1 for none, and the surface that fingers meet on it. */
  readonly handles: Readonly<Record<Side, { readonly thing: number; readonly surface: string }>>;
}

interface Saved {
  tracker: TouchTrackerSnapshot;
  geometry: [Slot, number[]][];
  zones: ReturnType<ZoneWatch['save']>;
  numbers: number[];
  slots: [number, Slot][];
  nextNumber: number;
  grips: [Side, number, number][];
  nextGrip: number;
}

/** Turns poses into facts: touches on swept paths, touches by gripping, and zones. */
export class TouchWatch {
  private readonly tracker: TouchTracker;
  private readonly geometry: TouchGeometry;
  private readonly zones: ZoneWatch;
  /** Number of the surface that each slot carries, for the tracker; a new surface gets a new number. */
  private readonly numbers: number[];
  private readonly slotOf = new Map<number, Slot>();
  private nextNumber: number;
  private readonly grips = new Map<Side, { thing: number; touch: number }>();
  private nextGrip = GRIP_TOUCHES;
  /** Everything touchable as it was after the last step. */
  readonly shapes: ShapesNow;

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
  ) {
    this.numbers = Array.from({ length: surfaces.slots.count }, (_, k) => k);
    this.numbers.forEach((n) => this.slotOf.set(n, n));
    this.nextNumber = surfaces.slots.count;
    this.tracker = new TouchTracker({ groups: TOUCH_GROUPS, mayTouch });
    this.geometry = new TouchGeometry(scene, surfaces.slots, (slot) => this.numbers[slot]!);
    this.zones = new ZoneWatch(scene, surfaces.slots);
    this.shapes = {
      capsules: this.geometry.capsules,
      slotOf: ({ surface }) => this.slotOf.get(surface)!,
      inMargin: (slot) => this.zones.isIn(slot, 'margin'),
      isBare: (slot) => surfaces.known.get(surfaces.upper[slot]!)!.kind === 'ownSkin',
    };
  }

  step(step: number, sight: TouchSight): Fact[] {
    const facts: Fact[] = [];
    const arms = { left: armOf(this.scene, 'left', sight.torsoX), right: armOf(this.scene, 'right', sight.torsoX) };
    const held = this.scene.things.map((_, k) => holderOf(sight.hands, k) !== null);
    const tucked = { left: sight.hands.left.tucked, right: sight.hands.right.tucked };
    for (const { slot, zone, inside, x, y } of this.zones.step(step, sight.humpX, arms, tucked, held, sight.gone, sight.assistant)) {
      const surface = this.surfaces.upper[slot]!;
      facts.push(inside ? { kind: 'zone.entered', step, surface, zone, x, y } : { kind: 'zone.left', step, surface, zone });
    }
    this.geometry.update(sight.torsoX, sight.humpX, sight.humpY, arms, tucked, sight.gone, sight.assistant);
    for (const event of this.tracker.step(this.geometry.capsules)) facts.push(this.factOf(step, event, sight));
    this.watchGrips(step, sight, facts);
    return facts;
  }

  /** The slot got a new surface: touches of the old one end, and where it is counts anew. */
  replaced(slot: Slot): void {
    this.numbers[slot] = this.nextNumber;
    this.slotOf.set(this.nextNumber, slot);
    this.nextNumber++;
    this.zones.forget(slot);
  }

  /** What the slot carries was put somewhere else without travelling there. */
  moved(slot: Slot): void {
    this.geometry.forget(slot);
  }

  /** Things that left the field, by thing. */
  offField(): boolean[] {
    return this.surfaces.slots.thing.map(({ solid }) => this.zones.isIn(solid, 'offField'));
  }

  hashInto(hash: StateHash): void {
    this.tracker.hashInto(hash);
    hash.addInt(this.nextGrip).addInt(this.nextNumber);
  }

  save(): unknown {
    const saved: Saved = {
      tracker: this.tracker.snapshot(), geometry: this.geometry.save(), zones: this.zones.save(), numbers: [...this.numbers],
      slots: [...this.slotOf], nextNumber: this.nextNumber, grips: [...this.grips].map(([side, g]) => [side, g.thing, g.touch]), nextGrip: this.nextGrip,
    };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.tracker.restore(s.tracker);
    this.geometry.restore(s.geometry);
    this.zones.restore(s.zones);
    s.numbers.forEach((n, k) => (this.numbers[k] = n));
    this.slotOf.clear();
    for (const [n, slot] of s.slots) this.slotOf.set(n, slot);
    this.nextNumber = s.nextNumber;
    this.grips.clear();
    for (const [side, thing, touch] of s.grips) this.grips.set(side, { thing, touch });
    this.nextGrip = s.nextGrip;
  }

  private factOf(step: number, event: TouchEvent, sight: TouchSight): Fact {
    if (event.kind === 'ended') return { kind: 'touch.ended', step, touch: event.touch };
    const a = this.slotOf.get(event.a)!;
    const b = this.slotOf.get(event.b)!;
    return { kind: 'touch.began', step, touch: event.touch, a: this.faceOf(a, b, sight), b: this.faceOf(b, a, sight), x: event.x, y: event.y };
  }

  /** Surface of a slot that another slot meets: of a drape's link the side from which the other came. */
  private faceOf(slot: Slot, other: Slot, sight: TouchSight): string {
    for (const side of SIDES) {
      const first = this.surfaces.slots.drape[side];
      const link = slot - first;
      if (link < 0 || link >= this.scene.world.strandSize(this.scene.drapes[side]) - 1) continue;
      // Sleeves are not solid in the model, and the cord never gets under a sheet: both lie on its upper side.
      if (!this.isSolid(other) || this.isInFold(side, link, other, sight) || signOf(side) * this.geometry.sideOf(slot, other) >= 0) return this.surfaces.upper[slot]!;
      return this.surfaces.under[slot]!;
    }
    const link = slot - this.surfaces.slots.pocket;
    if (this.scene.sheath && link >= 0 && slot < this.surfaces.slots.end && this.geometry.sideOf(slot, other) * pocketTurn(this.scene) > 0) return this.surfaces.under[slot]!;
    return this.surfaces.upper[slot]!;
  }

  /** Fingers that hold a sheet have a fold of it between them: what of it is near them shows them its upper side. */
  private isInFold(side: Side, link: number, other: Slot, { hands }: TouchSight): boolean {
    return SIDES.some((by) => {
      const { hold } = hands[by];
      if (hold?.kind !== 'node' || hold.strand !== `drape.${side}` || other !== this.surfaces.slots.hand[by].fingers) return false;
      return Math.abs(this.scene.world.strandStart(this.scene.drapes[side]) + link + 0.5 - hold.node) < FOLD_LINKS;
    });
  }

  /** Part of a hand or of a thing. */
  private isSolid(slot: Slot): boolean {
    const { slots } = this.surfaces;
    return SIDES.some((side) => Object.values(slots.hand[side]).includes(slot)) || slots.thing.some(({ solid, needle }) => solid === slot || needle === slot);
  }

  private watchGrips(step: number, sight: TouchSight, facts: Fact[]): void {
    for (const side of SIDES) {
      const { thing, surface } = sight.handles[side];
      const before = this.grips.get(side);
      if (before && before.thing !== thing) {
        facts.push({ kind: 'touch.ended', step, touch: before.touch });
        this.grips.delete(side);
      }
      if (thing < 0 || this.grips.has(side)) continue;
      const { world, hands } = this.scene;
      this.grips.set(side, { thing, touch: this.nextGrip });
      facts.push({
        kind: 'touch.began', step, touch: this.nextGrip++, a: this.surfaces.upper[this.surfaces.slots.hand[side].fingers]!,
        b: surface, x: world.bodyX[hands[side]]!, y: world.bodyY[hands[side]]!,
      });
    }
  }
}
