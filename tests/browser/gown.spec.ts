import { expect, test, type Page } from '@playwright/test';
import { expectAccessible } from './support/accessible.ts';
import { GOWN_STAGES, Gowning, type GownRequest } from './support/gowning.ts';
import { KeyHands } from './support/keyHands.ts';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage } from './support/roomPage.ts';
import { TouchHands } from './support/touchHands.ts';

const SCENARIO = 'Gown and gloves with room to spare';
const TASKS = ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited'];
const BUTTONS: Readonly<Record<GownRequest, RegExp>> = { tieBack: /^Tie the back/, takeCard: /^Take the card/ };
const KEYS: Readonly<Record<GownRequest, string>> = { tieBack: 'BracketLeft', takeCard: 'BracketRight' };
/** What is marked after each stage under shown coaching: the next hold, by name; at the end that of the next station. */
const MARKED: Readonly<Record<string, string>> = {
  start: 'inner neck', lift: 'let it fall open here', fallOpen: 'left shoulder of the gown', otherShoulder: 'right sleeve and left sleeve', slipIn: 'up through the sleeve', stretch: 'cuff, from inside',
  tying: 'cuff, from inside', tie: 'cuff of the right glove', 'fetch-right': 'glove on the palm', 'lay-right': 'edge of the cuff', 'draw-right': 'into the glove', 'push-right': 'cuff of the left glove',
  'fetch-left': 'glove on the palm', 'lay-left': 'edge of the cuff', 'draw-left': 'into the glove', 'push-left': 'your half of the card', card: 'hold it out here', passCard: 'wait here', wait: 'sheath',
};

/** Requests whose buttons are marked after a stage, with what is on their keys: each until the assistant is at it. */
const DUE: Readonly<Record<string, readonly [string, string]>> = { stretch: ['Tie the back', '['], card: ['Take the card', ']'] };

async function expectMarked(page: Page, stage: string): Promise<void> {
  await expect(page.locator('.hint-holds'), `after ${stage}`).toHaveText(`Marked: ${MARKED[stage]!}`);
  const due = DUE[stage];
  await expect(page.locator('.request-due'), `after ${stage}`).toHaveText(due ? [due.join(' ')] : []);
  const asks = page.getByRole('region', { name: 'Next' }).getByText(/^Ask:/);
  await expect(asks, `after ${stage}`).toHaveText(due ? [`Ask: ${due[0].toLowerCase()} ${due[1]}`] : []);
  if (!due) return;
  await expect(page.locator('.request-due')).toHaveAccessibleDescription('Next');
  await expect(page.locator('.request-due')).toBeInViewport({ ratio: 1 });
}

/** Hint, requests and the buttons of both hands lie on the screen, whole and under nothing else. */
async function expectInSight(page: Page): Promise<void> {
  const needed = [page.locator('.hint'), page.locator('.hint-holds'), ...Object.values(BUTTONS).map((name) => page.getByRole('button', { name })), ...['Grip', 'Open', 'Use'].map((name) => page.locator('.corner').getByRole('button', { name, exact: true }))];
  for (const one of needed) {
    for (const element of await one.all()) {
      await expect(element).toBeInViewport({ ratio: 1 });
      expect(await element.evaluate((it) => {
        const { left, top, width, height } = it.getBoundingClientRect();
        const upper = document.elementFromPoint(left + width / 2, top + height / 2);
        return (it.contains(upper) || upper?.contains(it)) && it.scrollHeight <= it.clientHeight + 1;
      }), await element.textContent() ?? '').toBe(true);
    }
  }
}

/** The whole gowning and gloving without a break, to a file that verifies; a picture of the page after each stage. */
async function gown(room: RoomPage, work: Gowning, pictures: string, after: (stage: string) => Promise<void>, atEnd = async (): Promise<void> => undefined): Promise<void> {
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
  await atEnd();
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
  const work = new Gowning(room, new MouseHands(room), ask);
  await gown(room, work, 'gown-mouse', (stage) => expectMarked(page, stage), () => changeGlove(room, work));
});

