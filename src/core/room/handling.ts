import { SIDES, type Side } from '../base/side.ts';
import { ClearanceWatch, type Clearances, type LeastClearance, type ShapesNow } from './clearance.ts';
import { type Movement, MovementMeter } from './handlingMovement.ts';
import type { HandState } from './handState.ts';
import type { Scene } from './scene.ts';
import type { Slots } from './surfaces.ts';

/** Something that nobody held and that left the field, other than into the bin. */
export interface Drop {
  /** Id of the thing in the scenario. */
  readonly thing: string;
  readonly step: number;
}

/** What of the room matters to handling after one step. */
export interface HandlingSight {
  readonly shapes: ShapesNow;
  readonly hands: Readonly<Record<Side, HandState>>;
  /** By thing. */
  readonly offField: readonly boolean[];
  readonly gone: readonly boolean[];
  /** Farthest that the edge of each drape has moved so far, in metres. */
  readonly drift: Readonly<Record<Side, number>>;
}

interface Saved {
  readonly clearance: unknown;
  readonly meters: Readonly<Record<Side, unknown>>;
  readonly offSince: readonly number[];
  readonly drops: readonly Drop[];
  readonly drift: Readonly<Record<Side, number>>;
  readonly driftStep: Readonly<Record<Side, number | null>>;
}

/** Follows how the hands work, for the score: movements, clearance kept, things dropped, when each drape had moved farthest. Changes nothing. */
export class HandlingWatch {
  readonly clearance: ClearanceWatch;
  private readonly meters: Record<Side, MovementMeter> = { left: new MovementMeter(), right: new MovementMeter() };
  /** For each thing the step since which it is off the field and not in the bin, or −1. */
  private readonly offSince: number[];
  private pickedUp: Drop[] = [];
  private drift: Record<Side, number> = { left: 0, right: 0 };
  private farthestAt: Record<Side, number | null> = { left: null, right: null };

  constructor(
    private readonly scene: Scene,
    slots: Slots,
  ) {
    this.clearance = new ClearanceWatch(scene, slots);
    this.offSince = scene.things.map(() => -1);
  }

  step(step: number, sight: HandlingSight): void {
    const { world, hands } = this.scene;
    for (const side of SIDES) {
      this.meters[side].step(step, world.bodyX[hands[side]]!, world.bodyY[hands[side]]!);
      if (sight.drift[side] > this.drift[side]) {
        this.drift[side] = sight.drift[side];
        this.farthestAt[side] = step;
      }
    }
    this.clearance.step(step, sight.shapes, sight.hands);
    this.scene.things.forEach((_, k) => this.watchThing(step, k, sight.offField[k]!, sight.gone[k]!));
  }

  get clearances(): Clearances {
    return this.clearance.reading;
  }

  get smallestClearances(): readonly LeastClearance[] {
    return this.clearance.smallest;
  }

  movements(side: Side): readonly Movement[] {
    return this.meters[side].movements;
  }

  /** Step at which each drape's edge was farthest from where it was laid, or null while it never moved. */
  get driftStep(): Readonly<Record<Side, number | null>> {
    return this.farthestAt;
  }

  /** What was dropped so far, in order; what is still falling into the bin counts until it is in. */
  get drops(): readonly Drop[] {
    const lying = this.scene.things.flatMap(({ id }, k) => (this.offSince[k]! >= 0 ? [{ thing: id, step: this.offSince[k]! }] : []));
    return [...this.pickedUp, ...lying].sort((a, b) => a.step - b.step);
  }

  save(): unknown {
    const meters = { left: this.meters.left.save(), right: this.meters.right.save() };
    const saved: Saved = { clearance: this.clearance.save(), meters, offSince: [...this.offSince], drops: [...this.pickedUp], drift: { ...this.drift }, driftStep: { ...this.farthestAt } };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.clearance.restore(s.clearance);
    for (const side of SIDES) this.meters[side].restore(s.meters[side]);
    s.offSince.forEach((step, k) => (this.offSince[k] = step));
    this.pickedUp = [...s.drops];
    this.drift = { ...s.drift };
    this.farthestAt = { ...s.driftStep };
  }

  /** A thing that fell has been dropped once it is back, replaced, or the run is over; one that lands in the bin was thrown away. */
  private watchThing(step: number, k: number, off: boolean, gone: boolean): void {
    const since = this.offSince[k]!;
    if (off && !gone) {
      if (since < 0) this.offSince[k] = step;
      return;
    }
    if (since >= 0 && !gone) this.pickedUp.push({ thing: this.scene.things[k]!.id, step: since });
    this.offSince[k] = -1;
  }
}
