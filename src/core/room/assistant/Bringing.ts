import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import { otherSide, type Side } from '../../base/side.ts';
import { secondsToSteps, STEP_SECONDS } from '../../base/time.ts';
import { HAND } from '../handShape.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { AssistantDoing } from '../picture.ts';
import type { Scene } from '../scene.ts';
import { pointAt } from '../sheath/alongCord.ts';
import { slideTo, takeCord } from '../sheath/cordGrip.ts';
import type { Sheath } from '../sheath/Sheath.ts';
import { followGoal, restOf, stepBody, stepLimb, type AssistantState } from './assistantBody.ts';
import { bringingStance } from './bringingStance.ts';
import { DOING, UNDER_WAY, type Phase, type BringingState } from './bringingState.ts';
import { openEndOf, tailOf, upFrom } from './cordEnds.ts';
import { hangsFree, loweredShare, opens, outOfField } from './cordLetDown.ts';
import { cordWay } from './cordPlace.ts';
import { EndDrawing } from './EndDrawing.ts';
import { alongReach, planReach, shareOf, type ReachPath } from './reachPath.ts';
import { RestOfCord } from './RestOfCord.ts';

/** Where the cord is taken beside the holder, and how far behind the probe it is held when it hangs (m); common practice. */
const TAKEN_AT_M = 0.06;
const HELD_AT_M = 0.26;
/** Where it is held clear once the operator has the probe (m from the probe), and how much of that is straight. */
const CLEAR_AT_M = 0.42;
const STRAIGHT = 0.94;
/** Cord next to the outlet that no hand takes (m). */
const END_M = 0.1;
/** Pull at the probe from which it hangs on a guided cord (N). */
const HANGS_N = 0.6;
/** Cord to spare while the hand climbs along it, and when it has (m). */
const LOOSE_M = 0.02;
const TAUT_M = 0.003;
/** Cord to spare where fingers guide it to a probe that is held, most for the clumsiest: it bends aside over the hands before it; and for one that falls (m). */
const GUIDED_M = { skilled: 0.02, clumsy: 0.07, falling: 0.05 } as const;
/** Cord that stays bare before the hand that holds it clear, and no hand goes higher than this (m). */
const AHEAD_M = 0.22;
const HIGHEST_M = 1.72;
/** How steeply, how high (m) and how nearly straight the open end is drawn away from the probe. */
const DRAWN_STRAIGHT = 0.97;
const DRAWN_UP = 0.85;
const DRAWN_HIGHEST_M = 1.6;
/** Where the open end is taken, before it, and how fast a hand slides there (m, m/s). */
const BEFORE_END_M = 0.012;
const TO_END_MPS = 0.3;
/** Gap between face and mouth before it is lowered, how fast and how far it is lowered (m, m/s). */
const OVER_M = 0.11;
const LOWER_MPS = 0.08;
const LOWER_MOST_M = 0.4;
/** Part of the weight below which the probe is felt to rest on something. */
const RESTS = 0.45;
/** How fast the cord runs through a loosened hand, and the hand that holds it clear goes (m/s). */
const RUN_MPS = 0.8;
const FOLLOW_MPS = 0.45;
/** How far off the mouth the clumsiest hand brings the probe (m). */
const CLUMSY_M = 0.05;
/** Pull at which the cord slips out of a bare hand (N; a sliding hold chatters by several), and how a new pull enters it (about 0.1 s). */
const GRIP_N = 20;
const PULL_BLEND = 0.08;
const NEAR = { standsM: 0.04, arrivedM: 0.012 } as const;
const SLACK = { eachM: 0.05, mostM: 0.15 } as const;
/** Cosine of how far the cord that is held clear leans outward. */
const UPRIGHT = 0.88;
/** Where the probe is brought without an opened sheath: over the edge of the bed, at that height of a mouth (m). */
const BESIDE_BED_M = 0.55;
const NO_MOUTH_M = 1.4;
/** So much of its way back a hand is out of the plane of bed and field. */
const OUT_OF_PLANE = 0.75;
const TIPS = [HAND.gripU, 0] as const;

