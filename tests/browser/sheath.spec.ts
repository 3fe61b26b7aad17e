import { expect, test } from '@playwright/test';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage } from './support/roomPage.ts';
import { SheathWork, type Ask } from './support/sheathWork.ts';

const TASKS = ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown'];
const STEPS = ['fetch', 'open', 'aside', 'gel', 'afterGel', 'bring', 'lower', 'takeProbe', 'letGo', 'draw', 'tail', 'bands', 'layDown'] as const;
const KEYS: Readonly<Record<Parameters<Ask>[0], string>> = { bringProbe: 'KeyC', lower: 'KeyZ', letGo: 'KeyV', pullTail: 'Comma' };

async function load(room: RoomPage, work: SheathWork, pictures: string): Promise<void> {
  for (const step of STEPS) {
    await test.step(step, () => work[step]());
    await room.page.screenshot({ path: `test-results/${pictures}-${step}.png` });
    expect(await room.rulesBroken(), `after ${step}`).toEqual([]);
  }
  expect(await room.tasksDone()).toEqual(TASKS);
}

test('a careful operator with a mouse loads the probe, asks by key, and saves a file that verifies', async ({ page }) => {
  test.setTimeout(900_000);
  const room = await new RoomPage(page).start('Sheathing the probe', 'shown');
  await page.screenshot({ path: 'test-results/sheath-mouse-start.png' });
  const work = new SheathWork(room, new MouseHands(room), (request) => page.keyboard.press(KEYS[request]));
  await load(room, work, 'sheath-mouse');
  await room.finish();
  await page.screenshot({ path: 'test-results/sheath-mouse-report.png', fullPage: true });
  await replaySaved(page, 0);
});
