import type { CDPSession, Locator } from '@playwright/test';
import { RoomHands, type Care } from './roomHands.ts';
import type { Side } from './roomPage.ts';

/** Way of a finger between two events in pixels, and steps of the room after each. */
const PACE: Readonly<Record<Care, { readonly px: number; readonly steps: number }>> = { swift: { px: 12, steps: 8 }, fine: { px: 2, steps: 4 } };
/** How far below its hand a finger leads, in pixels, and degrees that one tap on a turn button makes. */
const BELOW_PX = 72;
const TURN_DEG = 8;
/** A finger leads from its second movement on: the first is this long, there and back, in pixels. */
const WAKE_PX = 12;
const SIDES: readonly Side[] = ['right', 'left'];

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Two fingers on a touch screen. Both lie on the glass while a hand is led, one below each hand; they are lifted for the buttons in
 * the corners that grip, squeeze and turn.
 */
export class TouchHands extends RoomHands {
  private fingers: Record<Side, Place> | null = null;
  private devTools: CDPSession | null = null;

  palmTo(side: Side, x: number, y: number, care: Care = 'swift'): Promise<void> {
    return this.palmsTo({ [side]: [x, y] }, care);
  }

  /** Leads one hand, or both at the same time, to (x, y) metres each. */
  async palmsTo(goals: Partial<Record<Side, readonly [number, number]>>, care: Care = 'swift'): Promise<void> {
    const from = this.fingers ?? (await this.lay());
    const to = { ...from };
    for (const side of SIDES) {
      const goal = goals[side];
      if (!goal) continue;
      const { x, y } = await this.room.screenOf(...goal);
      to[side] = { x, y: y + BELOW_PX };
    }
    const { px, steps } = PACE[care];
    const far = Math.max(...SIDES.map((side) => Math.hypot(to[side].x - from[side].x, to[side].y - from[side].y)));
    const strides = Math.max(2, Math.ceil(far / px));
    for (let k = 1; k <= strides; k++) {
      await this.slide({ right: between(from.right, to.right, k / strides), left: between(from.left, to.left, k / strides) });
      await this.room.advance(steps);
    }
    await this.room.advance(40);
  }

  async use(side: Side, seconds: number): Promise<void> {
    await this.lift();
    const at = await this.button(side, 'Use');
    await this.send('touchStart', [at]);
    await this.room.advance(Math.round(seconds * 120));
    await this.send('touchEnd', []);
    await this.room.advance(12);
  }

  /** Lifts both fingers and taps on a control of the page. */
  async tap(control: Locator): Promise<void> {
    await this.lift();
    await control.tap();
  }

  protected async turnBy(side: Side, degrees: number): Promise<number> {
    await this.lift();
    // Seen on the screen, fingertips rise anticlockwise on the right hand, which is on the left there.
    const way = degrees > 0 === (side === 'right') ? 'anticlockwise' : 'clockwise';
    const { x, y } = await this.button(side, `Turn the ${side} wrist ${way}`);
    const taps = Math.round(Math.abs(degrees) / TURN_DEG);
    for (let k = 0; k < taps; k++) await this.room.page.touchscreen.tap(x, y);
    return Math.sign(degrees) * taps * TURN_DEG;
  }

  protected async flipGrip(side: Side): Promise<void> {
    await this.lift();
    const { x, y } = await this.button(side, /^(Grip|Open)$/);
    await this.room.page.touchscreen.tap(x, y);
  }

  /** Puts a finger below each hand and wakes it, so that it leads. */
  private async lay(): Promise<Record<Side, Place>> {
    const right = await this.room.hand('right');
    const left = await this.room.hand('left');
    const places = { right: { x: right.screenX, y: right.screenY + BELOW_PX }, left: { x: left.screenX, y: left.screenY + BELOW_PX } };
    await this.send('touchStart', [places.right]);
    await this.send('touchStart', [places.right, places.left]);
    for (const dx of [WAKE_PX, 0]) await this.slide({ right: { x: places.right.x + dx, y: places.right.y }, left: { x: places.left.x + dx, y: places.left.y } });
    return places;
  }

  private async slide(places: Record<Side, Place>): Promise<void> {
    this.fingers = places;
    await this.send('touchMove', [places.right, places.left]);
    // The browser hands movements of fingers to the page at its next frame, before what was asked of that frame.
    await this.room.page.evaluate(() => new Promise((resolve) => requestAnimationFrame(resolve)));
  }

  private async lift(): Promise<void> {
    if (this.fingers) await this.send('touchEnd', []);
    this.fingers = null;
    await this.room.advance(12);
  }

  private async button(side: Side, name: string | RegExp): Promise<Place> {
    const box = await this.room.page.getByRole('group', { name: `${side} hand` }).getByRole('button', { name }).boundingBox();
    return { x: box!.x + box!.width / 2, y: box!.y + box!.height / 2 };
  }

  private async send(type: 'touchStart' | 'touchMove' | 'touchEnd', places: readonly Place[]): Promise<void> {
    this.devTools ??= await this.room.page.context().newCDPSession(this.room.page);
    await this.devTools.send('Input.dispatchTouchEvent', { type, touchPoints: places.map((place, id) => ({ ...place, id })) });
  }
}

const between = (a: Place, b: Place, share: number): Place => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
