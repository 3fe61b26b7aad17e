import type { StateHash } from '../../base/hash.ts';
import { acos, length } from '../../base/portableMath.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import type { Fact } from '../../ledger/fact.ts';
import type { SheathObservation, SheathState } from '../../procedure/observation.ts';
import { HAND } from '../handShape.ts';
import type { HandState } from '../handState.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { ProbeDress } from '../picture.ts';
import type { Scene, SheathParts } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import { holderOf, workingEnd } from '../work.ts';
import { nearestAlong, pointAt } from './alongCord.ts';
import { takeAirIn } from './airIntake.ts';
import { coupledShare, squeeze, ventAir } from './air.ts';
import { bandPlace, tensionN, turnsFor } from './bands.ts';
import { putBand } from './banding.ts';
import { bubbleHalfM } from './bubble.ts';
import { slideTo, takeCord, type CordGrip } from './cordGrip.ts';
import { FilmOnCord } from './FilmOnCord.ts';
import { pullFilm } from './filmSlide.ts';
import { runGel, squeezeGelIn, strokeGel } from './gelFlow.ts';
import type { HeadShape } from './headShape.ts';
import { newInside, type SheathInside } from './inside.ts';
import { coverableM, openDepthM, probeHead, toGatherM } from './loading.ts';
import { Pocket } from './Pocket.ts';
import { loadFace } from './tear.ts';

/** Where the fingertips of a hand are in its frame. */
const TIPS = [HAND.gripU, 0] as const;
/** How fast a hand gathers a loose sheath (m/s), common practice. */
const GATHER_MPS = 0.3;
/** What a packet and a bottle of gel hold (mL), common practice; and what falls off by its weight. */
export const GEL_ML = { gelPacket: 20, gelBottle: 250 } as const;
const LUMP_ML = 10;
/** How near to the middle of the mouth a nozzle must be, across and in height (m). */
const OVER_MOUTH_M = 0.06;
const ABOVE_MOUTH_M = 0.16;
/** How near the face must be to the closed end for the film to lie on it (m). */
const AT_END_M = 0.03;
/** How near to the probe or the first of the cord fingers stroke the film or put a band on (m), and how far along the cord. */
const BESIDE_M = 0.035;
const ALONG_CORD_M = 0.12;
/** A hand that lets go of the fold is off it at this distance (m). */
const OFF_FOLD_M = 0.06;
/** Force of fingers that stroke the film (N), common practice. */
const STROKE_N = 8;
/** Friction of a drawn film when it is pulled faster than it slides (N s/m): it keeps a hand from flinging it. */
const DRAG_NS = 30;
const FASTEST_MPS = 0.4;
/** Share by which a new pull of the cord enters the one that counts: about 0.1 s. */
const PULL_BLEND = 0.08;

/** Part of the face with a picture that counts as all of it. */
const COUPLED = 0.95;

/** What the sheath needs of the room. */
export interface SheathHost {
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly gone: boolean[];
  readonly carriedOff: boolean[];
  readonly used: readonly number[];
  /** A slot got another surface. */
  replaced(slot: number): void;
  /** What a slot carries was put somewhere else. */
  moved(slot: number): void;
  say(fact: SheathFact): void;
}

/** What happened to the film, without its step. */
export type SheathFact = Omit<Extract<Fact, { kind: 'torn' }>, 'step'> | Omit<Extract<Fact, { kind: 'gelled' }>, 'step'>;

/** A hand that holds the open end of the film on the cord. */
interface EndHold {
  readonly side: Side;
  readonly grip: CordGrip;
}

interface Saved {
  readonly pocket: unknown;
  readonly film: unknown;
  readonly inside: SheathInside;
  readonly otherGelMl: number;
  readonly dropMl: number;
  readonly gatheredM: number;
  readonly end: EndHold | null;
  readonly usedBefore: readonly number[];
  readonly strokes: Readonly<Record<Side, number | null>>;
  readonly cordPullN: number;
  readonly faceToEndM: number | null;
  readonly cover: { readonly on: boolean; readonly coveredM: number; readonly open: boolean; readonly folded: Readonly<Record<Side, boolean>> };
}

