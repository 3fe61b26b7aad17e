import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { secondsToSteps } from '../../base/time.ts';
import { restOf, stanceFor, stepBody, stepLimb, type AssistantState } from '../assistant/assistantBody.ts';
import { alongReach, planReach, shareOf, type ReachPath } from '../assistant/reachPath.ts';
import type { AssistantDoing } from '../picture.ts';
import type { Scene } from '../scene.ts';
import type { Gown } from './Gown.ts';

/** How long tying the back takes once the gown is drawn up, and the turn with the card (s); common practice. */
const TIE_S = 3;
const TURN_S = 2.5;
/** How long a hand stays on the front that it should not have touched (s). */
const GRAB_S = 0.8;
/** The assistant stands behind, this far beside the operator, and is there within this distance (m). */
const BEHIND_M = 0.3;
const STANDS_M = 0.04;
/** Hands of the assistant at the neck: to either side of its middle, and above the shoulders (m). */
const AT_NECK_M = 0.08;
const OVER_SHOULDER_M = 0.04;
const AT_FRONT_M = 0.25;

/** What is being done about the gown. Plain data. */
interface Work {
  readonly what: 'tie' | 'card' | 'grab';
  stage: 'coming' | 'reaching' | 'doing' | 'leaving';
  readonly arm: Side;
  since: number;
  path: ReachPath | null;
}

/** The assistant at the gown: draws it up and ties it from behind, inside only, and takes the tie card. Does what is asked, also when it is too early. */
export class Dresser {
  private work: Work | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly gown: Gown,
    private readonly state: AssistantState,
    private readonly rng: Rng,
    private readonly skill: number,
  ) {}

  get active(): boolean {
    return this.work !== null;
  }

  get arms(): readonly Side[] {
    const { work } = this;
    if (!work || work.stage === 'coming') return [];
    return work.what === 'tie' ? SIDES : [work.arm];
  }

  get doing(): AssistantDoing | null {
    const { work } = this;
    if (!work) return null;
    if (work.stage !== 'doing') return work.stage;
    return work.what === 'tie' ? 'tyingGown' : 'holdingCard';
  }

  /** Begins to tie, or to help where there is nothing to tie yet. False when there is no gown in anybody's hands. */
  tieBack(step: number, torsoX: number): boolean {
    const { state } = this.gown;
    if (this.work || state === 'lying' || state === 'carried' || state === 'dropped' || state === 'tied') return false;
    this.begin(this.gown.areArmsIn ? 'tie' : 'grab', step, torsoX);
    return true;
  }

  /** Goes for the card: by its far end where the operator holds it out, else off the front. False when there is none. */
  takeCard(step: number, torsoX: number): boolean {
    if (this.work || this.gown.card.state !== 'hanging') return false;
    this.begin('card', step, torsoX);
    return true;
  }

  stop(): void {
    for (const side of SIDES) this.gown.assistantTouches(side, null);
    this.work = null;
  }

  step(step: number, torsoX: number): void {
    const { work, state } = this;
    if (!work) return;
    const aim = this.aim(work, torsoX);
    if (work.stage === 'leaving') {
      this.goBack(work, step);
      return;
    }
    const stance = work.what === 'tie' ? { x: torsoX + (state.torsoX >= torsoX ? BEHIND_M : -BEHIND_M), stoop: 0 } : stanceFor(aim[0], aim[1], work.arm === 'right' ? 1 : -1);
    stepBody(state, stance.x, stance.stoop);
    if (work.stage === 'coming') {
      if (Math.abs(stance.x - state.torsoX) < STANDS_M && state.stoop === stance.stoop) this.reachOut(work, step, aim);
      return;
    }
    const [x, y] = alongReach(work.path!, step, aim[0], aim[1]);
    stepLimb(state, work.arm, x, y, false);
    if (work.what === 'tie') this.atNeck(work, torsoX);
    if (work.stage === 'reaching') {
      if (shareOf(work.path!, step) >= 1) this.arrive(work, step);
      return;
    }
    if (work.what === 'tie' && !this.gown.isDrawnUp) {
      this.gown.drawUp();
      work.since = step;
    }
    if (step - work.since >= secondsToSteps(work.what === 'tie' ? TIE_S : work.what === 'card' ? TURN_S : GRAB_S)) this.finish(work, step);
  }

  save(): unknown {
    return this.work && { ...this.work };
  }

  restore(saved: unknown): void {
    this.work = saved ? { ...(saved as Work) } : null;
  }

  private begin(what: Work['what'], step: number, torsoX: number): void {
    this.work = { what, stage: 'coming', arm: this.state.torsoX >= torsoX ? 'right' : 'left', since: step, path: null };
  }

  private aim(work: Work, torsoX: number): readonly [number, number] {
    const { operator } = this.scene.scenario;
    if (work.what === 'tie') return [torsoX + (work.arm === 'right' ? AT_NECK_M : -AT_NECK_M), operator.shoulderM + OVER_SHOULDER_M];
    if (work.what === 'card') return this.gown.card.farEnd;
    return [torsoX + (work.arm === 'right' ? AT_NECK_M : -AT_NECK_M), operator.shoulderM - AT_FRONT_M];
  }

  private reachOut(work: Work, step: number, aim: readonly [number, number]): void {
    const { x, y } = this.state.limbs[work.arm];
    work.stage = 'reaching';
    // Behind the operator is behind the plane of bed and field, and the card is held out before it: what is touched there is told by itself.
    this.state.limbs[work.arm].inPlane = false;
    work.path = planReach(this.rng, this.skill, step, [x, y], aim);
  }

  /** The other hand is at the neck as well. */
  private atNeck(work: Work, torsoX: number): void {
    const [x, y] = this.aim(work, torsoX);
    const other: Side = work.arm === 'right' ? 'left' : 'right';
    stepLimb(this.state, other, 2 * torsoX - x, y, false);
  }

  private arrive(work: Work, step: number): void {
    work.stage = 'doing';
    work.since = step;
    if (work.what === 'grab') this.gown.assistantTouches(work.arm, 'front');
    // The operator did not hold it out: it is taken off the front.
    if (work.what === 'card') this.gown.assistantTouches(work.arm, this.gown.card.heldBy ? 'card' : 'front');
    if (work.what === 'card') this.gown.card.state = 'passed';
  }

  private finish(work: Work, step: number): void {
    if (work.what === 'tie') this.gown.tie();
    if (work.what === 'card') this.gown.card.putAway('tied');
    this.gown.assistantTouches(work.arm, null);
    work.stage = 'leaving';
    const { x, y } = this.state.limbs[work.arm];
    work.path = planReach(this.rng, this.skill, step, [x, y], restOf(this.state, work.arm));
  }

  private goBack(work: Work, step: number): void {
    const [x, y] = restOf(this.state, work.arm);
    const at = alongReach(work.path!, step, x, y);
    stepLimb(this.state, work.arm, at[0], at[1], true);
    const limb = this.state.limbs[work.arm];
    if (shareOf(work.path!, step) >= 1 || length(limb.x - x, limb.y - y) < STANDS_M) this.work = null;
  }
}
