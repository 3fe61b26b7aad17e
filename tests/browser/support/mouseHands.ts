import { expect } from '@playwright/test';
import type { RoomPage, Side } from './roomPage.ts';

/** Longest way of the pointer between two steps of the room, in pixels, and steps made after each (60 events a second). */
const STRIDE_PX = 3;
const STEPS_PER_EVENT = 2;

/** Two hands led by one real mouse: the pointer leads the active hand, a click closes or opens it, the wheel turns the wrist. */
export class MouseHands {
  private active: Side = 'right';
  private angle: Record<Side, number> = { left: -20, right: -20 };

  constructor(private readonly room: RoomPage) {}

  /** Leads that hand from now on; the pointer goes to where it is. */
  async take(side: Side): Promise<void> {
    if (side !== this.active) await this.room.page.keyboard.press('Tab');
    this.active = side;
    await this.toPointer();
  }

  /** Moves the middle of the palm of the active hand to (x, y) metres, in a straight line of the pointer. */
  async palmTo(x: number, y: number, stride = STRIDE_PX): Promise<void> {
    const { page } = this.room;
    const from = await this.toPointer();
    const to = await this.room.screenOf(x, y);
    const far = Math.hypot(to.x - from.x, to.y - from.y);
    const events = Math.max(1, Math.ceil(far / stride));
    for (let k = 1; k <= events; k++) {
      await page.mouse.move(from.x + ((to.x - from.x) * k) / events, from.y + ((to.y - from.y) * k) / events);
      await this.room.advance(STEPS_PER_EVENT);
    }
    await this.room.advance(40);
  }

  /** Moves the active hand so that the working end of what it holds comes to (x, y). */
  async endTo(id: string, x: number, y: number, stride = STRIDE_PX): Promise<void> {
    const end = await this.room.end(id);
    const hand = await this.room.hand(this.active);
    await this.palmTo(hand.x + x - end.x, hand.y + y - end.y, stride);
  }

  /** Takes a lying thing from above: fingers over it, down, click. */
  async pick(id: string): Promise<void> {
    const { x, y } = await this.room.item(id);
    await this.fingersTo(x, y + 0.16);
    await this.fingersTo(x, y + 0.014, 1);
    await this.click();
    expect((await this.room.hand(this.active)).holds, `the ${this.active} hand holds it`).toBe(id);
  }

  async fingersTo(x: number, y: number, stride = STRIDE_PX): Promise<void> {
    const angle = (this.angle[this.active] * Math.PI) / 180;
    const way = this.active === 'right' ? 1 : -1;
    await this.palmTo(x - way * 0.085 * Math.cos(angle), y - 0.085 * Math.sin(angle), stride);
  }

  /** Turns the wrist with the wheel to an angle of the fingers above the horizontal, in whole degrees. */
  async turn(degrees: number): Promise<void> {
    const DEG_PER_WHEEL_PX = 0.06;
    await this.room.page.mouse.wheel(0, (this.angle[this.active] - degrees) / DEG_PER_WHEEL_PX);
    this.angle[this.active] = degrees;
    await this.room.advance(60);
  }

  /** Closes an open hand, opens a closed one. */
  async click(): Promise<void> {
    await this.toPointer();
    await this.room.page.mouse.down();
    await this.room.advance(2);
    await this.room.page.mouse.up();
    await this.room.advance(60);
  }

  /** Holds the right button: squeezes or injects. */
  async use(seconds: number): Promise<void> {
    await this.room.page.mouse.down({ button: 'right' });
    await this.room.advance(Math.round(seconds * 120));
    await this.room.page.mouse.up({ button: 'right' });
    await this.room.advance(12);
  }

  private async toPointer(): Promise<{ x: number; y: number }> {
    const { screenX, screenY } = await this.room.hand(this.active);
    return { x: screenX, y: screenY };
  }
}
