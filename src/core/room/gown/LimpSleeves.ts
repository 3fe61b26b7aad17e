import { SIDES, signOf, type Side } from '../../base/side.ts';
import type { Point } from '../layout.ts';
import type { Scene } from '../scene.ts';
import { SLEEVE_LINKS, sleeveLeftM } from './gownFacts.ts';
import { leadPin } from './leadPin.ts';
import { waitingCloth } from './waitingCloth.ts';

/** Where a sleeve waits that does not hang: out of the room. */
const AWAY_Y = -8;
/** How fast each of its links comes to its length (m per step of 1/120 s). */
const GATHER_M = 0.001;

/** The empty part of each sleeve of the open gown: from its shoulder, or from the fingertips on, down to the knit cuff. Plain data in `save`. */
export class LimpSleeves {
  private hangs: Record<Side, boolean> = { left: false, right: false };
  /** Length of a link now (m). */
  private linkM: Record<Side, number> = { left: 0, right: 0 };

  constructor(private readonly scene: Scene) {}

  /** Points where a sleeve waits while it does not hang. */
  static away(side: Side, lengthM: number): Point[] {
    return waitingCloth(signOf(side), AWAY_Y, SLEEVE_LINKS, lengthM);
  }

  /** Its upper end is there now. What is left of it hangs, once more than a fold is left. Before the world moves. Returns whether it came or went. */
  lead(side: Side, at: Point): boolean {
    const leftM = sleeveLeftM(this.scene, side);
    if (leftM <= 0) return this.putAway(side);
    const { world, gown } = this.scene;
    const strand = gown!.sleeves[side];
    const top = world.strandStart(strand);
    if (!this.hangs[side]) {
      this.linkM[side] = leftM / SLEEVE_LINKS;
      world.setLinkLength(strand, this.linkM[side]);
      world.placeStrand(strand, Array.from({ length: SLEEVE_LINKS + 1 }, (_, k): Point => [at[0], at[1] - this.linkM[side] * k]));
      for (let k = 1; k <= SLEEVE_LINKS; k++) world.unpinNode(top + k);
      this.hangs[side] = true;
      return true;
    }
    const wanted = leftM / SLEEVE_LINKS - this.linkM[side];
    this.linkM[side] += Math.min(GATHER_M, Math.max(-GATHER_M, wanted));
    world.setLinkLength(strand, this.linkM[side]);
    leadPin(world, top, at);
    return false;
  }

  /** Takes a sleeve out of the room. Returns whether it hung. */
  putAway(side: Side): boolean {
    if (!this.hangs[side]) return false;
    const { world, gown, scenario } = this.scene;
    const strand = gown!.sleeves[side];
    world.setLinkLength(strand, scenario.gown.sleeveM / SLEEVE_LINKS);
    world.placeStrand(strand, LimpSleeves.away(side, scenario.gown.sleeveM));
    for (let k = 0; k <= SLEEVE_LINKS; k++) world.pinNode(world.strandStart(strand) + k);
    this.hangs[side] = false;
    return true;
  }

  isHanging(side: Side): boolean {
    return this.hangs[side];
  }

  save(): unknown {
    return { hangs: { ...this.hangs }, linkM: { ...this.linkM } };
  }

  restore(saved: unknown): void {
    const s = saved as { hangs: Record<Side, boolean>; linkM: Record<Side, number> };
    for (const side of SIDES) {
      this.hangs[side] = s.hangs[side];
      this.linkM[side] = s.linkM[side];
    }
  }
}
