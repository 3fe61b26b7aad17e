import { SIDES, otherSide, signOf, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import { HAND } from '../handShape.ts';
import type { HandState } from '../handState.ts';
import type { Scene } from '../scene.ts';
import { isGloved, isSleeved, type ArmDress } from './dress.ts';
import { FINGERS_LEFT_M, GLOVE_ON_M, gloveStrain, HAND_IN_GLOVE_M, OVER_END_M, tearingMps } from './gownFacts.ts';
import { overlapM } from './gownSurfaces.ts';

/** Cosine of the angle from which on a glove lies against the hand: its fingers toward the elbow. */
const AGAINST = -0.5;
/** How far beside the hand's axis fingers can draw a cuff along it (m), and how near its edge they must be to take it. */
const BESIDE_M = 0.12;
/** Part of the way into a stretched glove that is lost to its tightness, for each unit of strain. */
const TIGHT = 3;
const LEAST_SHARE = 0.3;

/** A glove that tore: whose, and where (m). */
export interface Tear {
  readonly side: Side;
  readonly x: number;
  readonly y: number;
}

/** Closed gloving: a glove laid on the palm, its cuff drawn over the knit cuff by the other hand, the hand pushed in. Plain data in `save`. */
export class Gloving {
  /** Where the drawing hand was along the other hand's axis in the step before (m), or null. */
  private drawnFrom: Record<Side, number | null> = { left: null, right: null };
  private torn: Record<Side, boolean> = { left: false, right: false };

  constructor(
    private readonly scene: Scene,
    private readonly hands: Readonly<Record<Side, HandState>>,
  ) {}

  /** A hand has taken a glove: it lies right if it is its own and points to its elbow, on a hand in a sleeve. */
  took(side: Side, thing: number): void {
    const { world, gown, dress, things } = this.scene;
    const own = SIDES.find((one) => gown!.gloves[one] === thing);
    if (!own) return;
    const arm = dress!.arms[own];
    const body = things[thing]!.body;
    const hand = this.scene.hands[side];
    const along = world.bodyC[body]! * world.bodyC[hand]! + world.bodyS[body]! * world.bodyS[hand]!;
    arm.glove = own === side && along < AGAINST && this.isInCuff(side) ? 'laid' : 'taken';
  }

  /** A hand let go of a glove that it had taken. */
  putDown(thing: number): void {
    const own = SIDES.find((side) => this.scene.gown!.gloves[side] === thing);
    if (own && !isGloved(this.arm(own))) this.arm(own).glove = 'lying';
  }

  /** Hand of `side` holds the edge of the glove's cuff on the other hand. */
  draws(side: Side): boolean {
    return this.hands[side].hold?.kind === 'gloveCuff';
  }

  /** Where `side` could take the edge of the other hand's glove (m), or null. */
  edge(side: Side): readonly [number, number] | null {
    const on = otherSide(side);
    const { glove } = this.arm(on);
    const holdsIt = this.hands[on].hold?.kind === 'thing' && glove === 'laid';
    const shows = isGloved(this.arm(on)) && (glove === 'over' || this.overlap(on) < this.scene.scenario.gown.knitM);
    if (!holdsIt && !shows) return null;
    const { world } = this.scene;
    const hand = this.scene.hands[on];
    const u = this.edgeU(on);
    return [world.bodyX[hand]! + world.bodyC[hand]! * u, world.bodyY[hand]! + world.bodyS[hand]! * u];
  }

  /** One step of drawing and pushing; `pushed` is how far each hand was pushed outward (m). Returns what tore. */
  step(pushed: Readonly<Record<Side, number>>): Tear[] {
    const tears: Tear[] = [];
    for (const side of SIDES) {
      const by = otherSide(side);
      if (this.draws(by)) tears.push(...this.draw(side, by));
      else this.drawnFrom[side] = null;
      const arm = this.arm(side);
      if (arm.glove !== 'over' && arm.glove !== 'on') continue;
      if (pushed[side] > 0 && !this.hands[side].hold) {
        const share = Math.min(1, Math.max(LEAST_SHARE, 1 - TIGHT * Math.max(0, this.strain(side))));
        arm.advanceM = Math.min(HAND_IN_GLOVE_M, arm.advanceM + pushed[side] * share);
      }
      if (arm.advanceM >= GLOVE_ON_M) arm.glove = 'on';
    }
    return tears;
  }

  overlap(side: Side): number {
    return isGloved(this.arm(side)) ? overlapM(this.arm(side), this.scene.scenario.gown.gloveLengthM) : 0;
  }

  /** The knit cuff of a gloved hand shows. */
  isCuffBare(side: Side): boolean {
    return this.arm(side).glove === 'on' && !this.draws(otherSide(side)) && this.overlap(side) < this.scene.scenario.gown.knitM;
  }

  /** The glove of a hand was drawn, or the hand pushed into it, at that speed (m/s): what tore, if it is not torn already. */
  pulled(side: Side, mps: number): Tear | null {
    if (this.torn[side] || mps <= tearingMps(this.strain(side))) return null;
    this.torn[side] = true;
    const { world, hands } = this.scene;
    return { side, x: world.bodyX[hands[side]]!, y: world.bodyY[hands[side]]! };
  }

  /** A new glove for that hand lies there, or is on it. */
  fresh(side: Side): void {
    this.torn[side] = false;
    this.drawnFrom[side] = null;
  }

  save(): unknown {
    return { drawnFrom: { ...this.drawnFrom }, torn: { ...this.torn } };
  }

  restore(saved: unknown): void {
    const s = saved as { drawnFrom: Record<Side, number | null>; torn: Record<Side, boolean> };
    this.drawnFrom = { ...s.drawnFrom };
    this.torn = { ...s.torn };
  }

  private arm(side: Side): ArmDress {
    return this.scene.dress!.arms[side];
  }

  private isInCuff(side: Side): boolean {
    const arm = this.arm(side);
    const { sleeveM } = this.scene.scenario.gown;
    return isSleeved(arm, sleeveM) && arm.inM <= sleeveM;
  }

  private strain(side: Side): number {
    const { gloveSizes, palmGirthM } = this.scene.scenario.gown;
    return gloveStrain(gloveSizes[side], palmGirthM);
  }

  /** Where the edge of the glove's cuff lies along the hand (m in its frame). */
  private edgeU(side: Side): number {
    const arm = this.arm(side);
    return HAND.gripU - arm.advanceM - (isGloved(arm) ? this.overlap(side) : 0);
  }

  /** Fingers of `by` draw the cuff along the hand of `side` toward its elbow. */
  private draw(side: Side, by: Side): Tear[] {
    const { world, hands, scenario, gown } = this.scene;
    const [to, from] = [hands[side], hands[by]];
    const dx = world.bodyX[from]! + world.bodyC[from]! * HAND.gripU - world.bodyX[to]!;
    const dy = world.bodyY[from]! + world.bodyS[from]! * HAND.gripU - world.bodyY[to]!;
    const u = world.bodyC[to]! * dx + world.bodyS[to]! * dy;
    const v = world.bodyC[to]! * dy - world.bodyS[to]! * dx;
    const arm = this.arm(side);
    if (Math.abs(v) > BESIDE_M) {
      this.hands[by].hold = null;
      return [];
    }
    const speed = (Math.max(0, (this.drawnFrom[side] ?? u) - u)) / STEP_SECONDS;
    this.drawnFrom[side] = u;
    const drawn = Math.min(scenario.gown.gloveLengthM - FINGERS_LEFT_M, HAND.gripU - arm.advanceM - u);
    if (drawn <= arm.drawnM) return [];
    arm.drawnM = drawn;
    if (!isGloved(arm) && drawn >= OVER_END_M) this.pullOver(side, gown!.gloves[side]);
    const tear = this.pulled(side, speed);
    return tear ? [tear] : [];
  }

  /** The glove is over the end of the sleeve: it stays on the hand. */
  private pullOver(side: Side, thing: number): void {
    const { world, things } = this.scene;
    const hand = this.hands[side];
    if (hand.hold?.kind === 'thing') world.unweld(hand.hold.joint);
    hand.hold = null;
    hand.closed = false;
    world.setBodyEnabled(things[thing]!.body, false);
    this.arm(side).glove = 'over';
  }
}

/** Where a glove that is laid right comes to lie in the frame of its hand: its cuff at the fingertips, its fingers toward the elbow, on the palm. */
export const laidPose = (side: Side, halfLengthM: number): { readonly x: number; readonly y: number; readonly c: number; readonly s: number } => ({
  x: HAND.gripU - halfLengthM, y: signOf(side) * (HAND.palm.r - HAND.palm.v), c: -1, s: 0,
});
