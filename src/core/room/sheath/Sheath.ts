import type { StateHash } from '../../base/hash.ts';
import { length } from '../../base/portableMath.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import type { SheathObservation, SheathState } from '../../procedure/observation.ts';
import { fingertips } from '../fingertips.ts';
import { HAND } from '../handShape.ts';
import type { ProbeDress } from '../picture.ts';
import type { Scene, SheathParts } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import { holderOf, workingEnd } from '../work.ts';
import { pointAt } from './alongCord.ts';
import { Contents } from './Contents.ts';
import { glideTo, takeCord, type CordGrip } from './cordGrip.ts';
import { FilmOnCord } from './FilmOnCord.ts';
import { Fingers } from './Fingers.ts';
import type { SheathHost } from './host.ts';
import { coverableM, openDepthM, toGatherM } from './loading.ts';
import { Pocket } from './Pocket.ts';
import { onProbeAxis } from './probeAxis.ts';

/** Where the fingertips of a hand are in its frame. */
const TIPS = [HAND.gripU, 0] as const;
/** How fast a hand gathers a loose sheath (m/s), common practice. */
const GATHER_MPS = 0.3;
/** How near the face must be to the closed end for the film to lie on it (m). */
const AT_END_M = 0.03;
/** A hand that lets go of the fold is off it at this distance (m). */
const OFF_FOLD_M = 0.1;
/** Friction of a drawn film when it is pulled faster than it slides (N s/m): it keeps a hand from flinging it. */
const DRAG_NS = 30;
const FASTEST_MPS = 0.4;
/** Share by which a new pull enters the one that counts: about 0.1 s, since flesh and glove take up shorter jerks. */
const PULL_BLEND = 0.08;

/** A hand that holds the open end of the film on the cord. */
interface EndHold {
  readonly side: Side;
  readonly grip: CordGrip;
  /** Pull along the cord, averaged (N). */
  alongN: number;
}

/** What can be seen of the assistant beside the sheath. */
interface Helper {
  readonly hasProbe: boolean;
  readonly holdsCord: boolean;
  readonly stoppedAt: 'bringing' | 'lowering' | null;
}

interface Saved {
  readonly pocket: unknown;
  readonly film: unknown;
  readonly contents: unknown;
  readonly fingers: unknown;
  readonly gatheredM: number;
  readonly end: EndHold | null;
  readonly cover: { readonly on: boolean; readonly coveredM: number; readonly open: boolean; readonly folded: Readonly<Record<Side, boolean>> };
}

