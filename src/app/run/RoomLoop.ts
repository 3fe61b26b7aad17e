import type { RoomInput } from '../input/RoomInput.ts';
import type { LiveRun } from './LiveRun.ts';
import { panelFace } from './panelFace.ts';
import type { PlaceOnPage } from './PlaceOnPage.ts';
import { shownHolds } from './shownHolds.ts';
import type { StagePoint, StagePort } from './stagePort.ts';

const PANELS_EVERY_MS = 120;
/** A gap longer than this between frames is no time of the run: the page was not shown. */
const FRAME_MS_MAX = 250;

/** Animation frames: lead the hands, do the steps that are due, draw, and now and then let the panels look again, if they would show anything else. */
export class RoomLoop {
  private frame = 0;
  private lastMs: number | null = null;
  private panelsMs = 0;
  /** What the panels showed when they were last looked at. */
  private face = '';

  constructor(
    private readonly live: LiveRun,
    private readonly stage: StagePort,
    private readonly input: RoomInput,
    private readonly place: PlaceOnPage,
  ) {}

  start(): void {
    this.frame = requestAnimationFrame((nowMs) => this.tick(nowMs));
  }

  stop(): void {
    cancelAnimationFrame(this.frame);
  }

  private draw(): void {
    const { previous, current, blend, hands, coaching } = this.live;
    this.stage.draw(previous, current, blend, { activeHand: hands.active, shown: coaching === 'shown', pointer: this.pointer(), holds: shownHolds(this.live) });
  }

  /** Where the pointer is that leads the active hand, in pixels of the room's element. */
  private pointer(): StagePoint | null {
    const from = this.live.mode.playing ? this.input.leadingFrom : null;
    return from && this.place.inside(from.x, from.y);
  }

  private tick(nowMs: number): void {
    const elapsedMs = this.lastMs === null ? 0 : Math.min(nowMs - this.lastMs, FRAME_MS_MAX);
    this.lastMs = nowMs;
    this.input.tick(elapsedMs / 1000 / this.live.clock.slowdown);
    this.live.advance(elapsedMs);
    this.draw();
    this.panelsMs += elapsedMs;
    if (this.panelsMs >= PANELS_EVERY_MS && this.live.mode.playing) this.lookAtPanels();
    this.start();
  }

  private lookAtPanels(): void {
    this.panelsMs = 0;
    const face = panelFace(this.live);
    if (face !== this.face) this.live.publish();
    this.face = face;
  }
}
