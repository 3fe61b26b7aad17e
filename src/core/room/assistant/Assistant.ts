import type { StateHash } from '../../base/hash.ts';
import { length } from '../../base/portableMath.ts';
import { Rng } from '../../base/rng.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { secondsToSteps } from '../../base/time.ts';
import type { RequestId } from '../../commands/command.ts';
import type { AssistantDoing } from '../picture.ts';
import { Dresser } from '../gown/Dresser.ts';
import type { Gown } from '../gown/Gown.ts';
import type { Scene } from '../scene.ts';
import type { Sheath } from '../sheath/Sheath.ts';
import { copyState, lookOf, palmOf, restOf, standingAt, stanceFor, stepBody, stepLimb, type AssistantLook, type AssistantState } from './assistantBody.ts';
import { hangsFree, loweredShare, opens } from './cordLetDown.ts';
import { clumsyDetour } from './cordPlace.ts';
import { Bringing } from './Bringing.ts';
import { bedWay } from './bedControl.ts';
import { obeyLoading } from './loadingRequests.ts';
import { aimOf, arrived, canGoOn, carriedFrom, continues, drop, isOffering, isOnControl, isSpare, isTaken, mustWait, newErrand, pressNoMore, pressOn } from './doing.ts';
import type { AssistantDeeds, AssistantSight, Deed, Errand, ErrandKind } from './errand.ts';
import { alongReach, planReach, shareOf } from './reachPath.ts';
import { AT_WORK, NOT_POSSIBLE } from './errandWords.ts';
import { REPLIES } from './replies.ts';

/** A simple reaction takes about 0.25 s (a general page on hand speed and reaction time); understanding words takes longer by up to this (s). */
const REACTION_S = 0.25;
const UNDERSTAND_S = 0.35;
/** A body stands where it should once it is this near, in metres. */
const STANDS_M = 0.04;
/** Fingertips have arrived within this distance, in metres. */
const ARRIVED_M = 0.012;
/** So much of its way back a hand is out of the plane of bed and field. */
const OUT_OF_PLANE = 0.75;

interface Order {
  readonly request: RequestId;
  readonly thing: string;
  readonly dueStep: number;
}

interface Saved {
  readonly rng: number;
  readonly state: AssistantState;
  readonly errand: Errand | null;
  readonly orders: readonly Order[];
  readonly waiting: readonly Order[];
  readonly stopped: boolean;
  readonly carried: number;
  readonly bringing: unknown;
  readonly dresser: unknown;
}

/**
 * The assistant: a person with bare hands who does what is asked, also when it is too early. Hands move along minimum-jerk reaches
 * after what they go for, and grip by the solver. It judges nothing.
 */
export class Assistant {
  readonly state: AssistantState;
  /** Thing in a hand on its way out of the room, or −1. */
  carried = -1;
  private readonly rng: Rng;
  private readonly skill: number;
  private errand: Errand | null = null;
  /** Heard and not yet understood, and understood but waiting for the errand before. */
  private orders: Order[] = [];
  private waiting: Order[] = [];
  private stopped = false;
  private said: string[] = [];
  /** There where a sheath is loaded, and where a gown is put on. */
  private readonly bringing: Bringing | null;
  /** Null where no gown is put on. */
  readonly dresser: Dresser | null;

  constructor(
    private readonly scene: Scene,
    seed: number,
    sheath: Sheath | null,
    gown: Gown | null,
  ) {
    this.rng = new Rng(seed ^ 0x5bd1e995);
    this.skill = scene.scenario.assistant.skill;
    this.state = standingAt(scene.scenario.room.assistantXM);
    this.bringing = sheath && new Bringing(scene, sheath, this.state, this.rng, this.skill);
    this.dresser = gown && new Dresser(scene, gown, this.state, this.rng, this.skill);
  }

  /** Hears a request; `thing` is the id of what it is about, or empty. */
  ask(request: RequestId, thing: string, step: number): void {
    this.orders.push({ request, thing, dueStep: step + secondsToSteps(REACTION_S + UNDERSTAND_S * this.rng.next()) });
  }

  look(): AssistantLook {
    return lookOf(this.state, this.scene.scenario.room.assistantXM, this.doing());
  }

  /** The cord is held in a hand. */
  get holdsCord(): boolean {
    return (this.errand?.kind === 'takeCord' && this.errand.phase === 'doing') || (this.bringing?.holdsClear ?? false);
  }

  /** The bare probe hangs from a hand. */
  get hasProbe(): boolean {
    return this.bringing?.hasProbe ?? false;
  }

