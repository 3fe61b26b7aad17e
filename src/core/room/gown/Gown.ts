import type { StateHash } from '../../base/hash.ts';
import { length } from '../../base/portableMath.ts';
import { otherSide, SIDES, type Side } from '../../base/side.ts';
import type { GownObservation, GownState } from '../../procedure/observation.ts';
import { depthOf } from '../arm.ts';
import { armOf } from '../driveHands.ts';
import { fingertips } from '../fingertips.ts';
import type { HandState } from '../handState.ts';
import type { MadeTouch } from '../MadeTouches.ts';
import type { Scene } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import { holderOf } from '../work.ts';
import { copyDress, isDressed, isGloved, isOut, placeOfWork, undressed, wearAs, type ArmDress, type Dress } from './dress.ts';
import { Gloving, type Tear } from './Gloving.ts';
import { GownInDepth } from './GownInDepth.ts';
import { HeldGown } from './HeldGown.ts';
import type { GownHost } from './host.ts';
import type { GownSurfaces } from './gownSurfaces.ts';
import { HAND_IN_GLOVE_M, NECK_HALF_M, onShoulderM } from './gownFacts.ts';
import { handsTogether, inOwnArmpit } from './handPlaces.ts';
import { meetsTurnedBack, OpenGloving } from './OpenGloving.ts';
import { passerAt } from './passer.ts';
import { Reach } from './Reach.ts';
import { TieCard } from './TieCard.ts';

/** The assistant draws the gown up on the shoulders this fast (m per step of 1/120 s): 0.25 m/s, common practice. */
const DRAW_UP_M = 0.25 / 120;

