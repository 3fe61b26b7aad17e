import { otherSide, SIDES, signOf, type Side } from '../../base/side.ts';
import { armOf } from '../driveHands.ts';
import { fingertips } from '../fingertips.ts';
import type { HandState } from '../handState.ts';
import type { Scene } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import { alongArm } from './alongArm.ts';
import { GownCloth } from './GownCloth.ts';
import { SLEEVE_LINKS, SLIPPED_IN_M } from './gownFacts.ts';
import type { GownHost } from './host.ts';
import { LimpSleeves } from './LimpSleeves.ts';

/** From a hand that holds the gown by its neck to either shoulder of it, and how far those droop (m); common practice. */
const HALF_NECK_M = 0.14;
const DROOP_M = 0.04;
/** A shoulder comes to the hand that takes it, and out of one that takes both, that fast (m per step of 1/120 s). */
const SHIFT_M = 0.3 / 120;
/** The other shoulder stays this far beyond the arm that is in (m). */
const BESIDE_ARM_M = 0.12;
/** An empty sleeve hangs this far beside its shoulder (m). */
const SLEEVE_OUT_M = 0.06;

/** The open gown between hands and arms: who holds which shoulder, and how hands slip into its sleeves. */
export class HeldGown {
  readonly cloth: GownCloth;
  readonly sleeves: LimpSleeves;
  /** Hands at the two shoulders of the open gown. */
  private holders: Record<Side, Side | null> = { left: null, right: null };
  /** How far each shoulder is beside the hand that holds it (m). */
  private beside: Record<Side, number> = { left: 0, right: 0 };
  /** Nobody holds it any more. */
  dropped = false;

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
    private readonly host: GownHost,
  ) {
    this.cloth = new GownCloth(scene);
    this.sleeves = new LimpSleeves(scene);
  }

  /** A shoulder of the open gown that this hand could take. */
  offers(side: Side): boolean {
    const { tied, arms } = this.scene.dress!;
    return this.cloth.isOpen && !tied && !this.dropped && arms[side].inM <= 0 && this.holders[side] !== side;
  }

  /** Hand that holds that shoulder of the open gown, or null. */
  holderOf(shoulder: Side): Side | null {
    return this.cloth.isOpen ? this.holders[shoulder] : null;
  }

  /** One hand holds both shoulders: the open gown hangs from its neck. */
  get isByNeck(): boolean {
    return this.holders.left !== null && this.holders.left === this.holders.right;
  }

  /** A hand takes its shoulder of the gown where that is. */
  take(side: Side): void {
    this.holders[side] = side;
    this.beside[side] = 0;
  }

  /** A hand lets go of the gown: the other one keeps what it had, if it is there. */
  letGo(side: Side): void {
    const other = otherSide(side);
    for (const shoulder of SIDES) if (this.holders[shoulder] === side) this.holders[shoulder] = this.holders[other] === other ? other : null;
  }

  /** Before the world moves. */
  before(): void {
    for (const side of SIDES) {
      const hand = this.host.hands[side];
      if (!hand.using) continue;
      if (hand.hold?.kind === 'thing' && hand.hold.thing === this.scene.gown!.packet) this.fallOpen(side, hand);
      else if (hand.hold?.kind === 'gown') this.slipIn(side, hand);
    }
    if (!this.cloth.isOpen) return;
    for (const side of SIDES) {
      this.lead(side);
      this.leadSleeve(side);
    }
  }

  /** Takes the cloth out of the room: it is tied, or a new one lies there. */
  putAway(): void {
    this.cloth.putAway();
    for (const side of SIDES) this.sleeves.putAway(side);
    this.forget();
  }

  /** A new gown lies folded. */
  startOver(): void {
    if (this.cloth.isOpen) this.cloth.putAway();
    for (const side of SIDES) this.sleeves.putAway(side);
    this.holders = { left: null, right: null };
    this.dropped = false;
    this.forget();
  }

  save(): unknown {
    return { cloth: this.cloth.save(), sleeves: this.sleeves.save(), holders: { ...this.holders }, beside: { ...this.beside }, dropped: this.dropped };
  }

  restore(saved: unknown): void {
    const s = saved as { cloth: unknown; sleeves: unknown; holders: Record<Side, Side | null>; beside: Record<Side, number>; dropped: boolean };
    this.cloth.restore(s.cloth);
    this.sleeves.restore(s.sleeves);
    this.holders = { ...s.holders };
    this.beside = { ...s.beside };
    this.dropped = s.dropped;
  }

  /** The hand that carries the folded gown lets its folds go. */
  private fallOpen(side: Side, hand: HandState): void {
    const { scene, host } = this;
    const { packet } = scene.gown!;
    if (hand.hold?.kind !== 'thing') return;
    scene.world.unweld(hand.hold.joint);
    scene.world.setBodyEnabled(scene.things[packet]!.body, false);
    host.gone[packet] = host.carriedOff[packet] = true;
    hand.hold = { kind: 'gown', pullN: 0 };
    hand.using = false;
    this.holders = { left: side, right: side };
    this.beside = { left: 0, right: 0 };
    this.cloth.open(...fingertips(scene, side));
    scene.dress!.hanging = true;
    this.forget();
  }

  /** A hand that holds its shoulder of the gown slips into the sleeve; the other shoulder must be held, or on its arm. */
  private slipIn(side: Side, hand: HandState): void {
    const other = otherSide(side);
    const { arms } = this.scene.dress!;
    if (this.holders[side] !== side || (this.holders[other] !== other && arms[other].inM <= 0)) return;
    hand.hold = null;
    hand.using = false;
    hand.closed = false;
    this.holders[side] = null;
    arms[side].inM = SLIPPED_IN_M;
  }

  /** Brings a shoulder of the gown to where it is held: by a hand, by its arm, or beside the other arm. */
  private lead(side: Side): void {
    const { scene, host, cloth } = this;
    const { arms } = scene.dress!;
    const other = otherSide(side);
    const by = this.holders[side];
    const onArm = (arm: Side): readonly [number, number] => alongArm(scene, arm, armOf(scene, arm, host.torsoX()), arms[arm].inM);
    if (arms[side].inM > 0) cloth.lead(side, onArm(side));
    else if (by) {
      const [x, y] = fingertips(scene, by);
      const wanted = this.isByNeck ? HALF_NECK_M : 0;
      this.beside[side] += Math.min(SHIFT_M, Math.max(-SHIFT_M, wanted - this.beside[side]));
      cloth.lead(side, [x + signOf(side) * this.beside[side], y - (DROOP_M * this.beside[side]) / HALF_NECK_M]);
    } else if (arms[other].inM > 0) {
      const [x, y] = onArm(other);
      cloth.lead(side, [x + signOf(side) * BESIDE_ARM_M, y]);
    } else {
      cloth.drop(side);
      this.dropped = true;
    }
  }

  /** What is empty of a sleeve hangs from its shoulder, or from the fingertips that are in it; a gown that fell lies on it. */
  private leadSleeve(side: Side): void {
    const { scene, sleeves, cloth } = this;
    const [x, y] = cloth.shoulder(side);
    const from = scene.dress!.arms[side].inM > 0 ? fingertips(scene, side) : ([x + signOf(side) * SLEEVE_OUT_M, y] as const);
    if (this.dropped ? sleeves.putAway(side) : sleeves.lead(side, from)) this.forgetSleeve(side);
  }

  private forgetSleeve(side: Side): void {
    const first = this.surfaces.slots.gown!.sleeves[side];
    for (let k = 0; k < SLEEVE_LINKS; k++) this.host.moved(first + k);
  }

  /** The cloth is somewhere else at once. */
  private forget(): void {
    for (const side of SIDES) this.forgetSleeve(side);
    const { edges, hem } = this.surfaces.slots.gown!;
    this.host.moved(hem);
    for (const side of SIDES) for (let k = 0; k < this.scene.world.strandSize(this.scene.gown!.edges[side]) - 1; k++) this.host.moved(edges[side] + k);
  }
}
