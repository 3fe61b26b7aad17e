import type { Side } from '../../base/side.ts';
import type { HandState } from '../handState.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Scene } from '../scene.ts';
import { holderOf } from '../work.ts';

/** The card hangs this far above the waist, in front (m); common practice. */
const OVER_WAIST_M = 0.08;

/** The card on the outer tie: it hangs in front once the back is tied, is passed to the assistant, and comes back as a tie. */
export class TieCard {
  state: 'away' | 'hanging' | 'passed' | 'tied' = 'away';

  constructor(
    private readonly scene: Scene,
    private readonly hands: Readonly<Record<Side, HandState>>,
    private readonly gone: boolean[],
    private readonly carriedOff: boolean[],
  ) {}

  get heldBy(): Side | null {
    return holderOf(this.hands, this.scene.gown!.card);
  }

  /** Its far end, which the assistant takes (m). */
  get farEnd(): readonly [number, number] {
    const { world, gown, things } = this.scene;
    const { body } = things[gown!.card]!;
    const half = THING_SHAPES.tieCard.halfLength;
    return [world.bodyX[body]! + world.bodyC[body]! * half, world.bodyY[body]! + world.bodyS[body]! * half];
  }

  hang(): void {
    const { world, gown, things } = this.scene;
    this.state = 'hanging';
    this.gone[gown!.card] = this.carriedOff[gown!.card] = false;
    world.setBodyEnabled(things[gown!.card]!.body, true);
  }

  /** Before the world moves: it hangs in front while nobody holds it. */
  step(torsoX: number): void {
    if (this.state !== 'hanging' || this.heldBy) return;
    const { world, gown, things, scenario } = this.scene;
    world.teleportBody(things[gown!.card]!.body, torsoX, scenario.operator.waistM + OVER_WAIST_M, 1, 0);
  }

  /** Out of the room: tied, or not there yet. */
  putAway(state: 'away' | 'tied'): void {
    const { world, gown, things } = this.scene;
    const holder = this.heldBy;
    if (holder) {
      const hand = this.hands[holder];
      if (hand.hold?.kind === 'thing') world.unweld(hand.hold.joint);
      hand.hold = null;
      hand.closed = false;
    }
    this.state = state;
    this.gone[gown!.card] = this.carriedOff[gown!.card] = true;
    world.setBodyEnabled(things[gown!.card]!.body, false);
  }
}
