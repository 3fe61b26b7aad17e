import { FingerDriver } from './FingerDriver.ts';
import { GamepadDriver } from './GamepadDriver.ts';
import type { HandsControl } from './HandsControl.ts';
import { KeyboardDriver, type PageOrder } from './KeyboardDriver.ts';
import { MouseDriver, type ClientPoint } from './MouseDriver.ts';
import type { RoomView } from './RoomView.ts';

/** All ways to lead the hands, listening on one element: the room. */
export class RoomInput {
  private readonly mouse: MouseDriver;
  private readonly keyboard: KeyboardDriver;
  private readonly gamepad: GamepadDriver;
  private readonly end = new AbortController();

  constructor(room: HTMLElement, hands: HandsControl, view: RoomView, onOrder: (order: PageOrder) => void) {
    this.mouse = new MouseDriver(hands, view);
    this.keyboard = new KeyboardDriver(hands, onOrder);
    this.gamepad = new GamepadDriver(hands, onOrder);
    this.mouse.attach(room, this.end.signal);
    new FingerDriver(hands, view).attach(room, this.end.signal);
    this.keyboard.attach(room, this.end.signal);
    let active = hands.active;
    this.stopWatching = hands.mode.subscribe(() => {
      if (hands.active !== active) this.mouse.takeHoldAnew();
      active = hands.active;
    });
  }

  private readonly stopWatching: () => void;

  /** Once a frame, before the steps. */
  tick(seconds: number): void {
    this.keyboard.tick(seconds);
    this.gamepad.tick(seconds);
  }

  /** Where the pointer is that leads the active hand, in client pixels; null while none does. */
  get leadingFrom(): ClientPoint | null {
    return this.mouse.leadingFrom;
  }

  /** The view changed under a resting pointer. */
  viewChanged(): void {
    this.mouse.takeHoldAnew();
  }

  dispose(): void {
    this.end.abort();
    this.stopWatching();
  }
}