  /** What was under way with the probe when told to stop, and goes on when asked for again; null while nothing was. */
  get stoppedAt(): 'bringing' | 'lowering' | null {
    return this.stopped ? (this.bringing?.underWay ?? null) : null;
  }

  /** Height to which a hand on its control sends the bed, in metres above where the scenario has it; null while there is none. */
  get bedToM(): number | null {
    return !this.stopped && this.errand && isOnControl(this.errand) ? this.errand.bedToM : null;
  }

  /** One step, before the world moves. */
  step(sight: AssistantSight): AssistantDeeds {
    this.said = [];
    while (this.orders.length > 0 && this.orders[0]!.dueStep <= sight.step) this.obey(this.orders.shift()!, sight);
    let done: Deed = NOTHING;
    if (this.errand && isOffering(this.errand) && isTaken(this.errand, sight.hands)) this.carried = -1;
    if (!this.stopped) {
      const loading = this.bringing?.active === true;
      const dressing = this.dresser?.active === true;
      if (!this.errand && !loading && !dressing) this.begin(sight);
      if (this.errand) done = this.goOn(this.errand, sight);
      else if (loading) this.bringing!.step(sight.step);
      else if (dressing) this.dresser!.step(sight.step, sight.torsoX);
      else stepBody(this.state, this.scene.scenario.room.assistantXM, 0);
      const comes = this.errand?.phase === 'coming';
      const busy = [comes ? null : (this.errand?.arm ?? null), ...(this.bringing?.arms ?? []), ...(this.dresser?.arms ?? [])];
      for (const side of SIDES) if (!busy.includes(side)) this.rest(side);
    } else this.pause();
    this.drive();
    return { said: this.said, ...done };
  }

  /** The glove of a hand is being changed. */
  get changesGlove(): boolean {
    return this.dresser?.changesGlove ?? false;
  }

  /** Begins to change the glove of a hand. False while something else is being done. */
  changeGlove(side: Side, step: number, torsoX: number): boolean {
    const isFree = !this.stopped && !this.errand && this.bringing?.active !== true;
    return isFree && this.dresser!.changeGlove(side, step, torsoX);
  }

  leaveGlove(step: number): void {
    this.dresser?.leaveGlove(step);
  }

  /** Opens the hand that holds the cord, at once. */
  letGoOfCord(): void {
    if (this.errand?.kind === 'takeCord') this.leave(this.errand, -1);
    this.bringing?.dropAll(-1);
  }

  hashInto(hash: StateHash): void {
    hash.addNumber(this.state.torsoX).addNumber(this.state.stoop).addInt(this.carried);
    for (const side of SIDES) hash.addNumber(this.state.limbs[side].x).addNumber(this.state.limbs[side].y);
  }

  save(): unknown {
    const saved: Saved = {
      rng: this.rng.save(), state: copyState(this.state), errand: this.errand && { ...this.errand }, orders: [...this.orders], waiting: [...this.waiting],
      stopped: this.stopped, carried: this.carried, bringing: this.bringing?.save(), dresser: this.dresser?.save(),
    };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.rng.restore(s.rng);
    Object.assign(this.state, copyState(s.state));
    this.errand = s.errand && { ...s.errand };
    this.orders = [...s.orders];
    this.waiting = [...s.waiting];
    this.stopped = s.stopped;
    this.carried = s.carried;
    this.bringing?.restore(s.bringing);
    this.dresser?.restore(s.dresser);
  }

  private doing(): AssistantDoing {
    if (this.stopped) return 'stopped';
    if (this.bringing?.doing) return this.bringing.doing;
    if (this.dresser?.doing) return this.dresser.doing;
    if (!this.errand) return 'waiting';
    const { kind, phase } = this.errand;
    return phase === 'doing' ? AT_WORK[kind] : phase;
  }

  private obey(order: Order, sight: AssistantSight): void {
    const { errand } = this;
    const goesDown = errand?.phase === 'lettingCordDown';
    const onCord = errand?.kind === 'takeCord' && !goesDown && errand.phase !== 'leaving' ? errand : null;
    if (order.request === 'stop') {
      this.bringing?.stopDrawing(sight.step);
      if (errand && isOnControl(errand)) pressNoMore(this.scene, errand);
      this.dresser?.stop();
      this.stopped = true;
      this.waiting = [];
      return;
    }
    const wasStopped = this.stopped;
    this.stopped = false;
    if (this.obeyDressing(order, sight) || this.obeyLoading(order, sight.step, wasStopped)) return;
    if (order.request === 'letGo') {
      if (onCord) this.letDown(onCord, sight.step);
      else if (goesDown) return;
      else if (errand && isOffering(errand)) this.letItemGo(errand, sight.step);
      else this.said.push(REPLIES.holdNothing);
    } else if (order.request === 'giveSlack') {
      if (this.holdsCord) this.giveSlack(errand!, sight);
      else this.said.push(REPLIES.holdNothing);
    } else if (order.request === 'takeCord') {
      if (!onCord) this.waiting.push(order);
    } else if (onCord) this.said.push(REPLIES.cordInHand);
    else if (errand && isOnControl(errand) && bedWay(order.request) !== 0) this.pressBed(errand, order.request);
    else {
      if (wasStopped && errand && !goesDown && errand.phase !== 'leaving') this.leave(errand, sight.step);
      this.waiting.push(order);
    }
  }