/** The sheath from the table on to probe and cord: what hands do with it, and what becomes of gel, air and bands. It judges nothing. */
export class Sheath {
  readonly pocket: Pocket;
  readonly film: FilmOnCord;
  private inside: SheathInside = newInside();
  private otherGelMl = 0;
  /** Gel that hangs at the nozzle. */
  private dropMl = 0;
  private gatheredM: number;
  private end: EndHold | null = null;
  private usedBefore: number[];
  /** Where each hand strokes the film, along the probe from its face, or null. */
  private strokes: Record<Side, number | null> = { left: null, right: null };
  private cordPullN = 0;
  /** From the face in the opened sheath to its closed end (m), or null. */
  private faceToEndM: number | null = null;
  private readonly head: HeadShape;

  constructor(
    private readonly scene: Scene,
    private readonly parts: SheathParts,
    private readonly surfaces: Surfaces,
    private readonly host: SheathHost,
  ) {
    this.pocket = new Pocket(scene, parts.pocket);
    this.film = new FilmOnCord(scene, surfaces, host);
    this.head = probeHead(scene.scenario);
    this.gatheredM = this.gatheredAtFirst();
    this.usedBefore = scene.things.map(() => 0);
  }

  get state(): SheathState {
    if (this.scene.cover.on) return 'on';
    if (this.pocket.isOpen) return 'open';
    return holderOf(this.host.hands, this.parts.roll) ? 'held' : 'lying';
  }

  /** The face of the probe is between the walls. */
  get probeInside(): boolean {
    const [x, y] = workingEnd(this.scene, 0);
    return this.scene.cover.on || this.pocket.contains(x, y);
  }

  /** Hand that holds the open end of the film on the cord, or null. */
  get endHeldBy(): Side | null {
    return this.end?.side ?? null;
  }

  /** What fingertips at (x, y) could take of the sheath beside things and strands: an edge of the mouth, or the open end on the cord. */
  offers(side: Side, x: number, y: number): { readonly kind: 'rim' | 'film'; readonly gap: number } | null {
    const { world, cord, cover, scenario } = this.scene;
    if (this.pocket.isOpen) return this.pocket.holds(side) ? null : { kind: 'rim', gap: this.pocket.edgeGap(x, y) };
    if (!cover.on || this.end) return null;
    const at = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    return { kind: 'film', gap: length(at.x - x, at.y - y) };
  }

  /** Opens the folded sheath that one hand holds, with the other at the far edge of its mouth. */
  open(first: Side, second: Side): void {
    const { scene, parts, host } = this;
    scene.world.setBodyEnabled(scene.things[parts.roll]!.body, false);
    host.gone[parts.roll] = host.carriedOff[parts.roll] = true;
    this.pocket.open(first, second);
    scene.cover.open = true;
    for (let k = 0; k < scene.world.strandSize(parts.pocket) - 1; k++) host.moved(this.surfaces.slots.pocket + k);
  }

  takeEnd(side: Side): void {
    const { world, hands, cord, cover, scenario } = this.scene;
    this.end = { side, grip: takeCord(world, cord, scenario.cord.linkM, hands[side], TIPS, cover.coveredM) };
  }

  /** A hand lets go of the edge of the mouth or of the open end. */
  letGo(side: Side): void {
    if (this.end?.side === side) {
      this.scene.world.releaseNode(this.end.grip.node);
      this.end = null;
    } else if (this.pocket.holds(side) && !this.pocket.letGo(side)) this.fall();
  }

  /** Pull at a hand's hold of the sheath (N). */
  pullN(side: Side): number {
    return this.end?.side === side ? this.scene.world.holdForce(this.end.grip.node) : this.pocket.pullN(side);
  }

  /** Whether fingers at (x, y) on the probe have film between, inside the opened sheath. */
  isThroughFilm(x: number, y: number): boolean {
    if (this.scene.cover.on) return true;
    const [ax, ay] = this.onAxis(x, y).point;
    return this.pocket.contains(ax, ay);
  }

  /** A hand strokes the film on the probe. */
  strokesProbe(side: Side): boolean {
    return this.strokes[side] !== null;
  }

  /** Before the world moves. */
  before(): void {
    const { scene, host, parts } = this;
    for (const side of SIDES) {
      const hand = host.hands[side];
      const gathers = hand.using && (this.pocket.holds(side) || (hand.hold?.kind === 'thing' && hand.hold.thing === parts.roll));
      if (gathers) this.gatheredM = Math.min(toGatherM(scene.scenario), this.gatheredM + GATHER_MPS * STEP_SECONDS);
    }
    this.pocket.step(openDepthM(scene.scenario, this.gatheredM));
    this.drawByHand();
    for (const side of SIDES) scene.cover.folded[side] = this.pocket.holds(side) || this.end?.side === side || (scene.cover.folded[side] && this.isAtFold(side));
  }

