import { SIDES, signOf, type Side } from '../../base/side.ts';
import type { Point } from '../layout.ts';
import type { Scene } from '../scene.ts';
import { foldedCloth } from './foldedCloth.ts';
import { GOWN_LINKS } from './gownFacts.ts';
import { leadPin } from './leadPin.ts';
import { waitingCloth } from './waitingCloth.ts';

/** Where the cloth waits while it is folded: out of the room. */
const AWAY_Y = -6;

/** The open gown: its two sides as strands from shoulder to hem, moved by the solver. Plain data in `save`. */
export class GownCloth {
  /** The sides fall free: nobody holds them. */
  private free: Record<Side, boolean> = { left: false, right: false };
  private isOut = false;

  constructor(private readonly scene: Scene) {}

  /** Points where a side waits while the gown is folded. */
  static away(side: Side, lengthM: number): Point[] {
    return waitingCloth(signOf(side), AWAY_Y, GOWN_LINKS, lengthM);
  }

  get isOpen(): boolean {
    return this.isOut;
  }

  /** Lets the folded cloth go at (x, y): from there its folds fall open. */
  open(x: number, y: number): void {
    const { world, gown, scenario } = this.scene;
    for (const side of SIDES) {
      const strand = gown!.edges[side];
      const start = world.strandStart(strand);
      world.placeStrand(strand, foldedCloth(x, y, signOf(side), scenario.gown.lengthM));
      for (let k = 1; k <= GOWN_LINKS; k++) world.unpinNode(start + k);
    }
    this.isOut = true;
  }

  /** The shoulder of a side is there now; a free one is caught again. Before the world moves. */
  lead(side: Side, at: Point): void {
    const { world, gown } = this.scene;
    const top = world.strandStart(gown!.edges[side]);
    if (this.free[side]) world.pinNode(top);
    this.free[side] = false;
    leadPin(world, top, at);
  }

  /** Nobody holds that side any more. */
  drop(side: Side): void {
    if (this.free[side]) return;
    this.scene.world.unpinNode(this.scene.world.strandStart(this.scene.gown!.edges[side]));
    this.free[side] = true;
  }

  /** Takes the cloth out of the room. */
  putAway(): void {
    const { world, gown, scenario } = this.scene;
    for (const side of SIDES) {
      const strand = gown!.edges[side];
      world.placeStrand(strand, GownCloth.away(side, scenario.gown.lengthM));
      for (let k = 0; k <= GOWN_LINKS; k++) world.pinNode(world.strandStart(strand) + k);
    }
    this.free = { left: false, right: false };
    this.isOut = false;
  }

  /** Shoulder of a side now (m). */
  shoulder(side: Side): Point {
    const { world, gown } = this.scene;
    const top = world.strandStart(gown!.edges[side]);
    return [world.x[top]!, world.y[top]!];
  }

  /** Height of the lowest part of the cloth (m). */
  get hemM(): number {
    const { world, gown } = this.scene;
    let lowest = Infinity;
    for (const side of SIDES) for (let k = 0, start = world.strandStart(gown!.edges[side]); k <= GOWN_LINKS; k++) lowest = Math.min(lowest, world.y[start + k]!);
    return lowest;
  }

  save(): unknown {
    return { free: { ...this.free }, isOut: this.isOut };
  }

  restore(saved: unknown): void {
    const s = saved as { free: Record<Side, boolean>; isOut: boolean };
    this.free = { ...s.free };
    this.isOut = s.isOut;
  }
}