  /** Requests about the gown. False for any other. */
  private obeyDressing({ request }: Order, { step, torsoX }: AssistantSight): boolean {
    if (request !== 'tieBack' && request !== 'takeCard') return false;
    const isFree = !this.errand && this.bringing?.active !== true;
    const begun = isFree && (request === 'tieBack' ? this.dresser?.tieBack(step, torsoX) : this.dresser?.takeCard(step, torsoX));
    if (!begun) this.said.push(request === 'tieBack' ? REPLIES.nothingToTie : REPLIES.noCard);
    return true;
  }

  /** Requests about the probe and its sheath. False for any other. */
  private obeyLoading({ request }: Order, step: number, goesOn: boolean): boolean {
    if (!this.bringing) return false;
    const reply = obeyLoading(this.bringing, request, { step, busy: this.errand !== null, covered: this.scene.cover.on, goesOn });
    if (reply) this.said.push(reply);
    return reply !== false;
  }

  private giveSlack(errand: Errand, { step, torsoX }: AssistantSight): void {
    errand.slackM = Math.min(SLACK_MOST_M, errand.slackM + SLACK_M);
    errand.path = this.plan(errand, step, aimOf(this.scene, errand, torsoX));
  }

  /** The hand is on the control already. */
  private pressBed(errand: Errand, request: RequestId): void {
    if (!canGoOn(this.scene, request)) this.said.push(REPLIES.bedEnd);
    pressOn(this.scene, errand, request);
  }

  private begin(sight: AssistantSight): void {
    const order = this.waiting.shift();
    if (!order) return;
    const errand = newErrand(this.scene, order.request as ErrandKind, order.thing, this.state, sight);
    if (!errand) this.said.push(NOT_POSSIBLE[order.request as ErrandKind] ?? REPLIES.nothingToTake);
    else this.errand = errand;
  }

  private goOn(errand: Errand, sight: AssistantSight): Deed {
    const { state, scene } = this;
    const aim = aimOf(scene, errand, sight.torsoX);
    const stance = stanceFor(aim[0], aim[1], errand.way);
    if (errand.phase === 'coming') {
      stepBody(state, stance.x, stance.stoop);
      if (Math.abs(stance.x - state.torsoX) < STANDS_M && state.stoop === stance.stoop) this.reach(errand, sight, aim);
      return NOTHING;
    }
    if (errand.phase === 'leaving') return this.goBack(errand, sight.step);
    stepBody(state, stance.x, stance.stoop);
    const goal = errand.via ?? aim;
    if (errand.phase === 'reaching' && mustWait(scene, state.limbs[errand.arm], this.skill, sight)) errand.path = { ...errand.path!, startStep: errand.path!.startStep + 1 };
    const [x, y] = alongReach(errand.path!, sight.step, goal[0], goal[1]);
    stepLimb(state, errand.arm, x, y, false);
    if (errand.phase === 'lettingCordDown') {
      if (!continues(scene, errand, sight) || opens(errand.path!, this.skill, sight.step)) this.leave(errand, sight.step);
      return NOTHING;
    }
    if (errand.phase === 'doing') {
      if (continues(scene, errand, sight)) return NOTHING;
      const { kind } = errand;
      const unpacked = kind === 'openPacket' ? this.unpack(errand) : -1;
      if (isSpare(kind)) this.letItemGo(errand, sight.step);
      else this.leave(errand, sight.step);
      return { wiped: kind === 'wipeFace', tookAway: -1, unpacked };
    }
    const limb = state.limbs[errand.arm];
    if (shareOf(errand.path!, sight.step) < 1 || length(limb.x - goal[0], limb.y - goal[1]) > ARRIVED_M) return NOTHING;
    if (errand.via) {
      errand.via = null;
      errand.path = this.plan(errand, sight.step, aim);
    } else return this.arrive(errand, sight);
    return NOTHING;
  }

