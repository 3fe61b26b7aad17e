import type { StateHash } from '../../base/hash.ts';
import { acos, length } from '../../base/portableMath.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import type { ProbeDress } from '../picture.ts';
import type { Scene } from '../scene.ts';
import type { Surfaces } from '../surfaces.ts';
import { holderOf, workingEnd } from '../work.ts';
import { takeAirIn } from './airIntake.ts';
import { coupledShare, squeeze, ventAir } from './air.ts';
import { bandPlace, tensionN, turnsFor } from './bands.ts';
import { putBand } from './banding.ts';
import { bubbleHalfM } from './bubble.ts';
import { pullFilm } from './filmSlide.ts';
import { runGel, runningMl, squeezeGelIn, strokeGel } from './gelFlow.ts';
import type { HeadShape } from './headShape.ts';
import type { SheathHost } from './host.ts';
import { newInside, type SheathInside } from './inside.ts';
import { probeHead } from './loading.ts';
import type { Pocket } from './Pocket.ts';
import { loadFace } from './tear.ts';

/** What a packet and a bottle of gel hold (mL), common practice; and what falls off by its weight. */
const GEL_ML = { gelPacket: 20, gelBottle: 250 } as const;
const LUMP_ML = 10;
/** How near to the middle of the mouth a nozzle or face must be, across and in height (m). */
const OVER_MOUTH_M = 0.06;
const ABOVE_MOUTH_M = 0.16;
/** Force of fingers that stroke the film (N), common practice. */
const STROKE_N = 8;
/** Share by which a new pull of the cord enters the one that counts: about 0.1 s. */
const PULL_BLEND = 0.08;
/** Part of the face with a picture that counts as all of it. */
const COUPLED = 0.95;

interface Saved {
  readonly inside: SheathInside;
  readonly otherGelMl: number;
  readonly dropMl: number;
  readonly usedBefore: readonly number[];
  readonly cordPullN: number;
  readonly faceToEndM: number | null;
}

/** What is in the sheath and holds it on the probe: gel, air, bands, and whether it is whole. */
export class Contents {
  readonly head: HeadShape;
  private inside: SheathInside = newInside();
  /** Gel that did not come out of a sterile packet (mL). */
  otherGelMl = 0;
  /** Gel that hangs at the nozzle. */
  private dropMl = 0;
  private usedBefore: number[];
  private cordPullN = 0;
  /** From the face in the opened sheath to its closed end (m), or null. */
  private faceToEndM: number | null = null;

  constructor(
    private readonly scene: Scene,
    private readonly surfaces: Surfaces,
    private readonly pocket: Pocket,
    private readonly host: SheathHost,
  ) {
    this.head = probeHead(scene.scenario);
    this.usedBefore = scene.things.map(() => 0);
  }

  /** One step while the sheath hangs open: gel goes in and runs down, and the face pushes. */
  stepOpen(): void {
    this.takeGel();
    this.inside = runGel(this.inside, this.downward(), STEP_SECONDS);
    this.pushGel();
    this.tear(this.pocket.pushN);
  }

  /** Ends a step: from what nozzles have let go by now the next is told apart. */
  remember(): void {
    this.usedBefore = [...this.host.used];
  }

  /** The film lies on the face from now on, with the air that it took along. */
  seat(): void {
    const { world, things } = this.scene;
    const { body } = things[0]!;
    const [mx, my] = this.pocket.mouth();
    const [ex, ey] = this.pocket.end();
    const l = Math.max(length(ex - mx, ey - my), 1e-6);
    const [dx, dy] = [(ex - mx) / l, (ey - my) / l];
    const [c, s] = [world.bodyC[body]!, world.bodyS[body]!];
    // The edge of the face on the side of its second axis is the raised one where that axis leads out of the sheath.
    const tilt = acos(Math.min(1, Math.max(-1, c * dx + s * dy))) * (c * dy - s * dx > 0 ? -1 : 1);
    this.inside = takeAirIn(this.inside, this.head, tilt);
  }

  /** Fingers stroke along the probe, as distances from its face (m). */
  stroke(fromM: number, toM: number): void {
    this.inside = squeeze(this.inside, this.head, fromM, toM, STROKE_N);
  }

  /** Fingers stroke along the hanging sheath, as distances from its closed end (m). */
  strokeDown(fromM: number, toM: number): void {
    this.inside = strokeGel(this.inside, fromM, toM);
  }

  /** A band is put round the film. False where it does not stay. */
  band(alongM: number): boolean {
    const banded = putBand(this.inside, this.head, { alongM, turns: turnsFor(alongM, this.head) });
    if (banded) this.inside = banded;
    return banded !== null;
  }

  /** Air that has come to the open end, `openM` from the face, is out. */
  vent(openM: number): void {
    this.inside = ventAir(this.inside, this.head, openM);
  }

