import { RoomHands, type Care } from './roomHands.ts';
import type { Side } from './roomPage.ts';

/** Way of the pointer between two events in pixels, and steps of the room after each: what is led is as fast either way. */
const PACE: Readonly<Record<Care, { readonly px: number; readonly steps: number }>> = { swift: { px: 6, steps: 4 }, fine: { px: 1, steps: 2 } };
const DEG_PER_WHEEL_PX = 0.06;

/**
 * One real mouse for both hands in turn: the pointer leads the active hand, Tab changes hands, a click closes or opens, the wheel turns
 * the wrist, the right button squeezes. The other hand holds its place meanwhile.
 */
export class MouseHands extends RoomHands {
  private active: Side = 'right';

  async palmTo(side: Side, x: number, y: number, care: Care = 'swift'): Promise<void> {
    await this.lead(side);
    const { px, steps } = PACE[care];
    const hand = await this.room.hand(side);
    const to = await this.room.screenOf(x, y);
    const events = Math.max(1, Math.ceil(Math.hypot(to.x - hand.screenX, to.y - hand.screenY) / px));
    for (let k = 1; k <= events; k++) {
      await this.room.page.mouse.move(hand.screenX + ((to.x - hand.screenX) * k) / events, hand.screenY + ((to.y - hand.screenY) * k) / events);
      await this.room.advance(steps);
    }
    await this.room.advance(40);
  }

  async use(side: Side, seconds: number): Promise<void> {
    await this.lead(side);
    await this.room.page.mouse.down({ button: 'right' });
    await this.room.advance(Math.round(seconds * 120));
    await this.room.page.mouse.up({ button: 'right' });
    await this.room.advance(12);
  }

  /** Presses, drags what is under the fingers along a way of the palm, and lets go of it there. */
  async drag(side: Side, ...way: readonly (readonly [number, number])[]): Promise<void> {
    await this.lead(side);
    await this.room.page.mouse.down();
    await this.room.advance(60);
    for (const [x, y] of way) await this.palmTo(side, x, y);
    await this.room.page.mouse.up();
    await this.room.advance(60);
  }

  protected async turnBy(side: Side, degrees: number): Promise<number> {
    await this.lead(side);
    await this.room.page.mouse.wheel(0, -degrees / DEG_PER_WHEEL_PX);
    return degrees;
  }

  protected async flipGrip(side: Side): Promise<void> {
    await this.lead(side);
    await this.room.page.mouse.down();
    await this.room.page.mouse.up();
  }

  /** Changes hands where need be; the pointer goes to where the hand is. */
  private async lead(side: Side): Promise<void> {
    if (side === this.active) return;
    await this.room.page.keyboard.press('Tab');
    this.active = side;
    const { screenX, screenY } = await this.room.hand(side);
    await this.room.page.mouse.move(screenX, screenY);
  }
}
