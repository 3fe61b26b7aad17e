import { length } from '../base/portableMath.ts';
import { SIDES, type Side } from '../base/side.ts';
import { STEP_SECONDS } from '../base/time.ts';
import type { FieldObservation } from '../procedure/observation.ts';
import type { HandState } from './handState.ts';
import { THING_SHAPES } from './itemShapes.ts';
import { isOverBed, skinHeight } from './layout.ts';
import type { Scene } from './scene.ts';
import type { Sheath } from './sheath/Sheath.ts';

/** How near to the site the mouth of a gel packet must be, and how long it takes to empty it (m, s). */
const GEL_REACH_M = 0.06;
const GEL_S = 1;
/** How long it takes to empty a bottle (s). */
const BOTTLE_S = 12;
/** How near a needle's tip must be to inject, and how long the injection takes (m, s). */
const INJECT_REACH_M = 0.015;
const INJECT_S = 3;
const AT_SITE_M = 0.03;
const SKIN_GAP_M = 0.012;
/** Cosine of the greatest tilt at which the probe's face lies on the skin (30 degrees). */
const UPRIGHT = 0.866;
const AT_REST_MPS = 0.003;
/** Share by which a new velocity enters the measured one: movements shorter than about 0.1 s (a pulse, a tremor) average out. */
const VELOCITY_BLEND = 0.08;

export interface SitePoint {
  readonly x: number;
  readonly y: number;
  /** Outward normal of the skin. */
  readonly nx: number;
  readonly ny: number;
}

/** Middle of the puncture site now. */
export function sitePoint(scene: Scene, humpX: number, humpY: number): SitePoint {
  const x = scene.scenario.room.patient.siteXM;
  const slope = (skinHeight(scene.layout, x + 0.01) - skinHeight(scene.layout, x - 0.01)) / 0.02;
  const l = length(1, slope);
  return { x: x + humpX, y: humpY + skinHeight(scene.layout, x), nx: -slope / l, ny: 1 / l };
}

/** Working end of a thing: face of the probe, mouth of the packet, tip of the needle. */
export function workingEnd(scene: Scene, k: number): readonly [number, number] {
  const { world, things } = scene;
  const { body, kind } = things[k]!;
  const reach = THING_SHAPES[kind].halfLength + THING_SHAPES[kind].needleLength;
  return [world.bodyX[body]! + world.bodyC[body]! * reach, world.bodyY[body]! + world.bodyS[body]! * reach];
}

/** Gel and anaesthetic spent so far, and who has been used at the site. Plain data in `save`. */
export class Work {
  gelOnSite = 0;
  anaesthetic = 0;
  /** Share of each thing's content that is spent. */
  readonly used: number[];
  private atSite: boolean[];
  private lastX: number[];
  private lastY: number[];
  private lastBedUpM = 0;
  private velocityX: number[];
  private velocityY: number[];

  constructor(private readonly scene: Scene) {
    this.used = scene.things.map(() => 0);
    this.atSite = scene.things.map(() => false);
    this.velocityX = scene.things.map(() => 0);
    this.velocityY = scene.things.map(() => 0);
    this.lastX = scene.things.map(({ body }) => scene.world.bodyX[body]!);
    this.lastY = scene.things.map(({ body }) => scene.world.bodyY[body]!);
  }

  /** Lets held things do their work for one step. Returns the things whose use at the site begins. */
  step(hands: Readonly<Record<Side, HandState>>, site: SitePoint, gone: readonly boolean[]): number[] {
    const begun: number[] = [];
    this.scene.things.forEach(({ kind }, k) => {
      const holder = holderOf(hands, k);
      const [x, y] = workingEnd(this.scene, k);
      const d = length(x - site.x, y - site.y);
      const squeezed = holder !== null && hands[holder].using;
      let now = false;
      if (kind === 'gelPacket' || kind === 'gelBottle') {
        const seconds = kind === 'gelPacket' ? GEL_S : BOTTLE_S;
        now = squeezed && d < GEL_REACH_M && this.used[k]! < 1;
        if (squeezed && this.used[k]! < 1) {
          this.used[k] = Math.min(1, this.used[k]! + STEP_SECONDS / seconds);
          if (d < GEL_REACH_M) this.gelOnSite = Math.min(1, this.gelOnSite + STEP_SECONDS / GEL_S);
        }
      } else if (kind === 'syringe') {
        now = squeezed && d < INJECT_REACH_M && this.used[k]! < 1;
        if (now) {
          this.used[k] = Math.min(1, this.used[k]! + STEP_SECONDS / INJECT_S);
          this.anaesthetic = Math.min(1, this.anaesthetic + STEP_SECONDS / INJECT_S);
        }
      } else if (kind === 'needleSyringe') now = holder !== null && d < INJECT_REACH_M;
      else if (kind === 'probe') now = holder !== null && this.probeAtSite(k, site);
      now = now && !gone[k];
      if (now && !this.atSite[k]) begun.push(k);
      this.atSite[k] = now;
    });
    return begun;
  }