  /** A hand that holds the probe holds it by its film: what the cord pulls beyond what fingers, bands and gel hold draws the probe out of it. */
  pullByCord(): void {
    const { world, cord, cover, scenario } = this.scene;
    if (!cover.on || !holderOf(this.host.hands, 0)) return;
    this.cordPullN += (world.endTensions(cord).first - this.cordPullN) * PULL_BLEND;
    this.inside = pullFilm(this.inside, this.head, { alongM: this.head.lengthM / 2, pullN: this.cordPullN, toward: 'face', gripN: scenario.operator.gripForceN }, STEP_SECONDS);
  }

  startOver(): void {
    this.inside = newInside();
    this.otherGelMl = this.dropMl = this.cordPullN = 0;
    this.faceToEndM = null;
  }

  isOverMouth(x: number, y: number): boolean {
    const [mx, my] = this.pocket.mouth();
    return Math.abs(x - mx) < OVER_MOUTH_M && y > my - OVER_MOUTH_M && y < my + ABOVE_MOUTH_M;
  }

  /** What covers the probe, as it is shown. */
  get dress(): ProbeDress {
    const { bands, bubbles, torn } = this.inside;
    return { bands: bands.map(({ alongM }) => alongM), bubbles: bubbles.map((bubble) => ({ at: bubble.sM, lengthM: 2 * bubbleHalfM(bubble, this.inside, this.head) })), torn };
  }

  /** All gel in it (mL), and what of that lies in the closed end. */
  get gelMl(): number {
    return this.inside.gelMl + this.inside.lumps.reduce((sum, { ml }) => sum + ml, 0);
  }

  get gelAtEndMl(): number {
    return this.inside.gelMl;
  }

  /** What is on its way there: running down, or hanging at the nozzle (mL). */
  get gelComingMl(): number {
    return this.dropMl + runningMl(this.inside, this.downward());
  }

  get torn(): boolean {
    return this.inside.torn;
  }

  /** Part of the face that has no picture, 0 to 1. */
  get faceSpoiled(): number {
    return 1 - coupledShare(this.inside, this.head);
  }

  /** Gel and no air under the whole face, and the film is whole. */
  get coupled(): boolean {
    return !this.inside.torn && 1 - this.faceSpoiled >= COUPLED;
  }

  /** Bands that hold where they belong. */
  get bands(): { readonly head: boolean; readonly cord: boolean } {
    const tight = this.inside.bands.filter((band) => tensionN(band, this.head) > 0).map((band) => bandPlace(band, this.head));
    return { head: tight.includes('head'), cord: tight.includes('handle') };
  }

  hashInto(hash: StateHash): void {
    hash.addNumber(this.inside.gelMl).addInt(this.inside.bands.length).addInt(this.inside.torn ? 1 : 0);
    for (const { sM, ml } of this.inside.bubbles) hash.addNumber(sM).addNumber(ml);
  }

  save(): unknown {
    const { inside, otherGelMl, dropMl, cordPullN, faceToEndM } = this;
    const saved: Saved = { inside, otherGelMl, dropMl, cordPullN, faceToEndM, usedBefore: [...this.usedBefore] };
    return saved;
  }

  restore(saved: unknown): void {
    const s = saved as Saved;
    ({ inside: this.inside, otherGelMl: this.otherGelMl, dropMl: this.dropMl, cordPullN: this.cordPullN, faceToEndM: this.faceToEndM } = s);
    this.usedBefore = [...s.usedBefore];
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
      if (kind === 'gelBottle') this.takeOtherGel(k, ml);
      this.dropMl += ml;
      flows = true;
    });
    if (this.dropMl === 0 || (flows && this.dropMl < LUMP_ML)) return;
    this.inside = squeezeGelIn(this.inside, this.dropMl, this.pocket.depthM);
    this.dropMl = 0;
  }

  private takeOtherGel(k: number, ml: number): void {
    const { surfaces, host } = this;
    const [x, y] = this.pocket.end();
    if (this.otherGelMl === 0) host.say({ kind: 'gelled', gel: surfaces.upper[surfaces.slots.thing[k]!.solid]!, surface: surfaces.film!.probe, x, y });
    this.otherGelMl += ml;
  }

  /** The face takes the gel in its way along to the closed end. */
  private pushGel(): void {
    const [x, y] = workingEnd(this.scene, 0);
    const before = this.faceToEndM;
    const [ex, ey] = this.pocket.end();
    this.faceToEndM = this.pocket.contains(x, y) ? length(x - ex, y - ey) : null;
    if (before !== null && this.faceToEndM !== null && this.faceToEndM < before) this.strokeDown(before, this.faceToEndM);
  }

  private tear(pushN: number): void {
    const torn = loadFace(this.inside, pushN, this.scene.scenario.sheath.tearN);
    if (torn.torn && !this.inside.torn) {
      const [x, y] = workingEnd(this.scene, 0);
      this.host.say({ kind: 'torn', surface: this.surfaces.film!.probe, x, y });
    }
    this.inside = torn;
  }
}