/** The hand on the side of the machine. */
const armOf = (scene: Scene): Side => (cordWay(scene) > 0 ? 'right' : 'left');

/**
 * The assistant brings the bare probe by its cord, lowers it, and when told lets it go and holds the cord clear farther back. The
 * probe hangs from the hand as the solver says; the hand goes along minimum-jerk reaches.
 */
export class Bringing {
  private s: BringingState | null = null;
  private readonly drawing: EndDrawing;
  /** In the other hand. */
  private readonly rest: RestOfCord;

  constructor(
    private readonly scene: Scene,
    private readonly sheath: Sheath,
    private readonly body: AssistantState,
    private readonly rng: Rng,
    private readonly skill: number,
  ) {
    this.drawing = new EndDrawing(scene, sheath);
    this.rest = new RestOfCord(scene, body, otherSide(armOf(scene)), rng, skill);
  }

  get active(): boolean {
    return this.s !== null;
  }

  /** Arms that are at work. */
  get arms(): readonly Side[] {
    if (!this.s || this.s.phase === 'coming') return [];
    const { arm, phase } = this.s;
    return this.rest.held || phase === 'lifting' ? [arm, otherSide(arm)] : [arm];
  }

  get doing(): AssistantDoing | null {
    return this.s && DOING[this.s.phase];
  }

  /** The cord is in a hand. */
  get holds(): boolean {
    return Boolean(this.s?.grip);
  }

  /** The probe hangs from the hand. */
  get hasProbe(): boolean {
    return this.s !== null && ['lifting', 'carrying', 'over', 'lowering', 'lowered'].includes(this.s.phase);
  }

  /** What is being done with the probe and is not yet at its end. */
  get underWay(): 'bringing' | 'lowering' | null {
    return (this.s && UNDER_WAY[this.s.phase]) ?? null;
  }

  /** The cord is held clear of the operator's hands. */
  get holdsClear(): boolean {
    return this.s?.phase === 'clear';
  }

  begin(step: number, goesFor: 'probe' | 'tail' = 'probe'): void {
    const way = cordWay(this.scene);
    this.s = { goesFor, phase: 'coming', arm: armOf(this.scene), way, path: null, grip: null, goalX: 0, goalY: 0, loweredM: 0, weightN: 0, hangsN: 0, pullN: 0, slackM: 0, since: step };
  }

  /** Told again to bring it: to where the mouth is now. */
  bringAgain(step: number): void {
    if (this.s && (this.s.phase === 'over' || this.s.phase === 'lowered' || this.s.phase === 'lowering')) this.carry(step);
  }

  /** Stands still for one step: what is under way goes on from here. */
  pause(): void {
    if (this.s?.path) this.s.path = { ...this.s.path, startStep: this.s.path.startStep + 1 };
    this.rest.pause();
  }

  /** Told to lower it. False when nothing is there to be lowered. */
  lower(step: number): boolean {
    if (this.s?.phase === 'lowering') return true;
    if (!this.s || (this.s.phase !== 'over' && this.s.phase !== 'lowered')) return false;
    this.s.weightN = this.s.hangsN;
    this.enter('lowering', step);
    return true;
  }

  /** Told to let go: first of the probe, then of the cord. False when nothing is held. */
  letGo(step: number): boolean {
    if (!this.s?.grip) return false;
    if (['clear', 'toEnd', 'drawing'].includes(this.s.phase)) this.letDown(step);
    else if (this.hasProbe) this.enter('clear', step);
    return true;
  }

  /**
   * Told to pull the tail: the hand that holds the cord slides along it to the open end; else a hand comes for it. False where
   * there is no end to be taken.
   */
  pullTail(step: number): boolean {
    if (this.s?.goesFor === 'tail' && (this.s.phase === 'coming' || this.s.phase === 'reaching')) return true;
    if (this.drawing.leftM <= 0 || (this.s && !['clear', 'aside', 'lettingDown'].includes(this.s.phase))) return false;
    // From here on the end is the assistant's: the operator has asked for it to be taken.
    this.sheath.handOverEnd();
    if (this.s) this.enter('toEnd', step);
    else this.begin(step, 'tail');
    return true;
  }