/** The gown and the gloves from the table on to the body: what hands do with them. It judges nothing. */
export class Gown {
  readonly held: HeldGown;
  readonly inDepth: GownInDepth;
  readonly gloving: Gloving;
  readonly openGloving: OpenGloving;
  readonly card: TieCard;
  readonly dress: Dress;
  private readonly shows: GownSurfaces;
  private readonly reach: Reach;
  /** Part of a thing that each hand met when it took it. */
  private met: Record<Side, string> = { left: '', right: '' };
  /** Surface that each hand has in a zone of its own, by zone. */
  private zones: { armpit: Record<Side, string>; uncovered: Record<Side, string> } = { armpit: { left: '', right: '' }, uncovered: { left: '', right: '' } };
  /** Names of gloves that were pulled off and for which no new one lies opened yet; and of the one that was changed in this step. */
  private pulled: Record<Side, string> = { left: '', right: '' };
  private changed: string | null = null;
  /** What the assistant touches of the gown, by hand: while it helps, and while it has the card. */
  private assistantOn: Record<Side, 'front' | 'card' | null> = { left: null, right: null };

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
    private readonly host: GownHost,
  ) {
    this.dress = scene.dress!;
    this.held = new HeldGown(scene, surfaces, host);
    this.inDepth = new GownInDepth(scene, surfaces.slots);
    this.gloving = new Gloving(scene, host.hands);
    this.openGloving = new OpenGloving(scene, host.hands);
    this.card = new TieCard(scene, host.hands, host.gone, host.carriedOff);
    this.shows = surfaces.worn!;
    this.reach = new Reach(scene);
    const { card, packet } = scene.gown!;
    host.gone[card] = host.carriedOff[card] = true;
    if (!this.dress.tied) return;
    this.card.state = 'tied';
    host.gone[packet] = host.carriedOff[packet] = true;
    for (const side of SIDES) this.takeOffTable(side);
  }

  get state(): GownState {
    if (this.dress.tied) return 'tied';
    if (this.held.dropped) return 'dropped';
    if (!this.held.cloth.isOpen) return holderOf(this.host.hands, this.scene.gown!.packet) ? 'carried' : 'lying';
    return this.areArmsIn ? 'onArms' : 'open';
  }

  get areArmsIn(): boolean {
    return SIDES.every((side) => this.dress.arms[side].inM > 0);
  }

  /** The gown sits on both shoulders, or is held at the cuffs. */
  get isDrawnUp(): boolean {
    return SIDES.every((side) => this.dress.arms[side].inM >= onShoulderM(this.scene.scenario) - 1e-9 || this.host.hands[side].closed);
  }

  /** Surface of the clothes under the gown. */
  get clothes(): string {
    return this.shows.ids.clothes;
  }

  /** What fingertips could take beside things: a shoulder of the open gown, or the edge of a glove's cuff on the other hand. */
  offers(side: Side, x: number, y: number): { readonly kind: 'gown' | 'gloveCuff'; readonly gap: number } | null {
    const edge = this.gloving.edge(side);
    if (edge) return { kind: 'gloveCuff', gap: length(edge[0] - x, edge[1] - y) };
    if (!this.held.offers(side)) return null;
    const [sx, sy] = this.held.cloth.shoulder(side);
    return { kind: 'gown', gap: length(sx - x, sy - y) };
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
      this.met[side] = own ? this.meetsOf(side, own, u) : '';
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
    if (hold.kind === 'gown') this.held.letGo(side);
  }

  /** Before the world moves. */
  before(step: number): void {
    const { host, scene } = this;
    this.dress.personX = passerAt(scene.scenario, step);
    this.held.before();
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
      const isFree = arm.glove === 'lying' || arm.glove === 'away';
      if (arm.inM > 0 && isFree && !host.hands[side].closed && pushed[side] > 0) this.push(arm, pushed[side]);
    }
    this.inDepth.step({ right: this.depthOfShoulder('right'), left: this.depthOfShoulder('left') }, host.torsoX());
    this.openGloving.step((side, mps) => this.sayTorn(this.gloving.pulled(side, mps)), (side) => this.takeOffTable(side));
    for (const tear of this.gloving.step(pushed)) this.sayTorn(tear);
    for (const side of SIDES) if (isGloved(dress.arms[side])) this.takeOffTable(side);
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
    this.held.putAway();
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
    const made = this.inDepth.onClothes.map(({ slot, x, y }): MadeTouch => ({ a: this.surfaces.upper[slot]!, b: ids.clothes, x, y }));
    for (const side of SIDES) {
      const arm = this.dress.arms[side];
      const at = { x: world.bodyX[hands[side]]!, y: world.bodyY[hands[side]]! };
      const isPast = arm.inM > scenario.gown.sleeveM && !isGloved(arm);
      if (isPast) made.push({ a: ids.skin[side].hand, b: ids.gown.knit[side], ...at });
      const other = otherSide(side);
      if (this.gloving.draws(other)) {
        const fingers = this.surfaces.upper[this.surfaces.slots.hand[other].fingers]!;
        made.push({ a: fingers, b: ids.gloves[side].cuff, ...at });
        if (isPast) made.push({ a: fingers, b: ids.skin[side].hand, ...at });
      }
      if (this.openGloving.isOutside(side)) made.push({ a: ids.skin[side].hand, b: ids.gloves[side].palm, ...at });
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
      this.held.startOver();
      this.card.putAway('away');
      this.pulled = { left: '', right: '' };
      wearAs(this.dress, { ...undressed(scene.scenario.gown.standXM), personX: this.dress.personX });
      for (const thing of [scene.gown!.packet, scene.gown!.gloves.left, scene.gown!.gloves.right]) this.layAnew(thing);
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

  /** The assistant has pulled a glove off by its cuff, inside out: the bare hand is out of a cuff that stays at the wrist. */
  pulledOff(side: Side): void {
    const { host, scene, dress } = this;
    const arm = dress.arms[side];
    this.changed = this.shows.freshGlove(side);
    this.pulled[side] = this.changed;
    this.shows.passCuff(side);
    this.gloving.fresh(side);
    arm.inM = scene.scenario.gown.sleeveM + arm.advanceM;
    arm.glove = 'away';
    arm.drawnM = arm.advanceM = 0;
    host.hands[side].closed = false;
    host.replaced(this.surfaces.slots.thing[scene.gown!.gloves[side]]!.solid);
  }

  /** The assistant has opened a new glove on the table; one that was not on yet is taken away. */
  opened(side: Side): void {
    if (this.pulled[side]) {
      this.dress.arms[side].glove = 'lying';
      this.layAnew(this.scene.gown!.gloves[side]);
    }
    this.changed = this.pulled[side] || this.freshGlove(side);
    this.pulled[side] = '';
  }

  /** Name of the glove that was changed by hand in this step, or null. */
  takeChanged(): string | null {
    const { changed } = this;
    this.changed = null;
    return changed;
  }

  /** `isHelped` says whether the assistant is at ties or card. */
  observe(step: number, isHelped: boolean): GownObservation {
    const { dress, scene, host } = this;
    const each = <T>(of: (side: Side) => T): Record<Side, T> => ({ left: of('left'), right: of('right') });
    const toCuff = (arm: ArmDress): number | null => (arm.inM > 0 ? scene.scenario.gown.sleeveM - arm.inM : null);
    const { state } = this.card;
    return {
      step,
      gown: this.state,
      holding: each((side) => host.hands[side].hold?.kind === 'gown'),
      hemM: this.held.cloth.isOpen ? this.held.cloth.hemM : 0,
      clothesGapM: this.inDepth.nearest?.gapM ?? null,
      toCuffM: each((side) => toCuff(dress.arms[side])),
      isOut: each((side) => isOut(dress.arms[side], scene.scenario.gown.sleeveM)),
      gloves: each((side) => dress.arms[side].glove),
      overlapM: each((side) => this.gloving.overlap(side)),
      card: state === 'hanging' && this.card.heldBy ? 'held' : state,
      handsTogether: handsTogether(scene),
      isHelped,
    };
  }

  hashInto(hash: StateHash): void {
    for (const side of SIDES) {
      const { inM, glove, drawnM, advanceM } = this.dress.arms[side];
      hash.addNumber(inM).addText(glove).addNumber(drawnM).addNumber(advanceM);
    }
    hash.addText(this.state).addText(this.card.state);
    this.inDepth.hashInto(hash);
  }

  save(): unknown {
    return {
      dress: copyDress(this.dress), held: this.held.save(), inDepth: this.inDepth.save(), gloving: this.gloving.save(), openGloving: this.openGloving.save(), card: this.card.state, shows: this.shows.save(), reach: this.reach.save(),
      met: { ...this.met }, zones: { armpit: { ...this.zones.armpit }, uncovered: { ...this.zones.uncovered } }, pulled: { ...this.pulled }, assistantOn: { ...this.assistantOn },
    };
  }

  restore(saved: unknown): void {
    const s = saved as ReturnType<Gown['save']> & Record<string, never>;
    wearAs(this.dress, s['dress']);
    this.held.restore(s['held']);
    this.inDepth.restore(s['inDepth']);
    this.gloving.restore(s['gloving']);
    this.openGloving.restore(s['openGloving']);
    this.card.state = s['card'];
    this.shows.restore(s['shows']);
    this.reach.restore(s['reach']);
    this.met = { ...(s['met'] as Record<Side, string>) };
    const zones = s['zones'] as Gown['zones'];
    this.zones = { armpit: { ...zones.armpit }, uncovered: { ...zones.uncovered } };
    this.pulled = { ...(s['pulled'] as Gown['pulled']) };
    this.assistantOn = { ...(s['assistantOn'] as Gown['assistantOn']) };
  }

  /** How far before the operator's shoulders that shoulder of the open gown is held (m), or null. */
  private depthOfShoulder(shoulder: Side): number | null {
    const by = this.held.holderOf(shoulder);
    return by && depthOf(this.scene.scenario, armOf(this.scene, by, this.host.torsoX()));
  }

  /** Where along a thing the fingertips are (m in its frame). */
  private alongThing(side: Side, thing: number): number {
    const { world, things } = this.scene;
    const { body } = things[thing]!;
    const [x, y] = fingertips(this.scene, side);
    return world.bodyC[body]! * (x - world.bodyX[body]!) + world.bodyS[body]! * (y - world.bodyY[body]!);
  }

  /** Surface that the fingers of `side` meet which take the glove of `own` at `u` (m in its frame). */
  private meetsOf(side: Side, own: Side, u: number): string {
    const { palm, turnedBack } = this.shows.ids.gloves[own];
    const arm = this.dress.arms[side];
    const isBare = arm.inM <= 0 || isOut(arm, this.scene.scenario.gown.sleeveM);
    return (isBare || isGloved(arm)) && meetsTurnedBack(isBare, u) ? turnedBack : palm;
  }

  /** An open hand is pushed outward: along the sleeve while the gown is not tied; once out of its cuff, on until it is in the open. */
  private push(arm: ArmDress, metres: number): void {
    const { sleeveM } = this.scene.scenario.gown;
    const farthest = arm.inM > sleeveM ? sleeveM + HAND_IN_GLOVE_M : this.dress.tied ? 0 : onShoulderM(this.scene.scenario);
    arm.inM = Math.max(arm.inM, Math.min(farthest, arm.inM + metres));
  }

  private sayTorn(tear: Tear | null): void {
    if (tear) this.host.say({ kind: 'glove.torn', surface: this.shows.ids.gloves[tear.side].fingers, x: tear.x, y: tear.y });
  }

  /** The glove is on its hand: no thing lies or hangs there any more. */
  private takeOffTable(side: Side): void {
    const thing = this.scene.gown!.gloves[side];
    this.host.gone[thing] = this.host.carriedOff[thing] = true;
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
}
