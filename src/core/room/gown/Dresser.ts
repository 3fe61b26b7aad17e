import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { secondsToSteps, STEP_SECONDS } from '../../base/time.ts';
import { HAND } from '../handShape.ts';
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
/** How long it takes to pull a glove off, and to open the packet of a new one on to the table (s); common practice. */
const PULL_S = 1.2;
const OPEN_S = 4;
/** The assistant stands behind, this far beside the operator, and is there within this distance (m). */
const BEHIND_M = 0.3;
const STANDS_M = 0.04;
/** Hands of the assistant at the neck: to either side of its middle, and above the shoulders (m). */
const AT_NECK_M = 0.08;
const OVER_SHOULDER_M = 0.04;
const AT_FRONT_M = 0.25;
/** Fingers of the assistant keep that far over the opened wrapper (m). */
const OVER_TABLE_M = 0.18;

/** What is being done about the gown. Plain data. */
interface Work {
  readonly what: 'tie' | 'card' | 'grab' | 'pull' | 'open';
  /** Hand whose glove is changed. */
  readonly glove: Side | null;
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
    return DOING[work.what];
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

  /** At the ties or the card, or on the way there. */
  get helps(): boolean {
    const { work } = this;
    return work !== null && (work.what === 'tie' || work.what === 'card') && work.stage !== 'leaving';
  }

  /** The glove of a hand is being changed, its old one still to go. */
  get changesGlove(): boolean {
    return this.work?.what === 'pull' || (this.work?.what === 'open' && this.work.stage !== 'leaving');
  }

  /** Begins to change the glove of a hand: pulls off one that is on, and opens a new one. False while something else is being done. */
  changeGlove(side: Side, step: number, torsoX: number): boolean {
    if (this.work) return false;
    this.begin(this.gown.dress.arms[side].glove === 'on' ? 'pull' : 'open', step, torsoX, side);
    return true;
  }

  /** Leaves a glove that is still on as it is. */
  leaveGlove(step: number): void {
    if (this.work?.what === 'pull') this.leave(this.work, step);
  }

  stop(): void {
    for (const side of SIDES) this.gown.assistantTouches(side, null);
    this.work = null;
  }

  step(step: number, torsoX: number): void {
    const { work, state } = this;
    if (!work) return;
    const aim = this.aim(work, step, torsoX);
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
    if (work.what === 'tie') this.atNeck(work, step, torsoX);
    if (work.stage === 'reaching') {
      if (shareOf(work.path!, step) >= 1) this.arrive(work, step);
      return;
    }
    if (work.what === 'tie' && !this.gown.isDrawnUp) {
      this.gown.drawUp();
      work.since = step;
    }
    if (step - work.since >= secondsToSteps(TAKES_S[work.what])) this.finish(work, step, torsoX);
  }

  save(): unknown {
    return this.work && { ...this.work };
  }

  restore(saved: unknown): void {
    this.work = saved ? { ...(saved as Work) } : null;
  }

  private begin(what: Work['what'], step: number, torsoX: number, glove: Side | null = null): void {
    const toX = what === 'open' ? this.scene.scenario.gown.table.xM : torsoX;
    this.work = { what, glove, stage: 'coming', arm: this.state.torsoX >= toX ? 'right' : 'left', since: step, path: null };
  }

  private aim(work: Work, step: number, torsoX: number): readonly [number, number] {
    const { operator } = this.scene.scenario;
    if (work.what === 'tie') return [torsoX + (work.arm === 'right' ? AT_NECK_M : -AT_NECK_M), operator.shoulderM + OVER_SHOULDER_M];
    if (work.what === 'card') return this.gown.card.farEnd;
    if (work.what === 'pull') return this.alongHand(work.glove!, HAND.wristU + (work.stage === 'doing' ? ((step - work.since) * STEP_SECONDS * (HAND.gripU - HAND.wristU)) / PULL_S : 0));
    if (work.what === 'open') return [this.scene.scenario.gown.table.xM, this.scene.scenario.gown.table.topM + OVER_TABLE_M];
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
  private atNeck(work: Work, step: number, torsoX: number): void {
    const [x, y] = this.aim(work, step, torsoX);
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

  private finish(work: Work, step: number, torsoX: number): void {
    if (work.what === 'tie') this.gown.tie();
    if (work.what === 'card') this.gown.card.putAway('tied');
    if (work.what === 'open') this.gown.opened(work.glove!);
    if (work.what === 'pull') {
      // With the old glove in the hand on to the table, where the packet of a new one is opened.
      this.gown.pulledOff(work.glove!);
      this.begin('open', step, torsoX, work.glove);
      return;
    }
    this.leave(work, step);
  }

  private leave(work: Work, step: number): void {
    this.gown.assistantTouches(work.arm, null);
    work.stage = 'leaving';
    const { x, y } = this.state.limbs[work.arm];
    work.path = planReach(this.rng, this.skill, step, [x, y], restOf(this.state, work.arm));
  }

  /** Point of the operator's hand at `u` (m in its frame). */
  private alongHand(side: Side, u: number): readonly [number, number] {
    const { world, hands } = this.scene;
    const body = hands[side];
    return [world.bodyX[body]! + world.bodyC[body]! * u, world.bodyY[body]! + world.bodyS[body]! * u];
  }

  private goBack(work: Work, step: number): void {
    const [x, y] = restOf(this.state, work.arm);
    const at = alongReach(work.path!, step, x, y);
    stepLimb(this.state, work.arm, at[0], at[1], true);
    const limb = this.state.limbs[work.arm];
    if (shareOf(work.path!, step) >= 1 || length(limb.x - x, limb.y - y) < STANDS_M) this.work = null;
  }
}

const TAKES_S: Readonly<Record<Work['what'], number>> = { tie: TIE_S, card: TURN_S, grab: GRAB_S, pull: PULL_S, open: OPEN_S };
const DOING: Readonly<Record<Work['what'], AssistantDoing>> = { tie: 'tyingGown', card: 'holdingCard', grab: 'holdingCard', pull: 'pullingGlove', open: 'openingGlove' };
