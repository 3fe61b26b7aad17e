import { expect, test, type Page } from '@playwright/test';
import type { TrainerHook } from '../../src/app/run/testHook.ts';
import { expectAccessible } from './support/accessible.ts';

const START = '?test&renderer=canvas';
/** Chunks that only a room needs. */
const ROOM_CHUNKS = /stage|backend|renderer|pixi/i;

const faults: string[] = [];

test.beforeEach(async ({ page }) => {
  faults.length = 0;
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  await page.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => console.error(`content policy: ${event.violatedDirective} ${event.blockedURI}`));
  });
});

test.afterEach(() => expect(faults).toEqual([]));

/** Asks or tells the test hook of the page. */
const trainer = <Answer>(page: Page, ask: (hook: TrainerHook) => Answer): Promise<Answer> =>
  page.evaluate(`(${ask.toString()})(window.trainer)`) as Promise<Answer>;

async function openRoom(page: Page, coaching: 'shown' | 'silent' = 'shown'): Promise<void> {
  await page.goto(START);
  await page.getByLabel(coaching, { exact: true }).check();
  await page.getByRole('button', { name: /^Start/ }).click();
  await page.waitForFunction(() => 'trainer' in window);
  await trainer(page, (hook) => hook.pause());
}

async function endRun(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'End run' }).click();
  await page.getByRole('button', { name: 'End and see the report' }).click();
  await expect(page.getByRole('heading', { name: 'Report' })).toBeVisible();
}

test('the start page says what this is and is not, and is painted before any drawing library is asked for', async ({ page }) => {
  await page.goto(START);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Sterile-field trainer');
  for (const caution of ['not medical advice', 'local policy', 'cannot teach feel', 'employment']) await expect(page.getByRole('listitem').filter({ hasText: caution })).toBeVisible();
  await expect(page.getByRole('radio', { name: /about \d+ min/ })).not.toHaveCount(0);
  // What a run needs comes once the page is there to be read, not before.
  const loaded = await page.evaluate(() => {
    const painted = performance.getEntriesByName('first-contentful-paint')[0]!.startTime;
    return performance.getEntriesByType('resource').filter(({ startTime }) => startTime <= painted).map(({ name }) => name);
  });
  expect(loaded.length).toBeGreaterThan(0);
  expect(loaded.filter((name) => ROOM_CHUNKS.test(name))).toEqual([]);
});

test('every page and sheet is accessible', async ({ page }) => {
  test.slow();
  await page.goto(START);
  await expectAccessible(page);
  await openRoom(page);
  await trainer(page, (hook) => hook.advance(30));
  await expectAccessible(page);
  await page.keyboard.press('F1');
  await expect(page.getByRole('dialog', { name: 'Controls' })).toBeVisible();
  await expectAccessible(page);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('application')).toBeFocused();
  await page.keyboard.press('p');
  await expect(page.getByRole('dialog', { name: 'Paused' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Go on' }).click();
  await endRun(page);
  await expectAccessible(page);
});

test('keys alone lead from the start page through a run to its report', async ({ page }) => {
  await page.goto(START);
  const start = page.getByRole('button', { name: /^Start/ });
  for (let k = 0; k < 12 && !(await start.evaluate((button) => button === document.activeElement)); k++) await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => 'trainer' in window);
  await trainer(page, (hook) => hook.pause());

  await page.keyboard.down('d');
  await page.keyboard.down('j');
  await page.waitForTimeout(400);
  await page.keyboard.up('d');
  await page.keyboard.up('j');
  await trainer(page, (hook) => hook.advance(30));
  const moved = await trainer(page, (hook) => hook.commandsSoFar().flatMap(({ command }) => (command.type === 'hand.move' ? [command.hand] : [])));
  expect(new Set(moved)).toEqual(new Set(['left', 'right']));

  await page.keyboard.press('b');
  await page.keyboard.press('2');
  await page.keyboard.press('1');
  await trainer(page, (hook) => hook.advance(1));
  const ordered = await trainer(page, (hook) => hook.commandsSoFar().map(({ command }) => command));
  expect(ordered).toContainEqual({ type: 'notice' });
  expect(ordered).toContainEqual({ type: 'remedy.start', remedy: 'changeGlove', thing: 'right' });

  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: /^Pause/ })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('application')).toBeFocused();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'End and see the report' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Report' })).toBeFocused();
});

test('under silent coaching nothing is said about sterility', async ({ page }) => {
  await openRoom(page, 'silent');
  await trainer(page, (hook) => hook.advance(240));
  await expect(page.getByLabel('Patterns in the room')).toHaveCount(0);
  await expect(page.locator('.call-out')).toHaveCount(0);
  const hands = await page.locator('.hand-card').allInnerTexts();
  expect(hands.join(' ')).not.toMatch(/sterile/);
});