  /** After the world has moved and hands have used what they hold. */
  after(): void {
    const { scene } = this;
    if (this.pocket.isOpen) {
      this.pocket.feel(scene.things[0]!.body);
      this.takeGel();
      this.inside = runGel(this.inside, this.downward(), STEP_SECONDS);
      this.pushGel();
      this.tear(this.pocket.pushN);
      const holder = holderOf(this.host.hands, 0);
      const [x, y] = workingEnd(scene, 0);
      const [ex, ey] = this.pocket.end();
      if (holder && this.pocket.contains(x, y) && length(x - ex, y - ey) < AT_END_M) this.putOnProbe();
    }
    this.usedBefore = [...this.host.used];
    this.workWithFingers();
    this.pullByCord();
    this.film.layOut(this.pocket, this.parts.pocket);
  }

  /** Draws the open end along the cord by `metres`; what it takes of the cord stays where it is held. Returns how far it went. */
  draw(metres: number): number {
    const { cover, scenario } = this.scene;
    const to = Math.min(coverableM(scenario), Math.max(0, cover.coveredM + metres));
    const went = to - cover.coveredM;
    cover.coveredM = to;
    this.inside = ventAir(this.inside, this.head, this.head.lengthM + to);
    return went;
  }

  /** The open end goes into the assistant's hand: it and the last of the film do not count as sterile from now on. */
  handOverEnd(): void {
    this.film.handOver();
  }

  /** A new sheath from the table, with the probe bare again. */
  startOver(): void {
    const { scene, parts, host } = this;
    for (const side of SIDES) {
      const hand = host.hands[side];
      if (hand.hold?.kind === 'rim' || hand.hold?.kind === 'film') hand.hold = null;
    }
    if (this.end) scene.world.releaseNode(this.end.grip.node);
    this.end = null;
    if (this.pocket.isOpen) this.pocket.close();
    Object.assign(scene.cover, { on: false, open: false, coveredM: 0 });
    this.inside = newInside();
    this.otherGelMl = this.dropMl = this.cordPullN = 0;
    this.faceToEndM = null;
    this.gatheredM = this.gatheredAtFirst();
    scene.world.setBodyEnabled(scene.things[parts.roll]!.body, true);
    host.gone[parts.roll] = host.carriedOff[parts.roll] = false;
    this.film.startOver();
  }

  /** What covers the probe, as it is shown. */
  get dress(): ProbeDress | null {
    if (!this.scene.cover.on) return null;
    const { bands, bubbles, torn } = this.inside;
    return { bands: bands.map(({ alongM }) => alongM), bubbles: bubbles.map((bubble) => ({ at: bubble.sM, lengthM: 2 * bubbleHalfM(bubble, this.inside, this.head) })), torn };
  }

  get gelMl(): number {
    return this.inside.gelMl + this.inside.lumps.reduce((sum, { ml }) => sum + ml, 0);
  }

  /** Film that is still folded at the open end (m). */
  get foldedM(): number {
    const { scenario, cover } = this.scene;
    if (cover.on) return coverableM(scenario) - cover.coveredM;
    return this.pocket.isOpen ? Math.max(0, scenario.sheath.lengthM - this.pocket.depthM) : 0;
  }

  observe(step: number, withAssistant: boolean, lyingOnField: boolean): SheathObservation {
    const { scene, inside, head } = this;
    const { scenario, cover } = scene;
    const holder = holderOf(this.host.hands, 0);
    const tight = inside.bands.filter((band) => tensionN(band, head) > 0).map((band) => bandPlace(band, head));
    return {
      step,
      sheath: this.state,
      gathered: Math.min(1, this.gatheredM / toGatherM(scenario)),
      gelMl: inside.gelMl - Math.min(inside.gelMl, this.otherGelMl),
      otherGelMl: this.otherGelMl,
      probe: {
        withAssistant,
        overMouth: withAssistant && this.pocket.isOpen && this.isOverMouth(...workingEnd(scene, 0)),
        inside: this.probeInside,
        heldThrough: holder && this.isThroughFilm(...this.tips(holder)) ? holder : null,
        lyingOnField: cover.on && lyingOnField,
      },
      coveredM: cover.coveredM,
      coverableM: coverableM(scenario),
      endHeld: this.end !== null || this.film.tailed,
      faceSpoiled: cover.on ? 1 - coupledShare(inside, head) : 1,
      bands: { head: tight.includes('head'), cord: tight.includes('handle') },
      torn: inside.torn,
    };
  }

