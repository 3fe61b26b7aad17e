import { length } from '../../base/portableMath.ts';
import type { Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import { HAND } from '../handShape.ts';
import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';
import { slideTo, takeCord, type CordGrip } from '../sheath/cordGrip.ts';
import { followGoal, stepLimb, type AssistantState } from './assistantBody.ts';

/** How far behind the first hand the cord is taken, and so near to it the fingers close (m). */
const BEHIND_M = 0.08;
const ARRIVED_M = 0.012;
/** Where the rest is carried, beside the middle of the body and how high, and how much longer than straight the cord between the hands is (m). */
const ASIDE_M = 0.05;
const HEIGHT_M = 1.5;
const BIGHT_M = 0.05;
/** Cord to spare between the hand and the outlet: where there is less, the hand lets go (m). */
const SPARE_M = 0.1;
/** How fast the cord runs through the hand, and the hand goes (m/s). */
const RUN_MPS = 0.8;
const FOLLOW_MPS = 0.45;
const TIPS = [HAND.gripU, 0] as const;

/** The first hand on the cord. */
export interface FirstHand {
  readonly arm: Side;
  readonly way: 1 | -1;
  /** Where along the cord it holds (m). */
  readonly s: number;
}

/** The assistant's other hand: it takes the cord behind the first and carries what is behind that, before the body. */
export class RestOfCord {
  private grip: CordGrip | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly body: AssistantState,
    private readonly arm: Side,
  ) {}

  get held(): boolean {
    return this.grip !== null;
  }

  /** Comes to the cord behind the first hand and takes it. */
  take({ s }: FirstHand): void {
    const { world, cord, scenario, assistantHands } = this.scene;
    const limb = this.body.limbs[this.arm];
    limb.inPlane = true;
    const { x, y } = pointAt(world, cord, scenario.cord.linkM, s + BEHIND_M);
    stepLimb(this.body, this.arm, ...followGoal(limb, x, y, FOLLOW_MPS), false);
    if (length(limb.x - x, limb.y - y) < ARRIVED_M) this.grip = takeCord(world, cord, scenario.cord.linkM, assistantHands[this.arm], TIPS, s + BEHIND_M);
  }

  /** Carries it for one step; lets go where the cord is too short for that. */
  carry({ arm, way, s }: FirstHand): void {
    if (!this.grip) return;
    const { scene, body } = this;
    const { world, cord, scenario, assistantHands } = scene;
    const { outletXM, outletYM } = scenario.room.machine;
    const limb = body.limbs[this.arm];
    const first = body.limbs[arm];
    stepLimb(body, this.arm, ...followGoal(limb, body.torsoX + way * ASIDE_M, HEIGHT_M, FOLLOW_MPS), false);
    const wanted = s + length(first.x - limb.x, first.y - limb.y) + BIGHT_M;
    if (wanted + length(outletXM - limb.x, outletYM - limb.y) > scenario.cord.lengthM - SPARE_M) return this.letGo();
    const most = RUN_MPS * STEP_SECONDS;
    const to = this.grip.s + Math.min(most, Math.max(-most, wanted - this.grip.s));
    if (!slideTo(world, cord, scenario.cord.linkM, assistantHands[this.arm], TIPS, this.grip, to)) this.grip = null;
  }

  letGo(): void {
    const { world, assistantHands } = this.scene;
    if (this.grip && world.holderOf(this.grip.node) === assistantHands[this.arm]) world.releaseNode(this.grip.node);
    this.grip = null;
  }

  save(): unknown {
    return this.grip && { ...this.grip };
  }

  restore(saved: unknown): void {
    const grip = saved as CordGrip | null;
    this.grip = grip && { ...grip };
  }
}