test('a press on the other hand leads it, and the first keeps its place', async ({ page }) => {
  await openRoom(page);
  const [right, left] = await trainer(page, (hook) => [hook.hand('right'), hook.hand('left')] as const);
  await page.mouse.move(left.screenX, left.screenY);
  await page.mouse.down();
  await page.mouse.up();
  await page.mouse.move(left.screenX - 40, left.screenY, { steps: 10 });
  await trainer(page, (hook) => hook.advance(120));
  const [rightAfter, leftAfter] = await trainer(page, (hook) => [hook.hand('right'), hook.hand('left')] as const);
  expect(Math.abs(rightAfter.x - right.x)).toBeLessThan(0.005);
  expect(leftAfter.x).toBeLessThan(left.x - 0.03);
  await expect(page.getByRole('button', { name: /^Left hand/ })).toHaveAttribute('aria-pressed', 'true');
});

test('two fingers lead two hands', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ hasTouch: true, viewport: { width: 1180, height: 820 }, ...(baseURL ? { baseURL } : {}) });
  const page = await context.newPage();
  await openRoom(page);
  const [right, left] = await trainer(page, (hook) => [hook.hand('right'), hook.hand('left')] as const);
  const devTools = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', down: number): Promise<unknown> =>
    devTools.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: type === 'touchEnd' ? [] : [right, left].map(({ screenX, screenY }, id) => ({ x: screenX, y: screenY + down, id })),
    });
  await touch('touchStart', 0);
  for (let k = 1; k <= 20; k++) await touch('touchMove', -4 * k);
  await touch('touchEnd', 0);
  await trainer(page, (hook) => hook.advance(120));
  const after = await trainer(page, (hook) => [hook.hand('right'), hook.hand('left')] as const);
  expect(after[0].y).toBeGreaterThan(right.y + 0.05);
  expect(after[1].y).toBeGreaterThan(left.y + 0.05);
  await expect(page.getByRole('group', { name: 'right hand' }).getByRole('button', { name: 'Grip' })).toBeVisible();
  await context.close();
});

test('a saved run opens again, and its recording verifies', async ({ page }) => {
  await openRoom(page);
  await trainer(page, (hook) => hook.advance(150));
  await endRun(page);
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the run file' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^run-[a-z0-9-]+-\d{8}-\d{4}-[0-9a-f]{6}\.json\.gz$/);
  const path = await download.path();

  await page.getByRole('button', { name: 'Start page' }).click();
  await page.getByLabel('Run or scenario file').setInputFiles(path);
  await expect(page.getByRole('heading', { name: 'Report' })).toBeVisible();
  await page.getByRole('button', { name: 'Verify the recording' }).click();
  await expect(page.getByText('The recording verifies')).toBeVisible({ timeout: 30_000 });
});

test('files of other kinds are answered with a sentence', async ({ page }) => {
  await page.goto(START);
  const open = (name: string, content: string | Buffer): Promise<void> =>
    page.getByLabel('Run or scenario file').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });
  const answer = page.getByRole('alert');
  await open('empty.json', '');
  await expect(answer).toContainText('empty');
  await open('letter.json', 'Dear reader');
  await expect(answer).toContainText('not JSON');
  await open('other.json', '{"format":"other"}');
  await expect(answer).toContainText('not a run');
  await open('cut.json.gz', Buffer.from([0x1f, 0x8b, 8, 0, 1]));
  await expect(answer).toContainText('damaged');
  await open('scenario.json', '{"format":"sterile-field-scenario","version":1,"id":"x","title":"My room","summary":"Mine.","seed":1,"station":"field","minutes":99}');
  await expect(answer).toContainText('minutes');
  await open('scenario.json', '{"format":"sterile-field-scenario","version":1,"id":"mine","title":"My room","summary":"Mine.","seed":1,"station":"field"}');
  await expect(answer).toBeEmpty();
  await expect(page.getByRole('radio', { name: /My room/ })).toBeChecked();
});

test('a run that was left can be taken up again where it was, or closed', async ({ page }) => {
  await openRoom(page);
  await trainer(page, (hook) => hook.advance(200));
  await expect(page.getByRole('application')).toBeFocused();
  await page.keyboard.press('p');
  await page.getByRole('button', { name: 'Leave for now' }).click();
  await page.getByRole('button', { name: 'Go on' }).click();
  await page.waitForFunction(() => 'trainer' in window);
  expect(await trainer(page, (hook) => hook.stepCount())).toBeGreaterThanOrEqual(200);
  await page.getByRole('button', { name: 'Leave for now' }).click();
  await page.getByRole('button', { name: 'Close and see the report' }).click();
  await expect(page.getByRole('heading', { name: 'Report' })).toBeVisible();
});
