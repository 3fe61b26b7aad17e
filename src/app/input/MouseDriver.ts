import { otherSide } from '../../core/base/side.ts';
import { FlickGuard } from './FlickGuard.ts';
import { PointerFollow } from './followPointer.ts';
import type { HandsControl } from './HandsControl.ts';
import { PressGrip } from './PressGrip.ts';
import { distance, type RoomView } from './RoomView.ts';

/** A press this near to the other hand (metres), and nearer to it than to the active one, changes hands. */
const ON_HAND_M = 0.08;
/** The mouse takes over from keys or a stick only when it is really moved. */
const TAKE_OVER_PX = 6;
const DEG_PER_WHEEL_PX = 0.06;
const LEFT = 0;
const MIDDLE = 1;
const RIGHT = 2;

/** A place on the page in client pixels. */
export interface ClientPoint {
  readonly x: number;
  readonly y: number;
}

const forMouse = (event: PointerEvent): boolean => event.pointerType !== 'touch';

/** Mouse or pen: the pointer leads the active hand. */
export class MouseDriver {
  private follow: PointerFollow | null = null;
  private readonly grip = new PressGrip();
  private readonly flicks = new FlickGuard();
  private panning = false;
  private straying = 0;
  private place: ClientPoint | null = null;

  constructor(
    private readonly hands: HandsControl,
    private readonly view: RoomView,
  ) {}

  /** The next movement starts from where the hand is: after a change of hands or of the view. */
  takeHoldAnew(): void {
    this.follow = null;
    this.grip.forget();
    this.flicks.forget();
  }

  /** Where the pointer is that leads a hand, in client pixels; null while none does. */
  get leadingFrom(): ClientPoint | null {
    return this.follow && this.place;
  }

  attach(room: HTMLElement, signal: AbortSignal): void {
    room.addEventListener('pointerdown', (event) => forMouse(event) && this.down(room, event), { signal });
    room.addEventListener('pointermove', (event) => forMouse(event) && this.moved(event), { signal });
    room.addEventListener('pointerup', (event) => forMouse(event) && this.up(event), { signal });
    room.addEventListener('pointercancel', (event) => forMouse(event) && this.left(), { signal });
    room.addEventListener('pointerleave', (event) => forMouse(event) && this.left(), { signal });
    room.addEventListener('wheel', (event) => this.wheel(event), { signal, passive: false });
    room.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
  }

  private down(room: HTMLElement, event: PointerEvent): void {
    room.setPointerCapture(event.pointerId);
    this.hands.led('mouse');
    if (event.button === MIDDLE) this.panning = true;
    if (event.button === RIGHT) this.hands.use(this.hands.active, true);
    if (event.button === LEFT) this.press(event);
    event.preventDefault();
    room.focus({ preventScroll: true });
  }

  private press(event: PointerEvent): void {
    const at = this.view.toRoom(event.clientX, event.clientY);
    const other = otherSide(this.hands.active);
    const toOther = distance(at, this.view.handAt(other));
    if (toOther < ON_HAND_M && toOther < distance(at, this.view.handAt(this.hands.active))) {
      this.hands.choose(other);
      this.takeHoldAnew();
      return;
    }
    const change = this.grip.down(this.hands.isClosed(this.hands.active), event.timeStamp);
    if (change) this.hands.setGrip(this.hands.active, true);
  }

  private moved(event: PointerEvent): void {
    if (this.panning) {
      this.view.pan(event.movementX, event.movementY);
      return;
    }
    const px = Math.abs(event.movementX) + Math.abs(event.movementY);
    this.place = { x: event.clientX, y: event.clientY };
    if (!this.leads(px)) return;
    this.grip.moved(px);
    if (!this.calm(px, event.timeStamp)) return;
    const at = this.view.toRoom(event.clientX, event.clientY);
    const side = this.hands.active;
    if (!this.follow) {
      this.follow = new PointerFollow(at, this.hands.targetOf(side), { x: 0, y: 0 });
      return;
    }
    const to = this.follow.moveTo(at);
    this.hands.moveTo(side, to.x, to.y);
  }

  /** Whether the pointer leads now; a flick takes back what it has led so far. */
  private calm(px: number, atMs: number): boolean {
    if (!this.view.inRealTime()) return true;
    const side = this.hands.active;
    const { x, y } = this.hands.targetOf(side);
    const change = this.flicks.moved(px, atMs, { x, y });
    if (change === 'flickBegan') this.hands.moveTo(side, this.flicks.before.x, this.flicks.before.y);
    if (change !== 'led') this.follow = null;
    return change === 'led' || change === 'flickEnded';
  }

  private leads(px: number): boolean {
    if (!this.hands.mode.playing) {
      this.follow = null;
      return false;
    }
    if (this.hands.mode.context.leader === 'mouse') return true;
    this.straying += px;
    if (this.straying < TAKE_OVER_PX) return false;
    this.straying = 0;
    this.follow = null;
    this.hands.led('mouse');
    return true;
  }

  private up(event: PointerEvent): void {
    if (event.button === MIDDLE) {
      this.panning = false;
      this.takeHoldAnew();
    }
    if (event.button === RIGHT) this.hands.use(this.hands.active, false);
    if (event.button === LEFT && this.grip.up(event.timeStamp) === 'open') this.hands.setGrip(this.hands.active, false);
  }

  private left(): void {
    this.panning = false;
    this.hands.use(this.hands.active, false);
    this.takeHoldAnew();
  }

  private wheel(event: WheelEvent): void {
    event.preventDefault();
    if (event.ctrlKey || event.metaKey) {
      this.view.zoom(Math.exp(-event.deltaY * 0.0015), event.clientX, event.clientY);
      this.takeHoldAnew();
      return;
    }
    const pixels = event.deltaMode === 1 ? event.deltaY * 30 : event.deltaY;
    this.hands.turnBy(this.hands.active, -pixels * DEG_PER_WHEEL_PX);
  }
}
