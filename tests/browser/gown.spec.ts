import { expect, test, type Page } from '@playwright/test';
import { expectAccessible } from './support/accessible.ts';
import { GOWN_STAGES, Gowning, type GownRequest } from './support/gowning.ts';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage } from './support/roomPage.ts';

const SCENARIO = 'Gown and gloves with room to spare';
const TASKS = ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited'];
const BUTTONS: Readonly<Record<GownRequest, RegExp>> = { tieBack: /^Tie the back/, takeCard: /^Take the card/ };
/** What is marked after each stage under shown coaching: the next hold, by name. */
const MARKED: Readonly<Record<string, string | null>> = {
  start: 'inner neck', lift: 'let it fall open here', fallOpen: 'left shoulder of the gown', otherShoulder: 'right sleeve and left sleeve', slipIn: 'up through the sleeve', stretch: 'cuff, from inside',
  tie: 'cuff of the right glove', 'fetch-right': 'glove on the palm', 'lay-right': 'edge of the cuff', 'draw-right': 'into the glove', 'push-right': 'cuff of the left glove',
  'fetch-left': 'glove on the palm', 'lay-left': 'edge of the cuff', 'draw-left': 'into the glove', 'push-left': 'your half of the card', card: 'hold it out here', passCard: 'wait here', wait: null,
};

async function expectMarked(page: Page, stage: string): Promise<void> {
  const marked = MARKED[stage]!;
  const line = page.locator('.hint-holds');
  if (marked) await expect(line, `after ${stage}`).toHaveText(`Marked: ${marked}`);
  else await expect(line, `after ${stage}`).toHaveCount(0);
}

/** The whole gowning and gloving without a break, to a file that verifies; a picture of the page after each stage. */
async function gown(room: RoomPage, work: Gowning, pictures: string, after: (stage: string) => Promise<void>): Promise<void> {
  const { page } = room;
  const look = async (stage: string): Promise<void> => {
    await after(stage);
    await page.screenshot({ path: `test-results/${pictures}-${stage}.png` });
  };
  await look('start');
  for (const [stage, play] of GOWN_STAGES) {
    await test.step(stage, () => play(work));
    await look(stage);
    expect(await room.rulesBroken(), `after ${stage}`).toEqual([]);
  }
  expect(await room.tasksDone()).toEqual(TASKS);
  await expect(page.getByText('2 of 3')).toBeVisible();
  await room.finish();
  await expectAccessible(page);
  await page.screenshot({ path: `test-results/${pictures}-report.png`, fullPage: true });
  await replaySaved(page, 0);
}

test('gown and gloves with a mouse, from the start page to a verified report, with each next hold marked', async ({ page }) => {
  test.setTimeout(900_000);
  const room = await new RoomPage(page).start(SCENARIO, 'shown');
  await expect(page.getByRole('heading', { name: 'Gown and glove' })).toBeVisible();
  await expect(page.locator('.hint')).toHaveText('Take the folded gown by its neck, in the middle, and lift it straight up.');
  const ask = (request: GownRequest): Promise<void> => page.getByRole('button', { name: BUTTONS[request] }).click();
  await gown(room, new Gowning(room, new MouseHands(room), ask), 'gown-mouse', (stage) => expectMarked(page, stage));
});