  /** Gel and no air under the whole face. */
  get coupled(): boolean {
    return !this.inside.torn && coupledShare(this.inside, this.head) >= COUPLED;
  }

  hashInto(hash: StateHash): void {
    const { cover } = this.scene;
    hash.addNumber(cover.coveredM).addInt(cover.on ? 1 : 0).addInt(cover.open ? 1 : 0).addNumber(this.pocket.depthM).addNumber(this.gatheredM).addNumber(this.inside.gelMl).addInt(this.inside.bands.length);
    for (const { sM, ml } of this.inside.bubbles) hash.addNumber(sM).addNumber(ml);
  }

  save(): unknown {
    const { inside, otherGelMl, dropMl, gatheredM, cordPullN, faceToEndM } = this;
    const { on, coveredM, open, folded } = this.scene.cover;
    const saved: Saved = {
      inside, otherGelMl, dropMl, gatheredM, cordPullN, faceToEndM, pocket: this.pocket.save(), film: this.film.save(), end: this.end && { side: this.end.side, grip: { ...this.end.grip } },
      usedBefore: [...this.usedBefore], strokes: { ...this.strokes }, cover: { on, coveredM, open, folded: { ...folded } },
    };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    ({ inside: this.inside, otherGelMl: this.otherGelMl, dropMl: this.dropMl, gatheredM: this.gatheredM, cordPullN: this.cordPullN, faceToEndM: this.faceToEndM } = s);
    this.pocket.restore(s.pocket);
    this.film.restore(s.film);
    this.end = s.end && { side: s.end.side, grip: { ...s.end.grip } };
    this.usedBefore = [...s.usedBefore];
    this.strokes = { ...s.strokes };
    const { folded, ...rest } = s.cover;
    Object.assign(this.scene.cover, rest);
    Object.assign(this.scene.cover.folded, folded);
  }

  private gatheredAtFirst(): number {
    return this.scene.scenario.sheath.form === 'telescoped' ? toGatherM(this.scene.scenario) : 0;
  }

  /** Fingers that have let go are still under the fold until the hand has gone. */
  private isAtFold(side: Side): boolean {
    const { world, cord, cover, scenario } = this.scene;
    const [x, y] = this.tips(side);
    if (this.pocket.isOpen) return this.pocket.edgeGap(x, y) < OFF_FOLD_M;
    if (!cover.on) return false;
    const at = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    return length(at.x - x, at.y - y) < OFF_FOLD_M;
  }

  private tips(side: Side): readonly [number, number] {
    const { world, hands } = this.scene;
    const b = hands[side];
    return [world.bodyX[b]! + world.bodyC[b]! * HAND.gripU, world.bodyY[b]! + world.bodyS[b]! * HAND.gripU];
  }

  /** Place on the probe's axis nearest to (x, y), its distance from the face and how far off it is (m). */
  private onAxis(x: number, y: number): { readonly point: readonly [number, number]; readonly alongM: number; readonly gap: number } {
    const { world, things } = this.scene;
    const { body } = things[0]!;
    const half = THING_SHAPES.probe.halfLength;
    const c = world.bodyC[body]!;
    const s = world.bodyS[body]!;
    const u = Math.min(half, Math.max(-half, (x - world.bodyX[body]!) * c + (y - world.bodyY[body]!) * s));
    const point = [world.bodyX[body]! + c * u, world.bodyY[body]! + s * u] as const;
    return { point, alongM: half - u, gap: length(point[0] - x, point[1] - y) };
  }

