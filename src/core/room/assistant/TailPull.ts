import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import { otherSide, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';
import { coverableM } from '../sheath/loading.ts';
import type { Sheath } from '../sheath/Sheath.ts';
import { restOf, stanceFor, stepBody, stepLimb, type AssistantState } from './assistantBody.ts';
import { cordWay } from './cordPlace.ts';
import { alongReach, planReach, shareOf, type ReachPath } from './reachPath.ts';

/** How fast the open end is drawn along the cord (m/s), and the pull that a bare hand gives it at most (N); common practice. */
const DRAW_MPS = 0.14;
const PULL_N = 12;
/** The end is taken from its open side (m), and so near to it the fingers close. */
const BEFORE_END_M = 0.012;
const ARRIVED_M = 0.012;
const STANDS_M = 0.06;
const OUT_OF_PLANE = 0.75;

interface State {
  phase: 'coming' | 'reaching' | 'drawing' | 'leaving';
  readonly arm: Side;
  path: ReachPath | null;
  /** Node of the cord that the film drags at now, or −1. */
  dragged: number;
}

/** The assistant takes the open end of the film and draws it along the cord, as long as film is left and the pull suffices. */
export class TailPull {
  private s: State | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly sheath: Sheath,
    private readonly body: AssistantState,
    private readonly rng: Rng,
    private readonly skill: number,
  ) {}

  get active(): boolean {
    return this.s !== null;
  }

  get arm(): Side | null {
    return this.s?.arm ?? null;
  }

  /** Begins with the arm that is free. False where there is no end to be taken. */
  begin(busy: Side | null): boolean {
    if (!this.scene.cover.on || this.left() <= 0) return false;
    const near: Side = cordWay(this.scene) > 0 ? 'right' : 'left';
    this.s = { phase: 'coming', arm: busy === near ? otherSide(near) : near, path: null, dragged: -1 };
    return true;
  }

  stop(step: number): void {
    if (this.s && this.s.phase !== 'leaving') this.leave(step);
  }

  /** One step, before the world moves. `leads`: the body goes where this hand needs it. */
  step(step: number, leads: boolean): void {
    const { s } = this;
    if (!s) return;
    if (s.phase === 'leaving') return this.goBack(s, step);
    if (!this.scene.cover.on) return this.leave(step);
    const [x, y] = this.end();
    const stance = stanceFor(x, y, cordWay(this.scene));
    if (leads) stepBody(this.body, stance.x, stance.stoop);
    if (s.phase === 'coming') {
      if (leads && Math.abs(stance.x - this.body.torsoX) > STANDS_M) return;
      // From here on the end is the assistant's: the operator has asked for it to be taken.
      this.sheath.handOverEnd();
      this.body.limbs[s.arm].inPlane = true;
      s.path = planReach(this.rng, this.skill, step, [this.body.limbs[s.arm].x, this.body.limbs[s.arm].y], [x, y]);
      s.phase = 'reaching';
    }
    const [tx, ty] = alongReach(s.path!, step, x, y);
    stepLimb(this.body, s.arm, tx, ty, false);
    const limb = this.body.limbs[s.arm];
    if (s.phase === 'reaching') {
      if (shareOf(s.path!, step) >= 1 && length(limb.x - x, limb.y - y) < ARRIVED_M) s.phase = 'drawing';
      return;
    }
    this.draw(s, step);
  }

  save(): unknown {
    return this.s && { ...this.s };
  }

  restore(saved: unknown): void {
    this.s = saved as State | null;
    if (this.s) this.s = { ...this.s };
  }

  /** Film that is still folded (m). */
  private left(): number {
    return coverableM(this.scene.scenario) - this.scene.cover.coveredM;
  }

  private end(): readonly [number, number] {
    const { world, cord, cover, scenario } = this.scene;
    const { x, y } = pointAt(world, cord, scenario.cord.linkM, cover.coveredM + BEFORE_END_M);
    return [x, y];
  }

  private draw(s: State, step: number): void {
    const { world, cord, cover, scenario } = this.scene;
    this.letNodeBe(s);
    const stickN = this.sheath.film.stickN();
    if (stickN > PULL_N || this.left() <= 1e-9) return this.leave(step);
    this.sheath.draw(DRAW_MPS * STEP_SECONDS);
    const { ux, uy } = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    s.dragged = world.strandStart(cord) + Math.round(cover.coveredM / scenario.cord.linkM);
    world.setNodeForce(s.dragged, ux * stickN, uy * stickN);
  }

  private letNodeBe(s: State): void {
    if (s.dragged >= 0) this.scene.world.setNodeForce(s.dragged, 0, 0);
    s.dragged = -1;
  }

  private leave(step: number): void {
    const s = this.s!;
    this.letNodeBe(s);
    const { x, y } = this.body.limbs[s.arm];
    s.path = planReach(this.rng, this.skill, step, [x, y], restOf(this.body, s.arm));
    s.phase = 'leaving';
  }

  private goBack(s: State, step: number): void {
    const [x, y] = alongReach(s.path!, step, ...restOf(this.body, s.arm));
    stepLimb(this.body, s.arm, x, y, true);
    const share = shareOf(s.path!, step);
    if (share > OUT_OF_PLANE) this.body.limbs[s.arm].inPlane = false;
    if (share >= 1) this.s = null;
  }
}
