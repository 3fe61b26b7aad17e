import { RoomHands, type Care } from './roomHands.ts';
import type { RoomPage, Side } from './roomPage.ts';

/** Keys of each hand: up, down, left and right on the screen, fingertips up and down, grip, use. */
const KEYS: Readonly<Record<Side, Readonly<Record<'up' | 'down' | 'left' | 'right' | 'raise' | 'lower' | 'grip' | 'use', string>>>> = {
  right: { up: 'KeyW', down: 'KeyS', left: 'KeyA', right: 'KeyD', raise: 'KeyQ', lower: 'KeyE', grip: 'KeyR', use: 'KeyF' },
  left: { up: 'KeyI', down: 'KeyK', left: 'KeyJ', right: 'KeyL', raise: 'KeyO', lower: 'KeyU', grip: 'KeyY', use: 'KeyH' },
};
/** Time that passes on the page between two looks, in milliseconds, and steps of the room meanwhile. */
const LOOK_MS = 48;
const LOOK_STEPS = 6;
/** A way longer than this is gone without Shift, and how near is near enough (m). */
const FAR_M = 0.06;
const NEAR_M: Readonly<Record<Care, number>> = { swift: 0.012, fine: 0.002 };
/** How far from the goal a key is let go, since a key held long is fast (m). */
const BRAKE_M = 0.035;
const TURN_DEG_PER_S = 70;
const LOOKS_MAX = 2000;

/** The keyboard alone: a cluster of keys for each hand, with Shift for fine work. The page's time is made by the test, so that keys are held for exactly as long as meant. */
export class KeyHands extends RoomHands {
  /** Call before the page is opened. */
  static async on(room: RoomPage): Promise<KeyHands> {
    await room.page.clock.install();
    return new KeyHands(room);
  }

  /** Stops the page's own time. */
  async holdTime(): Promise<void> {
    await this.room.page.clock.pauseAt((await this.room.page.evaluate(() => Date.now())) + 1000);
  }

  /** Lets the page's own time go on, for all that waits for it. */
  async letTimeGo(): Promise<void> {
    await this.room.page.clock.resume();
  }

  /** Up before across before down, so that nothing is dragged over an edge. */
  async palmTo(side: Side, x: number, y: number, care: Care = 'swift'): Promise<void> {
    const { y: now } = await this.room.hand(side);
    const across = (): Promise<void> => this.along(side, 'x', x, care);
    const upright = (): Promise<void> => this.along(side, 'y', y, care);
    for (const go of y > now ? [upright, across] : [across, upright]) await go();
  }

  async use(side: Side, seconds: number): Promise<void> {
    await this.room.page.keyboard.down(KEYS[side].use);
    await this.room.advance(Math.round(seconds * 120));
    await this.room.page.keyboard.up(KEYS[side].use);
    await this.room.advance(12);
  }

  protected async turnBy(side: Side, degrees: number): Promise<number> {
    const key = KEYS[side][degrees > 0 ? 'raise' : 'lower'];
    const frames = Math.round((Math.abs(degrees) / TURN_DEG_PER_S) * 1000 / 16);
    await this.room.page.keyboard.down(key);
    await this.room.page.clock.runFor(frames * 16);
    await this.room.page.keyboard.up(key);
    return (Math.sign(degrees) * frames * 16 * TURN_DEG_PER_S) / 1000;
  }

  protected async flipGrip(side: Side): Promise<void> {
    await this.room.page.keyboard.press(KEYS[side].grip);
  }

  /** Moves along one axis: fast while it is far, then with Shift, and looks all the while. */
  private async along(side: Side, axis: 'x' | 'y', goal: number, care: Care): Promise<void> {
    const left = async (): Promise<number> => goal - (await this.room.hand(side))[axis];
    if (Math.abs(await left()) > FAR_M) await this.hold(side, axis, left, BRAKE_M);
    await this.room.advance(30);
    if (Math.abs(await left()) <= NEAR_M[care]) return;
    await this.room.page.keyboard.down('Shift');
    await this.hold(side, axis, left, NEAR_M.fine);
    await this.room.page.keyboard.up('Shift');
    await this.room.advance(30);
  }

  /** Holds the key of the direction that is left until no more than `near` is. */
  private async hold(side: Side, axis: 'x' | 'y', left: () => Promise<number>, near: number): Promise<void> {
    let still = await left();
    const forward = still > 0;
    const key = KEYS[side][axis === 'x' ? (forward ? 'right' : 'left') : forward ? 'up' : 'down'];
    await this.room.page.keyboard.down(key);
    for (let k = 0; k < LOOKS_MAX && (forward ? still : -still) > near; k++) {
      await this.room.page.clock.runFor(LOOK_MS);
      await this.room.advance(LOOK_STEPS);
      still = await left();
    }
    await this.room.page.keyboard.up(key);
  }
}