  /** Told to stop: the film stays as far as it is drawn. */
  stopDrawing(step: number): void {
    if (this.s?.phase === 'toEnd' || this.s?.phase === 'drawing') this.endDrawing(step);
  }

  giveSlack(): void {
    if (this.s) this.s.slackM = Math.min(SLACK.mostM, this.s.slackM + SLACK.eachM);
  }

  dropAll(step: number): void {
    if (this.s) this.leave(step);
  }

  /** One step, before the world moves: moves body and arm. */
  step(step: number): void {
    const { s, scene } = this;
    if (!s) return;
    if (s.phase === 'leaving') return this.goBack(s, step);
    if (s.grip) this.hold(s, step);
    if (s.grip && s.phase === 'lifting' && !this.rest.held) this.rest.take(s.grip.s);
    else if (s.grip) this.rest.carry({ ...s, s: s.grip.s, letsDown: s.phase === 'lettingDown' }, step);
    if (!this.s || this.s.phase === 'leaving') return;
    const [x, y] = this.aim(s);
    const [tx, ty] = s.path ? alongReach(s.path, step, x, y) : followGoal(this.body.limbs[s.arm], x, y, FOLLOW_MPS);
    // Letting the cord down the body goes and bends with the hand, no sooner.
    const stance = DOING[s.phase] === 'lettingCordDown' ? bringingStance(s, this.rest, tx, ty) : bringingStance(s, this.rest, x, y);
    stepBody(this.body, stance.x, stance.stoop);
    if (s.phase === 'coming') {
      if (Math.abs(stance.x - this.body.torsoX) < NEAR.standsM && this.body.stoop === stance.stoop) {
        this.body.limbs[s.arm].inPlane = true;
        s.path = this.plan(step, x, y);
        this.enter('reaching', step);
      }
      return;
    }
    stepLimb(this.body, s.arm, tx, ty, false);
    const limb = this.body.limbs[s.arm];
    const there = s.path !== null && shareOf(s.path, step) >= 1 && length(limb.x - x, limb.y - y) < NEAR.arrivedM;
    if (s.phase === 'reaching' && there) {
      const at = s.goesFor === 'tail' ? scene.cover.coveredM + BEFORE_END_M : TAKEN_AT_M;
      s.grip = takeCord(scene.world, scene.cord, scene.scenario.cord.linkM, scene.assistantHands[s.arm], TIPS, at);
      if (s.goesFor === 'tail') {
        s.path = null;
        this.enter('drawing', step);
        return;
      }
      const tail = tailOf(scene);
      this.go('lifting', step, tail.x, tail.y + HELD_AT_M - TAUT_M);
    } else if (s.phase === 'lifting' && there && this.rest.held) {
      this.unhook();
      this.carry(step);
    } else if (s.phase === 'toEnd' && s.grip!.s <= scene.cover.coveredM + BEFORE_END_M + 1e-9) {
      this.enter('drawing', step);
    } else if (s.phase === 'carrying' && there) {
      s.path = null;
      this.enter('over', step);
    } else if (s.phase === 'aside' && length(limb.x - x, limb.y - y) < NEAR.arrivedM) {
      this.letDown(step);
    } else if (s.phase === 'lettingDown' && opens(s.path!, this.skill, step) && !this.rest.held) this.leave(step);
  }

  save(): unknown {
    return { s: this.s && { ...this.s, grip: this.s.grip && { ...this.s.grip } }, drawing: this.drawing.save(), rest: this.rest.save() };
  }

  restore(saved: unknown): void {
    const { s, drawing, rest } = saved as { readonly s: BringingState | null; readonly drawing: unknown; readonly rest: unknown };
    this.s = s && { ...s, grip: s.grip && { ...s.grip } };
    this.drawing.restore(drawing);
    this.rest.restore(rest);
  }

  private enter(phase: Phase, step: number): void {
    this.s!.phase = phase;
    this.s!.since = step;
  }