/** The sheath from the table on to probe and cord: what hands do with it, and what becomes of gel, air and bands. It judges nothing. */
export class Sheath {
  readonly pocket: Pocket;
  readonly film: FilmOnCord;
  private readonly contents: Contents;
  private readonly fingers: Fingers;
  private gatheredM: number;
  private end: EndHold | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly parts: SheathParts,
    private readonly surfaces: Surfaces,
    private readonly host: SheathHost,
  ) {
    this.pocket = new Pocket(scene, parts.pocket);
    this.film = new FilmOnCord(scene, surfaces, host);
    this.contents = new Contents(scene, surfaces, this.pocket, host);
    this.fingers = new Fingers(scene, this.pocket, this.contents, host);
    this.gatheredM = this.gatheredAtFirst();
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

  /** A hand of the operator holds the probe. */
  get probeHeld(): boolean {
    return holderOf(this.host.hands, 0) !== null;
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
    this.end = { side, alongN: 0, grip: takeCord(world, cord, scenario.cord.linkM, hands[side], TIPS, cover.coveredM) };
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
    const [ax, ay] = onProbeAxis(this.scene, x, y).point;
    return this.pocket.contains(ax, ay);
  }

  /** A hand strokes the film on the probe. */
  strokesProbe(side: Side): boolean {
    return this.fingers.strokesProbe(side);
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
      this.contents.stepOpen();
      const holder = holderOf(this.host.hands, 0);
      const [x, y] = workingEnd(scene, 0);
      const [ex, ey] = this.pocket.end();
      if (holder && this.pocket.contains(x, y) && length(x - ex, y - ey) < AT_END_M) this.putOnProbe();
    }
    this.contents.remember();
    this.fingers.step();
    this.contents.pullByCord();
    this.film.layOut(this.pocket, this.parts.pocket);
  }

  /** Draws the open end along the cord by `metres`; what it takes of the cord stays where it is held. Returns how far it went. */
  draw(metres: number): number {
    const { cover, scenario } = this.scene;
    const to = Math.min(coverableM(scenario), Math.max(0, cover.coveredM + metres));
    const went = to - cover.coveredM;
    cover.coveredM = to;
    this.contents.vent(this.contents.head.lengthM + to);
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
    this.contents.startOver();
    this.gatheredM = this.gatheredAtFirst();
    scene.world.setBodyEnabled(scene.things[parts.roll]!.body, true);
    host.gone[parts.roll] = host.carriedOff[parts.roll] = false;
    this.film.startOver();
  }

  /** What covers the probe, as it is shown. */
  get dress(): ProbeDress | null {
    return this.scene.cover.on ? this.contents.dress : null;
  }

  get gelMl(): number {
    return this.contents.gelMl;
  }

  /** Film that is still folded at the open end (m). */
  get foldedM(): number {
    const { scenario, cover } = this.scene;
    if (cover.on) return coverableM(scenario) - cover.coveredM;
    return this.pocket.isOpen ? Math.max(0, scenario.sheath.lengthM - this.pocket.depthM) : 0;
  }

  observe(step: number, { hasProbe, stoppedAt, holdsCord }: Helper, lyingOnField: boolean): SheathObservation {
    const { scene, contents } = this;
    const { scenario, cover } = scene;
    const holder = holderOf(this.host.hands, 0);
    const sterile = (ml: number): number => Math.max(0, ml - contents.otherGelMl);
    return {
      step,
      sheath: this.state,
      gathered: Math.min(1, this.gatheredM / toGatherM(scenario)),
      gelMl: sterile(contents.gelAtEndMl),
      gelComingMl: this.pocket.isOpen ? sterile(contents.gelAtEndMl + contents.gelComingMl) - sterile(contents.gelAtEndMl) : 0,
      otherGelMl: contents.otherGelMl,
      probe: {
        withAssistant: hasProbe,
        stopped: stoppedAt,
        overMouth: hasProbe && this.pocket.isOpen && contents.isOverMouth(...workingEnd(scene, 0)),
        inside: this.probeInside,
        heldThrough: holder && this.isThroughFilm(...fingertips(scene, holder)) ? holder : null,
        lyingOnField: cover.on && lyingOnField,
      },
      coveredM: cover.coveredM,
      coverableM: coverableM(scenario),
      endHeld: this.end !== null || this.film.tailed,
      faceSpoiled: cover.on ? contents.faceSpoiled : 1,
      bands: contents.bands,
      torn: contents.torn,
      cordHeld: holdsCord,
    };
  }

  /** Gel and no air under the whole face. */
  get coupled(): boolean {
    return this.contents.coupled;
  }

  hashInto(hash: StateHash): void {
    const { cover } = this.scene;
    hash.addNumber(cover.coveredM).addInt(cover.on ? 1 : 0).addInt(cover.open ? 1 : 0).addNumber(this.pocket.depthM).addNumber(this.gatheredM);
    this.contents.hashInto(hash);
  }

  save(): unknown {
    const { on, coveredM, open, folded } = this.scene.cover;
    const saved: Saved = {
      pocket: this.pocket.save(), film: this.film.save(), contents: this.contents.save(), fingers: this.fingers.save(), gatheredM: this.gatheredM,
      end: this.end && { ...this.end, grip: { ...this.end.grip } }, cover: { on, coveredM, open, folded: { ...folded } },
    };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    this.pocket.restore(s.pocket);
    this.film.restore(s.film);
    this.contents.restore(s.contents);
    this.fingers.restore(s.fingers);
    this.gatheredM = s.gatheredM;
    this.end = s.end && { ...s.end, grip: { ...s.end.grip } };
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
    const [x, y] = fingertips(this.scene, side);
    if (this.pocket.isOpen) return this.pocket.edgeGap(x, y) < OFF_FOLD_M;
    if (!cover.on) return false;
    const at = pointAt(world, cord, scenario.cord.linkM, cover.coveredM);
    return length(at.x - x, at.y - y) < OFF_FOLD_M;
  }

  /** The face is at the closed end and a hand holds it there: from now on the film is on the probe, with the air that it took along. */
  private putOnProbe(): void {
    const { scene, host } = this;
    this.contents.seat();
    const coveredM = this.mouthAlongCord();
    const holders = SIDES.filter((side) => this.pocket.holds(side));
    this.pocket.close();
    Object.assign(scene.cover, { on: true, open: false, coveredM });
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
    this.end.alongN += ((hand.driveN * (dx * ux + dy * uy)) / far - this.end.alongN) * PULL_BLEND;
    const beyond = Math.abs(this.end.alongN) - this.film.stickN();
    if (beyond > 0) this.draw(Math.min(FASTEST_MPS, beyond / DRAG_NS) * STEP_SECONDS * (this.end.alongN > 0 ? 1 : -1));
    if (!glideTo(world, cord, scenario.cord.linkM, body, TIPS, grip, cover.coveredM)) this.end = null;
  }
}
