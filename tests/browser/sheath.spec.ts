import { expect, test } from '@playwright/test';
import { expectAccessible } from './support/accessible.ts';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage } from './support/roomPage.ts';
import { SheathWork, type Request } from './support/sheathWork.ts';
import { TouchHands } from './support/touchHands.ts';

const TASKS = ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown'];
const STAGES = ['fetch', 'open', 'aside', 'gel', 'layPacket', 'bring', 'lower', 'takeProbe', 'letGo', 'draw', 'tail', 'bands', 'layDown'] as const;
const KEYS: Readonly<Record<Request, string>> = { bringProbe: 'KeyC', lower: 'KeyZ', letGo: 'KeyV', pullTail: 'Comma' };
const BUTTONS: Readonly<Record<Request, RegExp>> = { bringProbe: /^Bring the probe/, lower: /^Lower the probe/, letGo: /^Let go/, pullTail: /^Pull the tail/ };

/** The whole loading, to a file that verifies; a picture of the page after each stage. */
async function load(room: RoomPage, work: SheathWork, pictures: string): Promise<void> {
  const { page } = room;
  for (const stage of STAGES) {
    await test.step(stage, () => work[stage]());
    await page.screenshot({ path: `test-results/${pictures}-${stage}.png` });
    expect(await room.rulesBroken(), `after ${stage}`).toEqual([]);
  }
  expect(await room.tasksDone()).toEqual(TASKS);
  await room.finish();
  await page.screenshot({ path: `test-results/${pictures}-report.png`, fullPage: true });
  await replaySaved(page, 0);
}

test('a careful operator with a mouse loads the probe, asks by the key that is marked, and saves a file that verifies', async ({ page }) => {
  test.setTimeout(900_000);
  const room = await new RoomPage(page).start('Sheathing the probe', 'shown');
  const work = new SheathWork(room, new MouseHands(room), async (request) => {
    await expect(page.locator('.request-due')).toHaveText(BUTTONS[request]);
    await page.screenshot({ path: `test-results/sheath-mouse-${request}-due.png` });
    await page.keyboard.press(KEYS[request]);
  });
  await load(room, work, 'sheath-mouse');
});

test.describe('by touch', () => {
  test.use({ hasTouch: true });

  test('two fingers load the probe, ask by button, and save a file that verifies', async ({ page }) => {
    test.setTimeout(900_000);
    const room = await new RoomPage(page).start('Sheathing the probe');
    const hands = new TouchHands(room);
    await hands.palmsTo({ right: [-0.3, 1.4], left: [0.3, 1.38] });
    const [right, left] = [await room.hand('right'), await room.hand('left')];
    for (const off of [right.x + 0.3, right.y - 1.4, left.x - 0.3, left.y - 1.38]) expect(Math.abs(off)).toBeLessThan(0.01);
    const panel = page.getByRole('region', { name: 'Ask the assistant' });
    await load(room, new SheathWork(room, hands, (request) => hands.tap(panel.getByRole('button', { name: BUTTONS[request] }))), 'sheath-touch');
  });
});

test('the page of a loading is accessible, and keys alone reach every request of it', async ({ page }) => {
  const room = await new RoomPage(page).start('Sheathing the probe', 'shown');
  await expectAccessible(page);
  await page.locator('.room').focus();
  await page.keyboard.press('Escape');
  const names: string[] = [];
  const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.textContent ?? '');
  for (let k = 0; k < 40 && !names.includes('Take this away T'); k++) {
    await page.keyboard.press('Tab');
    names.push(await focused());
  }
  expect(names.slice(-9)).toEqual(['Bring the probe C', 'Lower the probe Z', 'Pull the tail ,', 'Hold the cord 7', 'Give slack G', 'Let go V', 'Stop X', 'Wipe my face 8', 'Take this away T']);
  for (let k = 0; k < 8; k++) await page.keyboard.press('Shift+Tab');
  expect(await focused()).toBe('Bring the probe C');
  await page.keyboard.press('Enter');
  await room.advance(120);
  expect(await room.assistantDoes()).toBe('coming');
  await expectAccessible(page);

  await page.keyboard.press('Escape');
  await expect(page.locator('.room')).toBeFocused();
  await page.keyboard.press('KeyX');
  await room.advance(120);
  expect(await room.assistantDoes()).toBe('stopped');
});
