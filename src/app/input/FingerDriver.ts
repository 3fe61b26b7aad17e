import type { Side } from '../../core/base/side.ts';
import { PointerFollow } from './followPointer.ts';
import type { HandsControl } from './HandsControl.ts';
import { distance, type RoomView } from './RoomView.ts';

/** The hand floats this far above the finger, so that it stays in sight. */
const ABOVE_FINGER_PX = 72;
const TAP_MS = 260;
const TAP_PX = 10;
/** A tap this near to a hand, or to its place above the finger, changes its grip. */
const TAP_REACH_M = 0.16;

interface Finger {
  readonly side: Side;
  readonly follow: PointerFollow;
  readonly downMs: number;
  readonly nearHand: boolean;
  lastX: number;
  lastY: number;
  movedPx: number;
}

/** Touch screen: one finger for each hand; a short tap on a hand closes or opens it. */
export class FingerDriver {
  private readonly fingers = new Map<number, Finger>();

  constructor(
    private readonly hands: HandsControl,
    private readonly view: RoomView,
  ) {}

  attach(room: HTMLElement, signal: AbortSignal): void {
    const forFingers = (handle: (event: PointerEvent) => void) => (event: PointerEvent): void => {
      if (event.pointerType === 'touch') handle(event);
    };
    room.addEventListener('pointerdown', forFingers((event) => this.down(room, event)), { signal });
    room.addEventListener('pointermove', forFingers((event) => this.moved(event)), { signal });
    room.addEventListener('pointerup', forFingers((event) => this.up(event, true)), { signal });
    room.addEventListener('pointercancel', forFingers((event) => this.up(event, false)), { signal });
  }

  private down(room: HTMLElement, event: PointerEvent): void {
    event.preventDefault();
    const mode = this.hands.mode;
    const at = this.view.toRoom(event.clientX, event.clientY);
    const above = this.view.toRoom(event.clientX, event.clientY - ABOVE_FINGER_PX);
    // A finger lies on its hand or below it, where it leads from: both count, or one below a high hand would take a low one beside it.
    const far = (side: Side): number => Math.min(distance(at, this.view.handAt(side)), distance(above, this.view.handAt(side)));
    const toRight = far('right');
    const toLeft = far('left');
    const nearest: Side = toRight <= toLeft ? 'right' : 'left';
    mode.send({ type: 'finger.down', pointer: event.pointerId, nearest });
    const side = mode.context.fingers[event.pointerId];
    if (!side) return;
    room.setPointerCapture(event.pointerId);
    this.fingers.set(event.pointerId, {
      side,
      follow: new PointerFollow(at, this.hands.targetOf(side), { x: above.x - at.x, y: above.y - at.y }),
      downMs: event.timeStamp,
      nearHand: side === nearest && Math.min(toRight, toLeft) < TAP_REACH_M,
      lastX: event.clientX,
      lastY: event.clientY,
      movedPx: 0,
    });
  }

  private moved(event: PointerEvent): void {
    const finger = this.fingers.get(event.pointerId);
    if (!finger) return;
    finger.movedPx += Math.abs(event.clientX - finger.lastX) + Math.abs(event.clientY - finger.lastY);
    finger.lastX = event.clientX;
    finger.lastY = event.clientY;
    if (!this.hands.mode.playing || finger.movedPx < TAP_PX) return;
    const to = finger.follow.moveTo(this.view.toRoom(event.clientX, event.clientY));
    this.hands.moveTo(finger.side, to.x, to.y);
  }

  private up(event: PointerEvent, meant: boolean): void {
    const finger = this.fingers.get(event.pointerId);
    this.fingers.delete(event.pointerId);
    this.hands.mode.send({ type: 'finger.up', pointer: event.pointerId });
    if (!finger || !meant) return;
    const tap = event.timeStamp - finger.downMs < TAP_MS && finger.movedPx < TAP_PX;
    if (tap && finger.nearHand) this.hands.flipGrip(finger.side);
  }
}
