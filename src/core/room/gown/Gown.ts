import type { StateHash } from '../../base/hash.ts';
import { length } from '../../base/portableMath.ts';
import { otherSide, SIDES, signOf, type Side } from '../../base/side.ts';
import type { Fact } from '../../ledger/fact.ts';
import type { GownObservation, GownState } from '../../procedure/observation.ts';
import { armOf } from '../driveHands.ts';
import { fingertips } from '../fingertips.ts';
import type { HandState } from '../handState.ts';
import type { MadeTouch } from '../MadeTouches.ts';
import type { Scene } from '../scene.ts';
import type { Slot, Surfaces } from '../surfaces.ts';
import { holderOf } from '../work.ts';
import { alongArm } from './alongArm.ts';
import { copyDress, isDressed, placeOfWork, undressed, wearAs, type ArmDress, type Dress } from './dress.ts';
import { Gloving } from './Gloving.ts';
import { GownCloth } from './GownCloth.ts';
import type { GownSurfaces } from './gownSurfaces.ts';
import { NECK_HALF_M, onShoulderM, SLIPPED_IN_M } from './gownFacts.ts';
import { handsTogether, inOwnArmpit } from './handPlaces.ts';
import { passerAt } from './passer.ts';
import { Reach } from './Reach.ts';
import { TieCard } from './TieCard.ts';

/** How far apart a hand that holds both shoulders of the gown spreads them (m). */
const SPREAD_M = 0.1;
/** The other shoulder stays this far beyond the arm that is in (m). */
const BESIDE_ARM_M = 0.12;
/** The assistant draws the gown up on the shoulders this fast (m per step of 1/120 s): 0.25 m/s, common practice. */
const DRAW_UP_M = 0.25 / 120;

/** What the gown needs of the room. */
export interface GownHost {
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly gone: boolean[];
  readonly carriedOff: boolean[];
  readonly torsoX: () => number;
  replaced(slot: Slot): void;
  moved(slot: Slot): void;
  say(fact: GownFact): void;
}

type Stepless<F> = F extends Fact ? Omit<F, 'step'> : never;
/** What happened to gown and gloves beside touches, without its step. */
export type GownFact = Stepless<Extract<Fact, { kind: 'zone.entered' | 'zone.left' | 'glove.torn' }>>;