  /** Place on the dressed probe or the first of its cord nearest to fingers, as distance from the face (m), or null when none is near. */
  private besideFilm(side: Side): number | null {
    const { world, cord, cover, scenario } = this.scene;
    const [x, y] = this.tips(side);
    const onProbe = this.onAxis(x, y);
    const onCord = nearestAlong(world, cord, scenario.cord.linkM, x, y);
    const near = Math.min(cover.coveredM, ALONG_CORD_M);
    if (onCord.gap < onProbe.gap && onCord.gap < BESIDE_M && onCord.s <= near) return this.head.lengthM + onCord.s;
    return onProbe.gap - THING_SHAPES.probe.halfHeight < BESIDE_M ? onProbe.alongM : null;
  }

  private isOverMouth(x: number, y: number): boolean {
    const [mx, my] = this.pocket.mouth();
    return Math.abs(x - mx) < OVER_MOUTH_M && y > my - OVER_MOUTH_M && y < my + ABOVE_MOUTH_M;
  }

  /** Cosine between the way from mouth to closed end and straight down. */
  private downward(): number {
    const [mx, my] = this.pocket.mouth();
    const [ex, ey] = this.pocket.end();
    return (my - ey) / Math.max(length(mx - ex, my - ey), 1e-6);
  }

  /** What nozzles over the mouth let go falls into it in one lump when it stops, or when it is heavy. */
  private takeGel(): void {
    const { scene, host } = this;
    let flows = false;
    scene.things.forEach(({ kind }, k) => {
      if (kind !== 'gelPacket' && kind !== 'gelBottle') return;
      const ml = (host.used[k]! - this.usedBefore[k]!) * GEL_ML[kind];
      if (ml <= 0 || !this.isOverMouth(...workingEnd(scene, k))) return;
      if (kind === 'gelBottle') {
        if (this.otherGelMl === 0) host.say({ kind: 'gelled', gel: this.surfaces.upper[this.surfaces.slots.thing[k]!.solid]!, surface: this.surfaces.film!.probe, ...this.placeOfEnd() });
        this.otherGelMl += ml;
      }
      this.dropMl += ml;
      flows = true;
    });
    if (this.dropMl === 0 || (flows && this.dropMl < LUMP_ML)) return;
    this.inside = squeezeGelIn(this.inside, this.dropMl, this.pocket.depthM);
    this.dropMl = 0;
  }

  /** The face takes the gel in its way along to the closed end. */
  private pushGel(): void {
    const [x, y] = workingEnd(this.scene, 0);
    const before = this.faceToEndM;
    const [ex, ey] = this.pocket.end();
    this.faceToEndM = this.pocket.contains(x, y) ? length(x - ex, y - ey) : null;
    if (before !== null && this.faceToEndM !== null && this.faceToEndM < before) this.inside = strokeGel(this.inside, before, this.faceToEndM);
  }

  private placeOfEnd(): { readonly x: number; readonly y: number } {
    const [x, y] = this.pocket.end();
    return { x, y };
  }

  private tear(pushN: number): void {
    const torn = loadFace(this.inside, pushN, this.scene.scenario.sheath.tearN);
    if (torn.torn && !this.inside.torn) {
      const [x, y] = workingEnd(this.scene, 0);
      this.host.say({ kind: 'torn', surface: this.surfaces.film!.probe, x, y });
    }
    this.inside = torn;
  }

  /** The face is at the closed end and a hand holds it there: from now on the film is on the probe, with the air that it took along. */
  private putOnProbe(): void {
    const { scene, host, head } = this;
    const { world, things, cover } = scene;
    const { body } = things[0]!;
    const [mx, my] = this.pocket.mouth();
    const [ex, ey] = this.pocket.end();
    const l = Math.max(length(ex - mx, ey - my), 1e-6);
    const [dx, dy] = [(ex - mx) / l, (ey - my) / l];
    const [c, s] = [world.bodyC[body]!, world.bodyS[body]!];
    const tilt = acos(Math.min(1, Math.max(-1, c * dx + s * dy))) * (c * dy - s * dx >= 0 ? 1 : -1);
    this.inside = takeAirIn(this.inside, head, tilt);
    const coveredM = this.mouthAlongCord();
    const holders = SIDES.filter((side) => this.pocket.holds(side));
    this.pocket.close();
    Object.assign(cover, { on: true, open: false, coveredM });
    this.film.lieOnProbe();
    holders.forEach((side, k) => {
      const hand = host.hands[side];
      if (k === 0) {
        hand.hold = { kind: 'film', pullN: 0 };
        this.takeEnd(side);
      } else hand.hold = null;
    });
  }

