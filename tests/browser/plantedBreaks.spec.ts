import { expect, test, type Page } from '@playwright/test';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage, type Side, type Spot } from './support/roomPage.ts';

test.use({ hasTouch: true });

interface HeldPad {
  axes: number[];
  /** How often the page has asked for pads. */
  asked: number;
}

/**
 * A pad that the test holds, in the place of the browser's own method and given as the browser gives pads: four places, of which the
 * second is taken, and a new snapshot each time it is asked for. No browser lets a test plug in a real one.
 */
async function connectPad(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const held: HeldPad = { axes: [0, 0, 0, 0], asked: 0 };
    const button = { pressed: false, touched: false, value: 0 };
    Object.assign(window, { padOfTheTest: held });
    Navigator.prototype.getGamepads = function () {
      held.asked++;
      const pad = Object.freeze({ connected: true, id: 'pad of the test', index: 1, mapping: 'standard', timestamp: performance.now(), axes: Object.freeze([...held.axes]), buttons: Object.freeze(Array.from({ length: 17 }, () => button)) });
      return [null, pad as unknown as Gamepad, null, null];
    };
  });
}

const heldPad = (page: Page): Promise<HeldPad> => page.evaluate(() => ({ ...(window as unknown as { padOfTheTest: HeldPad }).padOfTheTest }));
const setAxes = (page: Page, axes: number[]): Promise<void> => page.evaluate((values) => void ((window as unknown as { padOfTheTest: HeldPad }).padOfTheTest.axes = values), axes);

/** Lets real time pass, in which keys and sticks lead, and makes steps, until the hand is where it should be. */
async function leadUntil(room: RoomPage, side: Side, there: (hand: Spot) => boolean, look?: () => Promise<unknown>): Promise<void> {
  let before = performance.now();
  for (let k = 0; k < 400; k++) {
    await look?.();
    if (there(await room.hand(side))) return;
    await room.page.waitForTimeout(10);
    const now = performance.now();
    await room.advance(Math.ceil((now - before) * 0.12));
    before = now;
  }
  throw new Error(`the ${side} hand did not get there`);
}

async function key(room: RoomPage, code: string, side: Side, there: (hand: Spot) => boolean): Promise<void> {
  await room.page.keyboard.down(code);
  await leadUntil(room, side, there);
  await room.page.keyboard.up(code);
}

/** One finger drags the left hand to (x, y). */
async function fingerTo(room: RoomPage, x: number, y: number): Promise<void> {
  const devTools = await room.page.context().newCDPSession(room.page);
  const from = await room.hand('left');
  const to = await room.screenOf(x, y);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: { x: number; y: number }[]) => devTools.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await touch('touchStart', [{ x: from.screenX, y: from.screenY }]);
  const strides = 60;
  for (let k = 1; k <= strides; k++) {
    await touch('touchMove', [{ x: from.screenX + ((to.x - from.screenX) * k) / strides, y: from.screenY + ((to.y - from.screenY) * k) / strides }]);
    await room.advance(4);
  }
  await touch('touchEnd', []);
  await room.advance(60);
}

test('three planted breaks by keys, finger and pad: reported, saved and replayed', async ({ page }) => {
  test.setTimeout(300_000);
  await connectPad(page);
  const room = await new RoomPage(page).start('A quiet room', 'shown');

  // Keys: the right hand goes up to the itching face.
  await key(room, 'KeyD', 'right', ({ x }) => x > -0.06);
  await key(room, 'KeyW', 'right', ({ y }) => y > 1.55);
  await key(room, 'KeyS', 'right', ({ y }) => y < 1.4);
  expect(await room.rulesBroken()).toEqual(['hand-on-face']);
  await page.keyboard.press('KeyB');
  await room.advance(4);

  // Finger: the left hand is drawn up, out of the operator's sight.
  await fingerTo(room, 0.42, 1.5);
  await fingerTo(room, 0.42, 1.86);
  expect(await room.rulesBroken()).toEqual(['hand-on-face', 'hand-out-of-sight']);
  await fingerTo(room, 0.42, 1.5);
  await fingerTo(room, 0.3, 1.35);

  // Pad: its right stick takes the left hand aside until the sleeve meets the pole. The page asks the browser for pads at each frame.
  const { asked } = await heldPad(page);
  expect(asked).toBeGreaterThan(0);
  await setAxes(page, [0, 0, 0.6, 0]);
  let broken = 2;
  await leadUntil(room, 'left', () => broken > 2, async () => (broken = (await room.rulesBroken()).length));
  await setAxes(page, [0, 0, 0, 0]);
  await room.advance(60);
  expect((await heldPad(page)).asked).toBeGreaterThan(asked);
  expect(await room.rulesBroken()).toEqual(['hand-on-face', 'hand-out-of-sight', 'sleeve-on-pole']);
  await page.screenshot({ path: 'test-results/planted-breaks.png' });

  await room.finish();
  await expect(page.getByRole('article')).toHaveCount(3);
  await page.screenshot({ path: 'test-results/planted-report.png', fullPage: true });
  await replaySaved(page, 3);
});