/** The gown and the gloves from the table on to the body: what hands do with them. It judges nothing. */
export class Gown {
  readonly cloth: GownCloth;
  readonly gloving: Gloving;
  readonly card: TieCard;
  readonly dress: Dress;
  private readonly shows: GownSurfaces;
  private readonly reach: Reach;
  /** Hands at the two shoulders of the open gown. */
  private holders: Record<Side, Side | null> = { left: null, right: null };
  /** Part of a thing that each hand met when it took it. */
  private met: Record<Side, string> = { left: '', right: '' };
  /** Surface that each hand has in a zone of its own, by zone. */
  private zones: { armpit: Record<Side, string>; uncovered: Record<Side, string> } = { armpit: { left: '', right: '' }, uncovered: { left: '', right: '' } };
  private dropped = false;
  /** What the assistant touches of the gown, by hand: while it helps, and while it has the card. */
  private assistantOn: Record<Side, 'front' | 'card' | null> = { left: null, right: null };

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
    private readonly host: GownHost,
  ) {
    this.dress = scene.dress!;
    this.cloth = new GownCloth(scene);
    this.gloving = new Gloving(scene, host.hands);
    this.card = new TieCard(scene, host.hands, host.gone, host.carriedOff);
    this.shows = surfaces.worn!;
    this.reach = new Reach(scene);
    host.gone[scene.gown!.card] = host.carriedOff[scene.gown!.card] = true;
  }

  get state(): GownState {
    if (this.dress.tied) return 'tied';
    if (this.dropped) return 'dropped';
    if (!this.cloth.isOpen) return holderOf(this.host.hands, this.scene.gown!.packet) ? 'carried' : 'lying';
    return this.areArmsIn ? 'onArms' : 'open';
  }

  get areArmsIn(): boolean {
    return SIDES.every((side) => this.dress.arms[side].inM > 0);
  }

  /** The gown sits on both shoulders, or is held at the cuffs. */
  get isDrawnUp(): boolean {
    return SIDES.every((side) => this.dress.arms[side].inM >= onShoulderM(this.scene.scenario) - 1e-9 || this.host.hands[side].closed);
  }

  /** What fingertips could take beside things: a shoulder of the open gown, or the edge of a glove's cuff on the other hand. */
  offers(side: Side, x: number, y: number): { readonly kind: 'gown' | 'gloveCuff'; readonly gap: number } | null {
    const edge = this.gloving.edge(side);
    if (edge) return { kind: 'gloveCuff', gap: length(edge[0] - x, edge[1] - y) };
    if (!this.cloth.isOpen || this.dress.tied || this.dropped || this.dress.arms[side].inM > 0 || this.holders[side] === side) return null;
    const [sx, sy] = this.cloth.shoulder(side);
    return { kind: 'gown', gap: length(sx - x, sy - y) };
  }

  /** A hand takes its shoulder of the gown. */
  take(side: Side): void {
    this.holders[side] = side;
  }

  /** A hand has taken a thing of gown and gloves: what of it the fingers met. */
  took(side: Side, thing: number): void {
    const { packet, card } = this.scene.gown!;
    const { ids } = this.shows;
    const u = this.alongThing(side, thing);
    if (thing === packet) this.met[side] = Math.abs(u) <= NECK_HALF_M ? ids.gown.inside : ids.gown.front;
    else if (thing === card) this.met[side] = u <= 0 ? ids.card.own : ids.card.far;
    else {
      const own = SIDES.find((one) => this.scene.gown!.gloves[one] === thing);
      this.met[side] = own ? ids.gloves[own].palm : '';
      this.gloving.took(side, thing);
    }
  }

  /** Surface that fingers meet on a thing of gown and gloves, or null for any other thing. */
  meets(side: Side, thing: number): string | null {
    const { packet, card, gloves } = this.scene.gown!;
    return thing === packet || thing === card || SIDES.some((one) => gloves[one] === thing) ? this.met[side] || null : null;
  }

  /** A hand lets go of the gown or of a cuff, or put down a thing. */
  letGo(side: Side, hold: NonNullable<HandState['hold']>): void {
    if (hold.kind === 'thing') this.gloving.putDown(hold.thing);
    if (hold.kind !== 'gown') return;
    const other = otherSide(side);
    for (const shoulder of SIDES) if (this.holders[shoulder] === side) this.holders[shoulder] = this.holders[other] === other ? other : null;
  }

  /** Before the world moves. */
  before(step: number): void {
    const { host, scene } = this;
    this.dress.personX = passerAt(scene.scenario, step);
    for (const side of SIDES) {
      const hand = host.hands[side];
      if (!hand.using) continue;
      if (hand.hold?.kind === 'thing' && hand.hold.thing === scene.gown!.packet) this.fallOpen(side);
      else if (hand.hold?.kind === 'gown') this.slipIn(side);
    }
    if (this.cloth.isOpen) for (const side of SIDES) this.lead(side);
    this.card.step(host.torsoX());
    if (isDressed(this.dress) && this.card.state === 'tied') this.dress.homeX = placeOfWork(scene.layout, this.dress, host.torsoX());
  }

  /** After the world has moved. */
  after(): void {
    const { scene, host, dress } = this;
    const pushed = { left: 0, right: 0 };
    for (const side of SIDES) {
      pushed[side] = this.reach.step(side, armOf(scene, side, host.torsoX()));
      const arm = dress.arms[side];
      const mayPush = arm.inM > 0 && arm.glove === 'lying' && !host.hands[side].closed && !dress.tied;
      if (mayPush && pushed[side] > 0) arm.inM = Math.min(onShoulderM(scene.scenario), arm.inM + pushed[side]);
    }
    for (const { side, x, y } of this.gloving.step(pushed)) host.say({ kind: 'glove.torn', surface: this.shows.ids.gloves[side].fingers, x, y });
    for (const side of SIDES) if (dress.arms[side].glove === 'over' || dress.arms[side].glove === 'on') host.gone[scene.gown!.gloves[side]] = host.carriedOff[scene.gown!.gloves[side]] = true;
    this.shows.show(dress, (slot) => host.replaced(slot));
    for (const side of SIDES) this.watchZones(side);
  }

  /** The assistant draws the gown up for one step. */
  drawUp(): void {
    for (const side of SIDES) {
      const arm = this.dress.arms[side];
      if (this.host.hands[side].closed || arm.glove !== 'lying') continue;
      arm.inM = Math.min(Math.max(arm.inM, onShoulderM(this.scene.scenario)), arm.inM + DRAW_UP_M);
    }
  }

  /** The back is tied. */
  tie(): void {
    this.dress.tied = true;
    this.dress.hanging = false;
    this.cloth.putAway();
    this.forgetCloth();
    this.card.hang();
  }

  /** What a hand of the assistant touches of gown or card from now on, or nothing. */
  assistantTouches(hand: Side, what: 'front' | 'card' | null): void {
    this.assistantOn[hand] = what;
  }

  /** What touches now and no outline shows. */
  touches(): MadeTouch[] {
    const { ids } = this.shows;
    const { scenario, world, hands } = this.scene;
    const made: MadeTouch[] = [];
    for (const side of SIDES) {
      const arm = this.dress.arms[side];
      const at = { x: world.bodyX[hands[side]]!, y: world.bodyY[hands[side]]! };
      const isPast = arm.inM > scenario.gown.sleeveM && arm.glove !== 'over' && arm.glove !== 'on';
      if (isPast) made.push({ a: ids.skin[side].hand, b: ids.gown.knit[side], ...at });
      const other = otherSide(side);
      if (this.gloving.draws(other)) {
        const fingers = this.surfaces.upper[this.surfaces.slots.hand[other].fingers]!;
        made.push({ a: fingers, b: ids.gloves[side].cuff, ...at });
        if (isPast) made.push({ a: fingers, b: ids.skin[side].hand, ...at });
      }
      const on = this.assistantOn[side];
      const bare = this.surfaces.upper[this.surfaces.slots.assistant[side].hand]!;
      const body = this.scene.assistantHands[side];
      if (on) made.push({ a: bare, b: on === 'front' ? ids.gown.front : ids.card.far, x: world.bodyX[body]!, y: world.bodyY[body]! });
    }
    return made;
  }

  /** A new gown with its gloves on the table, and bare arms; once gown and gloves are all on, new ones are put on at once. Returns what went. */
  startOver(): string[] {
    const { scene, host } = this;
    const old = [...this.shows.freshGown(), ...SIDES.map((side) => this.shows.freshGlove(side))];
    if (!isDressed(this.dress)) {
      for (const side of SIDES) this.gloving.fresh(side);
      if (this.cloth.isOpen) this.cloth.putAway();
      this.card.putAway('away');
      this.holders = { left: null, right: null };
      this.dropped = false;
      wearAs(this.dress, { ...undressed(scene.scenario.gown.standXM), personX: this.dress.personX });
      for (const thing of [scene.gown!.packet, scene.gown!.gloves.left, scene.gown!.gloves.right]) this.layAnew(thing);
      this.forgetCloth();
    }
    this.shows.show(this.dress, (slot) => host.replaced(slot));
    const { table, hem, edges } = this.surfaces.slots.gown!;
    for (const slot of [table, hem]) host.replaced(slot);
    for (const side of SIDES) for (let k = 0; k < scene.world.strandSize(scene.gown!.edges[side]) - 1; k++) host.replaced(edges[side] + k);
    for (const thing of [scene.gown!.packet, scene.gown!.card, ...SIDES.map((side) => scene.gown!.gloves[side])]) host.replaced(this.surfaces.slots.thing[thing]!.solid);
    return old;
  }

  /** A new glove: on the hand that had one, held by the assistant; on the table for one that is not gloved yet. Returns what went. */
  freshGlove(side: Side): string {
    const { host, scene } = this;
    const old = this.shows.freshGlove(side);
    const arm = this.dress.arms[side];
    this.gloving.fresh(side);
    const wasOn = arm.glove === 'on';
    if (wasOn) arm.drawnM = scene.scenario.gown.gloveLengthM - arm.advanceM;
    else {
      arm.glove = 'lying';
      arm.drawnM = arm.advanceM = 0;
      this.layAnew(scene.gown!.gloves[side]);
    }
    host.replaced(this.surfaces.slots.thing[scene.gown!.gloves[side]]!.solid);
    this.shows.show(this.dress, (slot) => host.replaced(slot));
    return old;
  }

  observe(step: number): GownObservation {
    const { dress, scene, host } = this;
    const each = <T>(of: (side: Side) => T): Record<Side, T> => ({ left: of('left'), right: of('right') });
    const toCuff = (arm: ArmDress): number | null => (arm.inM > 0 ? scene.scenario.gown.sleeveM - arm.inM : null);
    const { state } = this.card;
    return {
      step,
      gown: this.state,
      holding: each((side) => host.hands[side].hold?.kind === 'gown'),
      hemM: this.cloth.isOpen ? this.cloth.hemM : 0,
      toCuffM: each((side) => toCuff(dress.arms[side])),
      gloves: each((side) => dress.arms[side].glove),
      overlapM: each((side) => this.gloving.overlap(side)),
      card: state === 'hanging' && this.card.heldBy ? 'held' : state,
      handsTogether: handsTogether(scene),
    };
  }

  hashInto(hash: StateHash): void {
    for (const side of SIDES) {
      const { inM, glove, drawnM, advanceM } = this.dress.arms[side];
      hash.addNumber(inM).addText(glove).addNumber(drawnM).addNumber(advanceM);
    }
    hash.addText(this.state).addText(this.card.state);
  }

  save(): unknown {
    return {
      dress: copyDress(this.dress), cloth: this.cloth.save(), gloving: this.gloving.save(), card: this.card.state, shows: this.shows.save(), reach: this.reach.save(),
      holders: { ...this.holders }, met: { ...this.met }, zones: { armpit: { ...this.zones.armpit }, uncovered: { ...this.zones.uncovered } }, dropped: this.dropped, assistantOn: { ...this.assistantOn },
    };
  }

  restore(saved: unknown): void {
    const s = saved as ReturnType<Gown['save']> & Record<string, never>;
    wearAs(this.dress, s['dress']);
    this.cloth.restore(s['cloth']);
    this.gloving.restore(s['gloving']);
    this.card.state = s['card'];
    this.shows.restore(s['shows']);
    this.reach.restore(s['reach']);
    this.holders = { ...(s['holders'] as Record<Side, Side | null>) };
    this.met = { ...(s['met'] as Record<Side, string>) };
    const zones = s['zones'] as Gown['zones'];
    this.zones = { armpit: { ...zones.armpit }, uncovered: { ...zones.uncovered } };
    this.dropped = s['dropped'];
    this.assistantOn = { ...(s['assistantOn'] as Gown['assistantOn']) };
  }

  /** Where along a thing the fingertips are (m in its frame). */
  private alongThing(side: Side, thing: number): number {
    const { world, things } = this.scene;
    const { body } = things[thing]!;
    const [x, y] = fingertips(this.scene, side);
    return world.bodyC[body]! * (x - world.bodyX[body]!) + world.bodyS[body]! * (y - world.bodyY[body]!);
  }

  /** The hand that carries the folded gown lets its folds go. */
  private fallOpen(side: Side): void {
    const { scene, host } = this;
    const hand = host.hands[side];
    const { packet } = scene.gown!;
    if (hand.hold?.kind !== 'thing') return;
    scene.world.unweld(hand.hold.joint);
    scene.world.setBodyEnabled(scene.things[packet]!.body, false);
    host.gone[packet] = host.carriedOff[packet] = true;
    hand.hold = { kind: 'gown', pullN: 0 };
    hand.using = false;
    this.holders = { left: side, right: side };
    this.cloth.open(...fingertips(scene, side));
    this.dress.hanging = true;
    this.forgetCloth();
  }

  /** A hand that holds its shoulder of the gown slips into the sleeve; the other shoulder must be held, or on its arm. */
  private slipIn(side: Side): void {
    const other = otherSide(side);
    if (this.holders[side] !== side || (this.holders[other] !== other && this.dress.arms[other].inM <= 0)) return;
    const hand = this.host.hands[side];
    hand.hold = null;
    hand.using = false;
    hand.closed = false;
    this.holders[side] = null;
    this.dress.arms[side].inM = SLIPPED_IN_M;
  }

  /** Brings a shoulder of the gown to where it is held: by a hand, by its arm, or beside the other arm. */
  private lead(side: Side): void {
    const other = otherSide(side);
    const by = this.holders[side];
    const onArm = (arm: Side): readonly [number, number] => alongArm(this.scene, arm, armOf(this.scene, arm, this.host.torsoX()), this.dress.arms[arm].inM);
    if (this.dress.arms[side].inM > 0) this.cloth.lead(side, onArm(side));
    else if (by) {
      const [x, y] = fingertips(this.scene, by);
      this.cloth.lead(side, by === side ? [x, y] : [x + signOf(side) * SPREAD_M, y]);
    } else if (this.dress.arms[other].inM > 0) {
      const [x, y] = onArm(other);
      this.cloth.lead(side, [x + signOf(side) * BESIDE_ARM_M, y]);
    } else {
      this.cloth.drop(side);
      this.dropped = true;
    }
  }

  /** Zones of gloves that no place in the room tells. */
  private watchZones(side: Side): void {
    const { ids } = this.shows;
    const { world, hands } = this.scene;
    const tucked = this.host.hands[side].closed && !this.host.hands[side].hold && inOwnArmpit(this.scene, side, this.host.torsoX());
    const now = { armpit: tucked ? this.surfaces.upper[this.surfaces.slots.hand[side].fingers]! : '', uncovered: this.gloving.isCuffBare(side) ? ids.gown.knit[side] : '' };
    for (const zone of ['armpit', 'uncovered'] as const) {
      const was = this.zones[zone][side];
      if (was === now[zone]) continue;
      if (was) this.host.say({ kind: 'zone.left', surface: was, zone });
      if (now[zone]) this.host.say({ kind: 'zone.entered', surface: now[zone], zone, x: world.bodyX[hands[side]]!, y: world.bodyY[hands[side]]! });
      this.zones[zone][side] = now[zone];
    }
  }

  /** A thing of gown and gloves lies on the table again, as at the start. */
  private layAnew(thing: number): void {
    const { world, things, gown } = this.scene;
    const { host } = this;
    const holder = holderOf(host.hands, thing);
    const hold = holder && host.hands[holder].hold;
    if (holder && hold?.kind === 'thing') {
      world.unweld(hold.joint);
      host.hands[holder].hold = null;
    }
    host.gone[thing] = host.carriedOff[thing] = false;
    const { body } = things[thing]!;
    const [x, y, c] = gown!.laid[thing]!;
    world.setBodyEnabled(body, true);
    world.teleportBody(body, x, y, c, 0);
    host.moved(this.surfaces.slots.thing[thing]!.solid);
  }

  /** The cloth is somewhere else at once. */
  private forgetCloth(): void {
    const { edges, hem } = this.surfaces.slots.gown!;
    this.host.moved(hem);
    for (const side of SIDES) for (let k = 0; k < this.scene.world.strandSize(this.scene.gown!.edges[side]) - 1; k++) this.host.moved(edges[side] + k);
  }
}