  /** How far along the cord the mouth is (m). */
  private mouthAlongCord(): number {
    const { world, cord, scenario } = this.scene;
    const start = world.strandStart(cord);
    let k = 0;
    while (k < world.strandSize(cord) - 1 && this.pocket.contains(world.x[start + k]!, world.y[start + k]!)) k++;
    return Math.min(coverableM(scenario), Math.max(0, k - 0.5) * scenario.cord.linkM);
  }

  /** Nobody holds the opened sheath any more: it falls as it is. */
  private fall(): void {
    const { scene, parts, host } = this;
    const [x, y] = this.pocket.mouth();
    this.pocket.close();
    scene.cover.open = false;
    const { body } = scene.things[parts.roll]!;
    host.gone[parts.roll] = host.carriedOff[parts.roll] = false;
    scene.world.setBodyEnabled(body, true);
    scene.world.teleportBody(body, x, y, 1, 0);
    host.moved(this.surfaces.slots.thing[parts.roll]!.solid);
  }

  /** A hand at the open end draws it when it pulls along the cord harder than the film sticks to it. */
  private drawByHand(): void {
    if (!this.end) return;
    const { scene } = this;
    const { world, cord, cover, scenario, hands } = scene;
    const { side, grip } = this.end;
    const hand = this.host.hands[side];
    const body = hands[side];
    const dx = hand.targetX - world.bodyX[body]!;
    const dy = hand.targetY - world.bodyY[body]!;
    const far = Math.max(length(dx, dy), 1e-9);
    const { ux, uy } = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    const along = (hand.driveN * (dx * ux + dy * uy)) / far;
    const beyond = Math.abs(along) - this.film.stickN();
    if (beyond > 0) this.draw(Math.min(FASTEST_MPS, beyond / DRAG_NS) * STEP_SECONDS * (along > 0 ? 1 : -1));
    if (!slideTo(world, cord, scenario.cord.linkM, body, TIPS, grip, cover.coveredM)) this.end = null;
  }

  /** Fingers beside the dressed probe stroke its film, and put a band on that they hold. */
  private workWithFingers(): void {
    for (const side of SIDES) {
      const hand = this.host.hands[side];
      const before = this.strokes[side];
      this.strokes[side] = null;
      if (!hand.using) continue;
      if (this.scene.cover.on) {
        const alongM = this.besideFilm(side);
        if (alongM === null) continue;
        if (hand.hold?.kind === 'thing') this.putOn(hand, hand.hold.thing, alongM);
        else if (!hand.hold) {
          this.strokes[side] = alongM;
          if (before !== null && before !== alongM) this.inside = squeeze(this.inside, this.head, before, alongM, STROKE_N);
        }
      } else if (this.pocket.isOpen && !hand.hold) this.strokePocket(side, before);
    }
  }

  /** Fingers along the hanging film take gel with them to its closed end. */
  private strokePocket(side: Side, before: number | null): void {
    const [x, y] = this.tips(side);
    const [ex, ey] = this.pocket.end();
    if (!this.pocket.contains(x, y)) return;
    const now = length(x - ex, y - ey);
    this.strokes[side] = now;
    if (before !== null && before !== now) this.inside = strokeGel(this.inside, before, now);
  }

  private putOn(hand: HandState, thing: number, alongM: number): void {
    const { scene, host } = this;
    if (scene.things[thing]!.kind !== 'band') return;
    const banded = putBand(this.inside, this.head, { alongM, turns: turnsFor(alongM, this.head) });
    if (!banded) return;
    this.inside = banded;
    scene.world.setBodyEnabled(scene.things[thing]!.body, false);
    host.gone[thing] = host.carriedOff[thing] = true;
    hand.hold = null;
    hand.closed = false;
    hand.using = false;
  }

  /** A hand that holds the probe holds it by its film: what the cord pulls beyond what fingers, bands and gel hold draws the probe out of it. */
  private pullByCord(): void {
    const { scene } = this;
    if (!scene.cover.on || !holderOf(this.host.hands, 0)) return;
    this.cordPullN += (scene.world.endTensions(scene.cord).first - this.cordPullN) * PULL_BLEND;
    this.inside = pullFilm(this.inside, this.head, { alongM: this.head.lengthM / 2, pullN: this.cordPullN, toward: 'face', gripN: scene.scenario.operator.gripForceN }, STEP_SECONDS);
  }
}

