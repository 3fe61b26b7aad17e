import { length } from '../../base/portableMath.ts';
import { SIDES, type Side } from '../../base/side.ts';
import { fingertips } from '../fingertips.ts';
import type { HandState } from '../handState.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Scene } from '../scene.ts';
import { nearestAlong } from './alongCord.ts';
import type { Contents } from './Contents.ts';
import type { SheathHost } from './host.ts';
import type { Pocket } from './Pocket.ts';
import { onProbeAxis } from './probeAxis.ts';

/** How near to the probe or the first of the cord fingers stroke the film or put a band on (m), and how far along the cord. */
const BESIDE_M = 0.035;
const ALONG_CORD_M = 0.12;

/** Fingers that work on the film: stroke gel and air along, put bands on. */
export class Fingers {
  /** Where each hand strokes the film, in metres along it, or null. */
  private strokes: Record<Side, number | null> = { left: null, right: null };

  constructor(
    private readonly scene: Scene,
    private readonly pocket: Pocket,
    private readonly contents: Contents,
    private readonly host: SheathHost,
  ) {}

  /** A hand strokes the film on the probe. */
  strokesProbe(side: Side): boolean {
    return this.scene.cover.on && this.strokes[side] !== null;
  }

  /** One step, after the world has moved. */
  step(): void {
    for (const side of SIDES) {
      const hand = this.host.hands[side];
      const before = this.strokes[side];
      this.strokes[side] = null;
      if (!hand.using) continue;
      if (this.scene.cover.on) this.onProbe(side, hand, before);
      else if (this.pocket.isOpen && !hand.hold) this.onPocket(side, before);
    }
  }

  save(): unknown {
    return { ...this.strokes };
  }

  restore(saved: unknown): void {
    this.strokes = { ...(saved as Record<Side, number | null>) };
  }

  private onProbe(side: Side, hand: HandState, before: number | null): void {
    const alongM = this.besideFilm(side);
    if (alongM === null) return;
    if (hand.hold?.kind === 'thing') this.putOn(hand, hand.hold.thing, alongM);
    else if (!hand.hold) {
      this.strokes[side] = alongM;
      if (before !== null && before !== alongM) this.contents.stroke(before, alongM);
    }
  }

  /** Fingers along the hanging film take gel with them to its closed end. */
  private onPocket(side: Side, before: number | null): void {
    const [x, y] = fingertips(this.scene, side);
    const [ex, ey] = this.pocket.end();
    if (!this.pocket.contains(x, y)) return;
    const now = length(x - ex, y - ey);
    this.strokes[side] = now;
    if (before !== null && before !== now) this.contents.strokeDown(before, now);
  }

  private putOn(hand: HandState, thing: number, alongM: number): void {
    const { scene, host } = this;
    if (scene.things[thing]!.kind !== 'band' || !this.contents.band(alongM)) return;
    scene.world.setBodyEnabled(scene.things[thing]!.body, false);
    host.gone[thing] = host.carriedOff[thing] = true;
    hand.hold = null;
    hand.closed = false;
    hand.using = false;
  }

  /** Place on the dressed probe or the first of its cord nearest to fingers, as distance from the face (m), or null when none is near. */
  private besideFilm(side: Side): number | null {
    const { world, cord, cover, scenario } = this.scene;
    const [x, y] = fingertips(this.scene, side);
    const onProbe = onProbeAxis(this.scene, x, y);
    const onCord = nearestAlong(world, cord, scenario.cord.linkM, x, y);
    const near = Math.min(cover.coveredM, ALONG_CORD_M);
    if (onCord.gap < onProbe.gap && onCord.gap < BESIDE_M && onCord.s <= near) return this.contents.head.lengthM + onCord.s;
    return onProbe.gap - THING_SHAPES.probe.halfHeight < BESIDE_M ? onProbe.alongM : null;
  }
}