  private go(phase: Phase, step: number, x: number, y: number): void {
    const s = this.s!;
    s.goalX = x;
    s.goalY = y;
    s.path = this.plan(step, x, y);
    this.enter(phase, step);
  }

  /** To over the mouth of the opened sheath, as exactly as skill allows; without one, to beside the bed. */
  private carry(step: number): void {
    const s = this.s!;
    const off = CLUMSY_M * (1 - this.skill) * this.rng.between(-1, 1);
    const [mx, my] = this.sheath.pocket.isOpen ? this.sheath.pocket.mouth() : [s.way * BESIDE_BED_M, NO_MOUTH_M];
    s.loweredM = 0;
    this.go('carrying', step, mx + off, my + OVER_M + 2 * THING_SHAPES.probe.halfLength + HELD_AT_M);
  }

  /** Where the cord is held clear, from the probe: so far that the film does not come to the hand (m). */
  private clearAt(): number {
    const { cover, scenario } = this.scene;
    return Math.min(scenario.cord.lengthM - END_M, Math.max(CLEAR_AT_M, cover.coveredM + AHEAD_M));
  }

  /** Looks after the hold on the cord: lets it run to where it should be, lowers, feels. */
  private hold(s: BringingState, step: number): void {
    const { scene } = this;
    const { world, cord, scenario } = scene;
    const grip = s.grip!;
    s.pullN += (world.holdForce(grip.node) - s.pullN) * PULL_BLEND;
    s.hangsN += (world.endTensions(cord).first - s.hangsN) * PULL_BLEND;
    let wanted = grip.s;
    if (s.phase === 'lifting') wanted = Math.min(HELD_AT_M, this.fromTail(s) + LOOSE_M);
    const most = RUN_MPS * STEP_SECONDS;
    // Loosened fingers guide the cord: it runs through them as the hand goes, and as fast as it falls when something hangs on it.
    if (s.phase === 'clear' && grip.s < this.clearAt()) wanted = Math.min(this.clearAt(), Math.max(this.needed(s) + this.spare(), world.endTensions(cord).first > HANGS_N ? grip.s + most : 0));
    if (s.phase === 'aside') wanted = Math.min(scenario.cord.lengthM - END_M, Math.max(grip.s, this.needed(s) + this.spare()));
    // The operator has the probe: what the cord lacks is given at once.
    if (s.phase === 'lowered' && this.sheath.probeHeld) wanted = Math.max(wanted, this.needed(s));
    if (s.phase === 'drawing' && !this.drawing.step()) this.endDrawing(step);
    if (s.phase === 'toEnd' || s.phase === 'drawing') wanted = scene.cover.coveredM + BEFORE_END_M;
    const back = s.phase === 'toEnd' ? -TO_END_MPS * STEP_SECONDS : 0;
    const to = grip.s + Math.min(s.phase === 'lifting' ? 1.3 * most : most, Math.max(back, wanted - grip.s));
    if (s.phase === 'lowering') this.lowerOn(s, step);
    const waits = scenario.assistant.letsGoAfterS;
    if (s.phase === 'lowered' && waits > 0 && step - s.since >= secondsToSteps(waits)) this.enter('clear', step);
    if (s.phase === 'clear' || s.phase === 'toEnd' || s.phase === 'aside') s.path = null;
    if (!slideTo(world, cord, scenario.cord.linkM, scene.assistantHands[s.arm], TIPS, grip, to) || s.pullN > GRIP_N) this.leave(step);
  }

  private lowerOn(s: BringingState, step: number): void {
    s.path = null;
    s.loweredM += LOWER_MPS * STEP_SECONDS;
    s.goalY -= LOWER_MPS * STEP_SECONDS;
    if (s.loweredM >= LOWER_MOST_M || s.hangsN < RESTS * s.weightN) this.enter('lowered', step);
  }

