import type { Side } from '../../core/base/side.ts';
import type { HandsControl } from './HandsControl.ts';
import type { PageOrder } from './KeyboardDriver.ts';
import { stickSpeed, TURN_DEG_PER_S } from './speedRamp.ts';

/** Controls of one hand on a pad of the standard layout: numbers of axes and buttons. */
interface PadHand {
  readonly side: Side;
  readonly axisX: number;
  readonly axisY: number;
  readonly trigger: number;
  readonly bumper: number;
  readonly use: number;
}

/** The left stick leads the hand on the left of the screen: the operator's right. */
const PAD_HANDS: readonly PadHand[] = [
  { side: 'right', axisX: 0, axisY: 1, trigger: 6, bumper: 4, use: 13 },
  { side: 'left', axisX: 2, axisY: 3, trigger: 7, bumper: 5, use: 0 },
];
const PAD_ORDERS: readonly { readonly button: number; readonly order: PageOrder }[] = [
  { button: 1, order: { kind: 'notice' } },
  { button: 9, order: { kind: 'pause' } },
  { button: 8, order: { kind: 'help' } },
];

/** Pad: one stick for each hand, triggers close and open, a bumper held makes the stick turn the wrist. */
export class GamepadDriver {
  private before: readonly boolean[] = [];

  constructor(
    private readonly hands: HandsControl,
    private readonly onOrder: (order: PageOrder) => void,
    private readonly pads: () => readonly (Gamepad | null)[] = () => navigator.getGamepads?.() ?? [],
  ) {}

  tick(seconds: number): void {
    const pad = this.pads().find((candidate) => candidate?.connected && candidate.axes.length >= 4);
    if (!pad) return;
    const pressed = pad.buttons.map((button) => button.pressed || button.value > 0.5);
    for (const hand of PAD_HANDS) this.lead(hand, pad, pressed, seconds);
    for (const { button, order } of PAD_ORDERS) if (this.justPressed(pressed, button)) this.onOrder(order);
    this.before = pressed;
  }

  private lead(hand: PadHand, pad: Gamepad, pressed: readonly boolean[], seconds: number): void {
    const across = stickSpeed(pad.axes[hand.axisX] ?? 0, false);
    const down = stickSpeed(pad.axes[hand.axisY] ?? 0, false);
    if (across !== 0 || down !== 0) {
      this.hands.led('gamepad');
      this.hands.choose(hand.side);
      if (pressed[hand.bumper]) this.hands.turnBy(hand.side, -Math.sign(down) * Math.min(1, Math.abs(down) * 2) * TURN_DEG_PER_S * seconds);
      else this.hands.moveBy(hand.side, across * seconds, -down * seconds);
    }
    if (this.justPressed(pressed, hand.trigger)) {
      this.hands.led('gamepad');
      this.hands.flipGrip(hand.side);
    }
    const using = pressed[hand.use] ?? false;
    if (using !== (this.before[hand.use] ?? false)) this.hands.use(hand.side, using);
  }

  private justPressed(pressed: readonly boolean[], button: number): boolean {
    return (pressed[button] ?? false) && !(this.before[button] ?? false);
  }
}
