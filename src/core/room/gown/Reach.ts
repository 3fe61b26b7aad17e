import { length } from '../../base/portableMath.ts';
import type { Side } from '../../base/side.ts';
import type { Scene } from '../scene.ts';
import type { Arm } from '../arm.ts';

/** How far each hand was pushed outward in a step: what brings it along a sleeve or into a glove. Plain data in `save`. */
export class Reach {
  private last: Record<Side, number | null> = { left: null, right: null };

  constructor(private readonly scene: Scene) {}

  /** Length of arm stretched out since the step before (m), negative when it was drawn in; what this plane shortens is made good. */
  step(side: Side, arm: Arm): number {
    const { world, hands, scenario } = this.scene;
    const now = length(world.bodyX[hands[side]]! - arm.shoulderX, world.bodyY[hands[side]]! - arm.shoulderY);
    const last = this.last[side] ?? now;
    this.last[side] = now;
    return (now - last) / scenario.operator.foreshortening;
  }

  save(): unknown {
    return { ...this.last };
  }

  restore(saved: unknown): void {
    this.last = { ...(saved as Record<Side, number | null>) };
  }
}