  /** Where the fingertips are to be now. */
  private aim(s: BringingState): readonly [number, number] {
    if (s.phase === 'coming' || s.phase === 'reaching') {
      const at = s.goesFor === 'tail' ? this.scene.cover.coveredM + BEFORE_END_M : TAKEN_AT_M;
      const { x, y } = pointAt(this.scene.world, this.scene.cord, this.scene.scenario.cord.linkM, at);
      return [x, y];
    }
    if (s.phase === 'toEnd' || s.phase === 'drawing') {
      const { x, y } = tailOf(this.scene);
      return upFrom(s.way, x, y, s.grip!.s * DRAWN_STRAIGHT, DRAWN_UP, DRAWN_HIGHEST_M);
    }
    return s.phase === 'clear' ? this.clearOf(s) : [s.goalX, s.goalY];
  }

  /** Held clear: nearly straight up from the open end of the film, or from the probe, and outward where that would be too high. */
  private clearOf(s: BringingState): readonly [number, number] {
    const held = this.sheath.endHeldBy !== null;
    const { x, y } = held ? openEndOf(this.scene) : tailOf(this.scene);
    const far = Math.max(0.1, (this.clearAt() - (held ? this.scene.cover.coveredM : 0)) * STRAIGHT - s.slackM);
    return upFrom(s.way, x, y, far, UPRIGHT, HIGHEST_M);
  }

  /** Cord that it takes from the probe along the film and on to the fingertips (m). */
  private needed(s: BringingState): number {
    const { x, y } = openEndOf(this.scene);
    const limb = this.body.limbs[s.arm];
    return this.scene.cover.coveredM + length(limb.x - x, limb.y - y);
  }

  private spare(): number {
    const { skilled, clumsy, falling } = GUIDED_M;
    return this.sheath.probeHeld ? skilled * this.skill + clumsy * (1 - this.skill) : falling;
  }

  /** From where the cord leaves the probe to the fingertips (m). */
  private fromTail(s: BringingState): number {
    const tail = tailOf(this.scene);
    const { x, y } = this.body.limbs[s.arm];
    return length(x - tail.x, y - tail.y);
  }

  /** The end is let go; where the rest of the cord is carried, the hand holds the cord clear again. */
  private endDrawing(step: number): void {
    this.drawing.stop();
    if (this.s!.goesFor === 'probe') this.enter('clear', step);
    else this.letDown(step);
  }

  /** Brings the cord to where it will hang, and opens the hand there. */
  private letDown(step: number): void {
    const s = this.s!;
    this.drawing.stop();
    if (loweredShare(this.skill) === 0) return this.leave(step);
    const aside = outOfField(this.scene, this.body.limbs[s.arm]);
    if (aside && s.phase !== 'aside') return this.go('aside', step, aside.x, aside.y);
    const down = hangsFree(this.scene, s.grip!.s);
    this.go('lettingDown', step, down.x, down.y);
  }

  /** Takes the probe out of its holder. */
  private unhook(): void {
    const { world, sheath, things } = this.scene;
    world.unweldBodies(sheath!.holder, things[0]!.body);
  }

  private leave(step: number): void {
    const s = this.s!;
    this.drawing.stop();
    if (s.grip && this.scene.world.holderOf(s.grip.node) === this.scene.assistantHands[s.arm]) this.scene.world.releaseNode(s.grip.node);
    s.grip = null;
    this.rest.letGo();
    s.path = this.plan(step, ...restOf(this.body, s.arm));
    this.enter('leaving', step);
  }

  private goBack(s: BringingState, step: number): void {
    const limb = this.body.limbs[s.arm];
    stepBody(this.body, this.scene.scenario.room.assistantXM, 0);
    const [x, y] = alongReach(s.path!, step, ...restOf(this.body, s.arm));
    stepLimb(this.body, s.arm, x, y, true);
    const share = shareOf(s.path!, step);
    if (share > OUT_OF_PLANE) limb.inPlane = false;
    if (share >= 1) this.s = null;
  }

  private plan(step: number, x: number, y: number): ReachPath {
    const limb = this.body.limbs[this.s!.arm];
    return planReach(this.rng, this.skill, step, [limb.x, limb.y], [x, y]);
  }
}
