import type { RoomPicture } from '../../../core/room/picture.ts';
import type { StagePort } from '../../run/stagePort.ts';
import type { PlayHead } from '../PlayHead.ts';

/** The stage goes on moving fingers and names for so long after a change, in milliseconds. */
const SETTLE_MS = 900;
/** Overlays look again at the hands this often while the run is played. */
const HANDS_EVERY_MS = 160;

/** What overlays are drawn from: where the room lies on the screen, and what it shows. */
export interface RoomSight {
  readonly picture: RoomPicture;
  /** CSS pixels per metre, and where the room's origin lies. */
  readonly pxPerM: number;
  readonly originX: number;
  readonly originY: number;
  readonly width: number;
  readonly height: number;
}

/** Asks for animation frames only while the run is played or something has changed, and draws the room in them. */
export class RoomFrames {
  private frame = 0;
  private lastMs: number | null = null;
  private untilMs = 0;
  private sight: RoomSight | null = null;
  private toldMs = 0;
  private readonly unsubscribe: () => void;

  constructor(
    private readonly stage: StagePort,
    private readonly host: HTMLElement,
    private readonly head: PlayHead,
    /** Picture of the room at a step, or null before there is one. */
    private readonly pictureAt: (step: number) => RoomPicture | null,
    private readonly onSight: (sight: RoomSight) => void,
    public named: boolean,
  ) {
    this.unsubscribe = head.subscribe(() => this.nudge());
    this.nudge();
  }

  /** Something has changed: draws until the room has come to rest again. */
  nudge(): void {
    this.untilMs = performance.now() + SETTLE_MS;
    if (this.frame === 0) this.frame = requestAnimationFrame((nowMs) => this.tick(nowMs));
  }

  stop(): void {
    this.unsubscribe();
    cancelAnimationFrame(this.frame);
    this.frame = -1;
  }

  private tick(nowMs: number): void {
    this.frame = 0;
    const elapsedMs = this.lastMs === null ? 0 : nowMs - this.lastMs;
    if (this.head.playing) this.head.advance(elapsedMs);
    this.draw(nowMs);
    if (this.frame !== 0) {
      this.lastMs = nowMs;
      return;
    }
    if (this.head.playing || nowMs < this.untilMs) {
      this.frame = requestAnimationFrame((ms) => this.tick(ms));
      this.lastMs = nowMs;
    } else this.lastMs = null;
  }

  private draw(nowMs: number): void {
    const picture = this.pictureAt(Math.min(this.head.step, this.head.playable));
    if (picture === null) return;
    this.stage.draw(picture, picture, 1, { activeHand: null, shown: true, named: this.named });
    const origin = this.stage.roomToScreen(0, 0);
    const pxPerM = this.stage.roomToScreen(1, 0).x - origin.x;
    const sight = { picture, pxPerM, originX: origin.x, originY: origin.y, width: this.host.clientWidth, height: this.host.clientHeight };
    const before = this.sight;
    const moved = before === null || before.pxPerM !== pxPerM || before.originX !== origin.x || before.originY !== origin.y || before.width !== sight.width || before.height !== sight.height;
    if (!moved && (before.picture === picture || (this.head.playing && nowMs - this.toldMs < HANDS_EVERY_MS))) return;
    this.sight = sight;
    this.toldMs = nowMs;
    this.onSight(sight);
  }
}

/** Where a point of the room lies on the screen. */
export const onScreen = ({ pxPerM, originX, originY }: RoomSight, x: number, y: number): { x: number; y: number } => ({ x: originX + x * pxPerM, y: originY - y * pxPerM });
