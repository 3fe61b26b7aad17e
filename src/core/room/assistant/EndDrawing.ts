import { STEP_SECONDS } from '../../base/time.ts';
import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';
import { coverableM } from '../sheath/loading.ts';
import type { Sheath } from '../sheath/Sheath.ts';

/** How fast the open end is drawn (m/s), and the pull that a bare hand gives it at most (N); common practice. */
const DRAW_MPS = 0.14;
const PULL_N = 12;

/** Draws the open end of the film along the cord; the film's drag acts on the cord where it is drawn. */
export class EndDrawing {
  /** Node of the cord that is dragged at now, or −1. */
  private dragged = -1;

  constructor(
    private readonly scene: Scene,
    private readonly sheath: Sheath,
  ) {}

  /** Film that is still folded (m). */
  get leftM(): number {
    return this.scene.cover.on ? coverableM(this.scene.scenario) - this.scene.cover.coveredM : 0;
  }

  /** Draws on for one step. False when that is too much for a hand, or no film is left. */
  step(): boolean {
    const { world, cord, cover, scenario } = this.scene;
    this.stop();
    const stickN = this.sheath.film.stickN();
    if (stickN > PULL_N || this.leftM <= 1e-9) return false;
    this.sheath.draw(DRAW_MPS * STEP_SECONDS);
    const { ux, uy } = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    this.dragged = world.strandStart(cord) + Math.max(0, Math.round(cover.coveredM / scenario.cord.linkM) - 1);
    world.setNodeForce(this.dragged, ux * stickN, uy * stickN);
    return true;
  }

  stop(): void {
    if (this.dragged >= 0) this.scene.world.setNodeForce(this.dragged, 0, 0);
    this.dragged = -1;
  }

  save(): unknown {
    return this.dragged;
  }

  restore(saved: unknown): void {
    this.dragged = saved as number;
  }
}