  private reach(errand: Errand, sight: AssistantSight, aim: readonly [number, number]): void {
    errand.phase = 'reaching';
    // The face lies behind the plane of bed and field and the bed's control before it, and so do the ways of the hand there.
    this.state.limbs[errand.arm].inPlane = errand.kind !== 'wipeFace' && bedWay(errand.kind) === 0;
    errand.via = errand.kind === 'takeCord' ? clumsyDetour(this.scene, this.skill, this.rng.next(), this.rng.next()) : null;
    errand.path = this.plan(errand, sight.step, errand.via ?? aim);
    if (isSpare(errand.kind)) this.carried = errand.thing;
  }

  private arrive(errand: Errand, { step, torsoX }: AssistantSight): Deed {
    errand.phase = 'doing';
    errand.since = step;
    arrived(this.scene, errand);
    if (errand.kind === 'takeAway') this.carried = errand.thing;
    errand.path = this.plan(errand, step, aimOf(this.scene, errand, torsoX));
    return errand.kind === 'offerPacket' ? { ...NOTHING, unpacked: this.unpack(errand) } : NOTHING;
  }

  /** Told to let go of the cord: a hand that has it brings it to where it will hang. */
  private letDown(errand: Errand, step: number): void {
    if (errand.phase !== 'doing' || loweredShare(this.skill) === 0) return this.leave(errand, step);
    const { x, y } = hangsFree(this.scene, (errand.node - this.scene.world.strandStart(this.scene.cord)) * this.scene.scenario.cord.linkM);
    errand.phase = 'lettingCordDown';
    errand.via = [x, y];
    errand.path = this.plan(errand, step, errand.via);
  }

  /** Stands still for one step: what is under way goes on from here. */
  private pause(): void {
    if (this.errand?.path) this.errand.path = { ...this.errand.path, startStep: this.errand.path.startStep + 1 };
    this.bringing?.pause();
  }

  private leave(errand: Errand, step: number): void {
    drop(this.scene, errand);
    errand.phase = 'leaving';
    errand.via = null;
    errand.path = this.plan(errand, step, restOf(this.state, errand.arm));
    // What is carried out goes with the hand, before the plane of bed and field.
    if (this.carried >= 0) this.state.limbs[errand.arm].inPlane = false;
  }

  private goBack(errand: Errand, step: number): Deed {
    const limb = this.state.limbs[errand.arm];
    const [x, y] = alongReach(errand.path!, step, ...restOf(this.state, errand.arm));
    stepLimb(this.state, errand.arm, x, y, true);
    const share = shareOf(errand.path!, step);
    if (share > OUT_OF_PLANE) limb.inPlane = false;
    if (share < 1) return NOTHING;
    const tookAway = this.carried;
    this.carried = -1;
    this.errand = null;
    return { ...NOTHING, tookAway };
  }

  private plan(errand: Errand, step: number, to: readonly [number, number]): NonNullable<Errand['path']> {
    const { x, y } = this.state.limbs[errand.arm];
    return planReach(this.rng, this.skill, step, [x, y], to);
  }

  private rest(side: Side): void {
    this.state.limbs[side].inPlane = false;
    stepLimb(this.state, side, ...restOf(this.state, side), true);
  }

  /** What came out of its packet is no longer carried. */
  private letItemGo(errand: Errand, step: number): void {
    this.carried = -1;
    this.leave(errand, step);
  }

  /** What is out of its packet can be taken, and falls where nothing holds it. */
  private unpack({ thing }: Errand): number {
    this.scene.world.setBodyEnabled(this.scene.things[thing]!.body, true);
    return thing;
  }

  /** Sends the bodies of the hands where the hands are, and what they carry with them. */
  private drive(): void {
    const { world, assistantHands, things } = this.scene;
    for (const side of SIDES) {
      const { x, y, c, s } = palmOf(this.state.limbs[side]);
      world.driveBody(assistantHands[side], x, y, c, s);
    }
    if (this.carried < 0 || !this.errand) return;
    const { x, y, c, s } = this.state.limbs[this.errand.arm];
    const [aside, below] = carriedFrom(this.errand);
    if (isSpare(this.errand.kind)) world.teleportBody(things[this.carried]!.body, x + aside, y - below, 1, 0);
    else world.teleportBody(things[this.carried]!.body, x, y, c, s);
  }
}

const NOTHING = { wiped: false, tookAway: -1, unpacked: -1 } as const;
/** Cord given back at one request, and in all (m). */
const SLACK_M = 0.05;
const SLACK_MOST_M = 0.15;