/** The right glove changed by hand, with pictures and without a break. */
async function changeGlove(room: RoomPage, work: Gowning): Promise<void> {
  const { page } = room;
  const ask = async (): Promise<void> => {
    await page.getByRole('button', { name: /^Change a glove/ }).click();
    await page.getByRole('button', { name: /^Right glove/ }).click();
  };
  const STAGES: readonly (readonly [string, string, () => Promise<void>])[] = [
    ['changed', 'cuff of the right glove', () => work.haveGloveChanged(ask)],
    ['hangs', 'mouth of the glove', () => work.hangGlove()],
    ['slipped', 'edge of the cuff', () => work.slipIntoGlove()],
    ['drawnOver', 'sheath', () => work.drawOver()],
  ];
  for (const [stage, marked, play] of STAGES) {
    await test.step(stage, play);
    await page.screenshot({ path: `test-results/gown-mouse-${stage}.png` });
    expect(await room.rulesBroken(), `after ${stage}`).toEqual([]);
    await expect(page.locator('.hint-holds'), `after ${stage}`).toHaveText(`Marked: ${marked}`);
  }
}

test('an open gown that is held up at full stretch comes against the own clothes, and the hint warns before', async ({ page }) => {
  const room = await new RoomPage(page).start(SCENARIO, 'shown');
  const hands = new MouseHands(room);
  const work = new Gowning(room, hands, async () => undefined);
  for (const [stage, play] of GOWN_STAGES.slice(0, GOWN_STAGES.findIndex(([name]) => name === 'slipIn'))) await test.step(stage, () => play(work));
  expect(await room.rulesBroken()).toEqual([]);
  await hands.turn('right', 60);
  const { x } = await room.hand('right');
  for (let up = 0.58; up < 0.74 && !/close to your own clothes/.test((await page.locator('.hint').textContent()) ?? ''); up += 0.02) await hands.palmTo('right', x, 1.42 + up, 'fine');
  await expect(page.locator('.hint')).toContainText('close to your own clothes');
  expect(await room.rulesBroken()).toEqual([]);
  await page.screenshot({ path: 'test-results/gown-close-to-clothes.png' });
  await hands.palmTo('right', x, 1.42 + 0.74);
  await room.advance(120);
  expect(await room.rulesBroken()).toEqual(['sleeve-on-own-clothes']);
  await page.screenshot({ path: 'test-results/gown-on-clothes.png' });
});

test.describe('by touch', () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } });

  test('two fingers on a tablet put on gown and gloves, with all that is needed in sight, and save a file that verifies', async ({ page }) => {
    test.setTimeout(900_000);
    await page.goto('?test&renderer=canvas');
    await expectAccessible(page);
    await page.screenshot({ path: 'test-results/gown-touch-startPage.png' });
    const room = await new RoomPage(page).start(SCENARIO, 'shown');
    await expectAccessible(page);
    const hands = new TouchHands(room);
    const ask = (request: GownRequest): Promise<void> => hands.tap(page.getByRole('button', { name: BUTTONS[request] }));
    await gown(room, new Gowning(room, hands, ask), 'gown-touch', async (stage) => {
      await expectMarked(page, stage);
      await expectInSight(page);
    });
  });
});

test('keys alone put on gown and gloves from the start page to a file that verifies', async ({ page }) => {
  test.setTimeout(900_000);
  const room = new RoomPage(page);
  const hands = await KeyHands.on(room);
  await room.start(SCENARIO);
  await hands.holdTime();
  await expect(page.locator('.hint-holds')).toHaveCount(0);
  const nothingMarked = (): Promise<void> => expect(page.locator('.request-due')).toHaveCount(0);
  await gown(room, new Gowning(room, hands, (request) => page.keyboard.press(KEYS[request])), 'gown-keys', nothingMarked, () => hands.letTimeGo());
});
