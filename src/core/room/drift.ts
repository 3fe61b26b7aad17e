import { length } from '../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import type { Scene } from './scene.ts';
import { skinHeight } from './layout.ts';

/** A node of the drape lies on the skin when it is no farther from it than this (m). */
const ON_SKIN_M = 0.02;

export interface Drift {
  readonly side: Side;
  readonly direction: 'toward' | 'away';
  readonly metres: number;
  readonly x: number;
  readonly y: number;
}

/** Watches the edge of the opening in each drape against the skin that it was laid on. */
export class DriftWatch {
  private readonly laidX: Record<Side, number>;
  private told: Record<Side, ('toward' | 'away')[]> = { left: [], right: [] };
  /** Farthest movement of each edge so far, in metres. */
  farthest: Record<Side, number> = { left: 0, right: 0 };

  constructor(private readonly scene: Scene) {
    this.laidX = { left: this.edgeX('left', 0), right: this.edgeX('right', 0) };
  }

  /** Drifts that begin to count at this step. */
  step(humpX: number): Drift[] {
    const drifts: Drift[] = [];
    const { patient } = this.scene.scenario.room;
    for (const side of SIDES) {
      const x = this.edgeX(side, humpX);
      // Positive is away from the site.
      const moved = signOf(side) * (x - this.laidX[side]);
      if (Math.abs(moved) > this.farthest[side]) this.farthest[side] = Math.abs(moved);
      const bare = signOf(side) * (x - patient.siteXM) > patient.openingM / 2 + patient.preparedBeyondM;
      const say = (direction: 'toward' | 'away'): void => {
        if (this.told[side].includes(direction)) return;
        this.told[side].push(direction);
        drifts.push({ side, direction, metres: Math.abs(moved), x: x + humpX, y: this.scene.layout.mattress.top + skinHeight(this.scene.layout, x) });
      };
      if (moved < -this.scene.scenario.policy.driftTowardSiteM) say('toward');
      if (bare) say('away');
    }
    return drifts;
  }

  /** A drape that was laid anew is judged from where it lies now. */
  relaid(side: Side, humpX: number): void {
    this.laidX[side] = this.edgeX(side, humpX);
    this.told[side] = [];
  }

  save(): unknown {
    return { laidX: { ...this.laidX }, told: { left: [...this.told.left], right: [...this.told.right] }, farthest: { ...this.farthest } };
  }

  restore(saved: unknown): void {
    const s = saved as { laidX: Record<Side, number>; told: Record<Side, ('toward' | 'away')[]>; farthest: Record<Side, number> };
    Object.assign(this.laidX, s.laidX);
    this.told = { left: [...s.told.left], right: [...s.told.right] };
    this.farthest = { ...s.farthest };
  }

  /** Where the drape begins to cover the skin, measured from the patient's middle. */
  private edgeX(side: Side, humpX: number): number {
    const { world, drapes, layout } = this.scene;
    const start = world.strandStart(drapes[side]);
    const end = start + world.strandSize(drapes[side]);
    for (let i = start; i < end; i++) {
      const x = world.x[i]! - humpX;
      const gap = world.y[i]! - layout.mattress.top - skinHeight(layout, x);
      if (Math.abs(gap) < ON_SKIN_M && length(x, 0) < this.scene.scenario.room.patient.widthM / 2) return x;
    }
    return signOf(side) * (this.scene.scenario.room.patient.widthM / 2);
  }
}
