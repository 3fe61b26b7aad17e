import { otherSide, SIDES, signOf, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import { fingertips } from '../fingertips.ts';
import { HAND } from '../handShape.ts';
import type { HandState } from '../handState.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Scene } from '../scene.ts';
import { isGloved, isOut, isSleeved } from './dress.ts';
import { GLOVE_ON_M, HAND_IN_GLOVE_M, TURNED_BACK_M } from './gownFacts.ts';

/** Half width of the mouth of a glove that is held open (m), and the cosine of the angle up to which fingers slip in. */
const MOUTH_HALF_M = 0.03;
const IN_LINE = 0.75;
/** Way back out of the mouth after which the hand is out of the glove again (m). */
const OUT_AGAIN_M = 0.015;
/** Fingers that point into the glove and miss its mouth by no more than this meet its outside (m); farther off they pass it in depth, as hands pass things. */
const MISSED_M = MOUTH_HALF_M + 2 * HAND.fingers.r;
/** How far below its edge the fingers of the other hand hold the cuff of a hanging glove (m). */
const HELD_BELOW_M = 0.03;

/** Where the fingertips of a bare hand are to the glove that the other hand holds: along it from its mouth and across it (m). */
interface Place {
  readonly depth: number;
  readonly across: number;
}

/**
 * Open gloving of a hand that is out of its cuff: the other hand holds the glove by its turned-back cuff, and the bare hand slips in through
 * the mouth. A hand in glove or sleeve keeps hold of
 * the cuff and can draw it over the knit cuff; bare fingers let it go turned back as it is.
 */
export class OpenGloving {
  /** Depth in the step before, of a hand before the mouth of its glove. */
  private before: Record<Side, number | null> = { left: null, right: null };
  /** Fingers that missed the mouth and are on the outside of their glove. */
  private missed: Record<Side, boolean> = { left: false, right: false };

  constructor(
    private readonly scene: Scene,
    private readonly hands: Readonly<Record<Side, HandState>>,
  ) {}

  /** One step. Calls back with the speed (m/s) at which a hand went in, and once a glove is on. */
  step(entering: (side: Side, mps: number) => void, putOn: (side: Side) => void): void {
    for (const side of SIDES) {
      const arm = this.scene.dress!.arms[side];
      const place = arm.glove === 'taken' || arm.glove === 'entered' ? this.place(side) : null;
      const before = this.before[side];
      this.before[side] = place?.depth ?? null;
      if (!place) {
        this.missed[side] = false;
        if (arm.glove === 'entered') arm.glove = 'taken';
        continue;
      }
      const { depth } = place;
      if (arm.glove === 'taken' && before !== null && before <= 0 && depth > 0 && this.pointsIn(side, place)) {
        if (this.slipsIn(side, place)) arm.glove = 'entered';
        else this.missed[side] = true;
      }
      this.missed[side] &&= depth > 0 && Math.abs(place.across) <= MISSED_M;
      if (arm.glove !== 'entered') continue;
      if (depth < -OUT_AGAIN_M) arm.glove = 'taken';
      else if (before !== null && depth > before) entering(side, (depth - before) / STEP_SECONDS);
      if (depth >= GLOVE_ON_M) this.putOn(side, putOn);
    }
  }

  /** Bare fingers are on the outside of the glove that the other hand holds. */
  isOutside(side: Side): boolean {
    return this.missed[side];
  }

  save(): unknown {
    return { before: { ...this.before }, missed: { ...this.missed } };
  }

  restore(saved: unknown): void {
    const s = saved as { before: Record<Side, number | null>; missed: Record<Side, boolean> };
    this.before = { ...s.before };
    this.missed = { ...s.missed };
  }

  /** Of a bare hand whose glove the other hand holds; null for any other. */
  private place(side: Side): Place | null {
    const { world, things, gown, dress, scenario } = this.scene;
    const thing = gown!.gloves[side];
    const { hold } = this.hands[otherSide(side)];
    if (!isOut(dress!.arms[side], scenario.gown.sleeveM) || hold?.kind !== 'thing' || hold.thing !== thing) return null;
    const { body } = things[thing]!;
    const [c, s] = [world.bodyC[body]!, world.bodyS[body]!];
    const [x, y] = fingertips(this.scene, side);
    const dx = x - world.bodyX[body]!;
    const dy = y - world.bodyY[body]!;
    return { depth: c * dx + s * dy + THING_SHAPES.glove.halfLength, across: c * dy - s * dx };
  }

  /** Fingers that come to the mouth of the glove, or beside it, and point along it. */
  private pointsIn(side: Side, { across }: Place): boolean {
    const { world, things, gown, hands } = this.scene;
    const { body } = things[gown!.gloves[side]]!;
    const inLine = world.bodyC[body]! * world.bodyC[hands[side]]! + world.bodyS[body]! * world.bodyS[hands[side]]!;
    return Math.abs(across) <= MISSED_M && inLine >= IN_LINE;
  }

  /** An open, empty hand before the middle of the mouth. */
  private slipsIn(side: Side, { across }: Place): boolean {
    const { hold, closed } = this.hands[side];
    return !hold && !closed && Math.abs(across) <= MOUTH_HALF_M;
  }

  private putOn(side: Side, put: (side: Side) => void): void {
    const { world, things, gown, dress, scenario } = this.scene;
    const by = this.hands[otherSide(side)];
    const arm = dress!.arms[side];
    if (by.hold?.kind === 'thing') world.unweld(by.hold.joint);
    world.setBodyEnabled(things[gown!.gloves[side]]!.body, false);
    arm.glove = 'on';
    arm.advanceM = Math.min(HAND_IN_GLOVE_M, arm.inM - scenario.gown.sleeveM);
    arm.drawnM = Math.max(0, scenario.gown.gloveLengthM - 2 * TURNED_BACK_M - arm.advanceM);
    // Bare fingers leave the cuff turned back; those in glove or sleeve are under it and still hold it.
    const other = dress!.arms[otherSide(side)];
    const keeps = isGloved(other) || isSleeved(other, scenario.gown.sleeveM);
    by.hold = keeps ? { kind: 'gloveCuff', pullN: 0 } : null;
    by.closed = keeps;
    put(side);
  }
}

/** Where a glove hangs in the frame of the hand of `by` that holds it open for the other: its mouth up at the fingertips, its fingers down. */
export const hangingPose = (by: Side, halfLengthM: number): { readonly x: number; readonly y: number; readonly c: number; readonly s: number } => ({
  x: HAND.gripU, y: signOf(by) * (halfLengthM - HELD_BELOW_M), c: 0, s: signOf(by),
});

/** Part of a glove that fingers meet which take it at `u` (m in its frame, its fingers along +u): the turned-back cuff, or its outside. */
export const meetsTurnedBack = (isBare: boolean, u: number): boolean => u <= (isBare ? TURNED_BACK_M : 0) - THING_SHAPES.glove.halfLength;