  /** What can be seen of the work now; call once per step, after the world has moved. */
  observe(step: number, hands: Readonly<Record<Side, HandState>>, site: SitePoint, gone: readonly boolean[], offField: readonly boolean[], carriedOff: readonly boolean[], sheath: Sheath | null): FieldObservation {
    const { things } = this.scene;
    const speeds = things.map(({ body }, k) => this.speedOf(body, k));
    this.lastBedUpM = this.scene.layout.bedUpM;
    const needle = things.findIndex(({ kind }) => kind === 'needleSyringe');
    const tip = needle < 0 ? null : workingEnd(this.scene, needle);
    const probeHolder = holderOf(hands, 0);
    const names = (test: (k: number) => boolean): string[] => things.filter((_, k) => test(k)).map(({ id }) => id);
    return {
      step,
      gelOnSite: this.gelOnSite,
      probe: {
        heldBy: probeHolder,
        atSite: this.probeAtSite(0, site),
        speed: speeds[0]!,
        coupled: sheath?.coupled ?? true,
        lyingOnField: this.scene.cover.on && probeHolder === null && !offField[0] && speeds[0]! < AT_REST_MPS,
      },
      needle: { heldBy: needle < 0 ? null : holderOf(hands, needle), tipToSite: tip ? length(tip[0] - site.x, tip[1] - site.y) : Infinity, speed: needle < 0 ? 0 : speeds[needle]! },
      anaesthetic: this.anaesthetic,
      rubbishLeft: names((k) => things[k]!.rubbish && !gone[k]),
      binned: names((k) => gone[k]! && !carriedOff[k]),
      sharpsBinned: names((k) => gone[k]! && !carriedOff[k] && THING_SHAPES[things[k]!.kind].sharp),
      dropped: names((k) => offField[k]! && !gone[k]),
    };
  }

  probeAtSite(k: number, site: SitePoint): boolean {
    const { world, things } = this.scene;
    const { body } = things[k]!;
    const [x, y] = workingEnd(this.scene, k);
    const dx = x - site.x;
    const dy = y - site.y;
    const gap = dx * site.nx + dy * site.ny;
    const down = -(world.bodyC[body]! * site.nx + world.bodyS[body]! * site.ny);
    return length(dx, dy) < AT_SITE_M && gap < SKIN_GAP_M && down > UPRIGHT;
  }

  save(): unknown {
    return { gelOnSite: this.gelOnSite, anaesthetic: this.anaesthetic, used: [...this.used], atSite: [...this.atSite], lastX: [...this.lastX], lastY: [...this.lastY], lastBedUpM: this.lastBedUpM, velocityX: [...this.velocityX], velocityY: [...this.velocityY] };
  }

  restore(saved: unknown): void {
    const s = saved as { gelOnSite: number; anaesthetic: number; used: number[]; atSite: boolean[]; lastX: number[]; lastY: number[]; lastBedUpM: number; velocityX: number[]; velocityY: number[] };
    this.gelOnSite = s.gelOnSite;
    this.anaesthetic = s.anaesthetic;
    s.used.forEach((value, k) => (this.used[k] = value));
    this.atSite = [...s.atSite];
    this.lastX = [...s.lastX];
    this.lastY = [...s.lastY];
    this.lastBedUpM = s.lastBedUpM;
    this.velocityX = [...s.velocityX];
    this.velocityY = [...s.velocityY];
  }

  /** Speed of a body in m/s: over the bed against the bed, which may be moving. */
  private speedOf(body: number, k: number): number {
    const { world: { bodyX, bodyY }, layout } = this.scene;
    const carried = isOverBed(layout, bodyX[body]!) ? layout.bedUpM - this.lastBedUpM : 0;
    const vx = (bodyX[body]! - this.lastX[k]!) / STEP_SECONDS;
    const vy = (bodyY[body]! - this.lastY[k]! - carried) / STEP_SECONDS;
    this.lastX[k] = bodyX[body]!;
    this.lastY[k] = bodyY[body]!;
    this.velocityX[k] = this.velocityX[k]! + (vx - this.velocityX[k]!) * VELOCITY_BLEND;
    this.velocityY[k] = this.velocityY[k]! + (vy - this.velocityY[k]!) * VELOCITY_BLEND;
    return length(this.velocityX[k]!, this.velocityY[k]!);
  }
}

/** Hand that holds thing k, or null. */
export function holderOf(hands: Readonly<Record<Side, HandState>>, k: number): Side | null {
  for (const side of SIDES) {
    const { hold } = hands[side];
    if (hold?.kind === 'thing' && hold.thing === k) return side;
  }
  return null;
}
