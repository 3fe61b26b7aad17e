import { secondsToSteps, STEPS_PER_SECOND } from '../base/time.ts';
import { minimumJerk } from './patient.ts';
import type { Scene } from './scene.ts';

/** How long the assistant takes to come and to lift, and where the hand then holds the cord, measured from the edge of the bed (s, m). */
const COME_S = 1.5;
const LIFT_S = 2;
const OUTSIDE_M = 0.22;
const BELOW_EDGE_M = 0.12;

interface Holding {
  readonly node: number;
  readonly startStep: number;
  readonly fromX: number;
  readonly fromY: number;
}

/** The assistant takes the weight of the hanging cord outside the field, or lets it down again. Plain data in `save`. */
export class CordHelp {
  private askedStep = -1;
  private holding: Holding | null = null;

  constructor(private readonly scene: Scene) {}

  /** Asks for it, or for letting go when it is held. */
  ask(step: number): void {
    const { holding } = this;
    if (holding) {
      this.scene.world.unpinNode(holding.node);
      this.holding = null;
    } else if (this.askedStep < 0) this.askedStep = step;
  }

  step(step: number): void {
    const { world } = this.scene;
    if (this.askedStep >= 0 && step >= this.askedStep + secondsToSteps(COME_S)) {
      this.askedStep = -1;
      const node = this.hangingNode();
      this.holding = { node, startStep: step, fromX: world.x[node]!, fromY: world.y[node]! };
      world.pinNode(node);
    }
    const { holding } = this;
    if (!holding) return;
    const share = minimumJerk((step - holding.startStep) / (LIFT_S * STEPS_PER_SECOND));
    const { outletXM } = this.scene.scenario.room.machine;
    const crest = this.scene.layout.crest[outletXM >= 0 ? 'left' : 'right'];
    const toX = crest.x + (outletXM >= 0 ? OUTSIDE_M : -OUTSIDE_M);
    const toY = crest.y - BELOW_EDGE_M;
    world.drivePin(holding.node, holding.fromX + (toX - holding.fromX) * share, holding.fromY + (toY - holding.fromY) * share);
  }

  save(): unknown {
    return { askedStep: this.askedStep, holding: this.holding };
  }

  restore(saved: unknown): void {
    const s = saved as { askedStep: number; holding: Holding | null };
    this.askedStep = s.askedStep;
    this.holding = s.holding;
  }

  /** Stretch of the cord that hangs nearest to where the hand will be. */
  private hangingNode(): number {
    const { world, cord, layout, scenario } = this.scene;
    const way = scenario.room.machine.outletXM >= 0 ? 1 : -1;
    const edge = layout.crest[way > 0 ? 'left' : 'right'].x;
    const last = world.strandStart(cord) + world.strandSize(cord) - 1;
    let node = last;
    while (node > world.strandStart(cord) && way * (world.x[node - 1]! - edge) > 0.08) node--;
    return Math.min(node, last - 2);
  }
}
