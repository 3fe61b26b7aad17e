import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import type { Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import { HAND } from '../handShape.ts';
import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';
import { slideTo, takeCord, type CordGrip } from '../sheath/cordGrip.ts';
import { followGoal, stepLimb, type AssistantState } from './assistantBody.ts';
import { tailOf } from './cordEnds.ts';
import { hangsAt, opens, type Support } from './cordLetDown.ts';
import { alongReach, planReach, type ReachPath } from './reachPath.ts';

/** How far behind the first hand the cord is taken, and so near to it the fingers close (m). */
const BEHIND_M = 0.08;
const ARRIVED_M = 0.012;
/** Where the rest is carried, beside the middle of the body and how high, and how much longer than straight the cord between the hands is (m). */
const ASIDE_M = 0.05;
const HEIGHT_M = 1.5;
const BIGHT_M = 0.05;
/** Cord to spare between the hand and the outlet: where there is less, the hand lets it down (m). */
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
  /** It lets the cord down itself. */
  readonly letsDown: boolean;
}

/** The assistant's other hand: it takes the cord behind the first and carries what is behind that, before the body. */
export class RestOfCord {
  private grip: CordGrip | null = null;
  /** There while the hand lets the cord down. */
  private down: ReachPath | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly body: AssistantState,
    private readonly arm: Side,
    private readonly rng: Rng,
    private readonly skill: number,
  ) {}

  get held(): boolean {
    return this.grip !== null;
  }

  get goesDown(): boolean {
    return this.down !== null;
  }

  /** Comes to the cord behind the first hand, which holds it at `s`, and takes it. */
  take(s: number): void {
    const { world, cord, scenario, assistantHands } = this.scene;
    const limb = this.body.limbs[this.arm];
    limb.inPlane = true;
    const { x, y } = pointAt(world, cord, scenario.cord.linkM, s + BEHIND_M);
    stepLimb(this.body, this.arm, ...followGoal(limb, x, y, FOLLOW_MPS), false);
    if (length(limb.x - x, limb.y - y) < ARRIVED_M) this.grip = takeCord(world, cord, scenario.cord.linkM, assistantHands[this.arm], TIPS, s + BEHIND_M);
  }

  /** Carries it for one step; lets it down where the first hand does, or the cord is too short to be carried. */
  carry(hand: FirstHand, step: number): void {
    if (!this.grip) return;
    if (hand.letsDown) this.letDown(step, hand);
    if (this.down) return this.goDown(this.down, step, hand);
    const { scene, body } = this;
    const { scenario } = scene;
    const { outletXM, outletYM } = scenario.room.machine;
    const limb = body.limbs[this.arm];
    stepLimb(body, this.arm, ...followGoal(limb, body.torsoX + hand.way * ASIDE_M, HEIGHT_M, FOLLOW_MPS), false);
    const wanted = this.wanted(hand);
    if (wanted + length(outletXM - limb.x, outletYM - limb.y) > scenario.cord.lengthM - SPARE_M) return this.letDown(step, hand);
    this.slide(wanted);
  }

  /** Stands still for one step. */
  pause(): void {
    if (this.down) this.down = { ...this.down, startStep: this.down.startStep + 1 };
  }

  letGo(): void {
    const { world, assistantHands } = this.scene;
    if (this.grip && world.holderOf(this.grip.node) === assistantHands[this.arm]) world.releaseNode(this.grip.node);
    this.grip = this.down = null;
  }

  save(): unknown {
    return { grip: this.grip && { ...this.grip }, down: this.down };
  }

  restore(saved: unknown): void {
    const { grip, down } = saved as { readonly grip: CordGrip | null; readonly down: ReachPath | null };
    this.grip = grip && { ...grip };
    this.down = down;
  }

  private letDown(step: number, hand: FirstHand): void {
    if (this.down) return;
    const { x, y } = this.body.limbs[this.arm];
    const to = hangsAt(this.scene, this.heldBefore(hand), this.grip!.s);
    this.down = planReach(this.rng, this.skill, step, [x, y], [to.x, to.y]);
  }

  private goDown(path: ReachPath, step: number, hand: FirstHand): void {
    const { x, y } = hangsAt(this.scene, this.heldBefore(hand), this.grip!.s);
    stepLimb(this.body, this.arm, ...alongReach(path, step, x, y), false);
    // Loosened fingers leave the first hand what it needs of the cord.
    this.slide(Math.max(this.grip!.s, this.wanted(hand)));
    if (this.grip && opens(path, this.skill, step)) this.letGo();
  }

  /** What holds the cord before this hand, once this hand has let go. */
  private heldBefore({ arm, s, letsDown }: FirstHand): Support {
    return letsDown ? { ...tailOf(this.scene), s: 0 } : { ...this.body.limbs[arm], s };
  }

  /** Where along the cord this hand leaves the first enough of it (m). */
  private wanted({ arm, s }: FirstHand): number {
    const first = this.body.limbs[arm];
    const limb = this.body.limbs[this.arm];
    return s + length(first.x - limb.x, first.y - limb.y) + BIGHT_M;
  }

  /** Lets the cord run through the fingers toward that place. */
  private slide(wanted: number): void {
    const { world, cord, scenario, assistantHands } = this.scene;
    const most = RUN_MPS * STEP_SECONDS;
    const to = this.grip!.s + Math.min(most, Math.max(-most, wanted - this.grip!.s));
    if (!slideTo(world, cord, scenario.cord.linkM, assistantHands[this.arm], TIPS, this.grip!, to)) this.grip = this.down = null;
  }
}
