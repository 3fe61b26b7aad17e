import { expect, test, type Locator, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { alternatives } from '../../src/core/debrief/alternatives.ts';
import { breakGraph } from '../../src/core/debrief/causeGraph.ts';
import { DebriefOfRun } from '../../src/core/debrief/DebriefOfRun.ts';
import { nextEvent } from '../../src/core/debrief/events.ts';
import { follow } from '../../src/core/debrief/follow.ts';
import type { RunLog } from '../../src/core/debrief/runLog.ts';
import { thingGraph } from '../../src/core/debrief/thingGraph.ts';
import { traceRun } from '../../src/core/debrief/traceRun.ts';
import { runFileErrorWords } from '../../src/core/recording/runFileError.ts';
import { readRunFile } from '../../src/core/recording/readRunFile.ts';
import { Run } from '../../src/core/run/run.ts';
import { followRows } from '../../src/app/debrief/follow/followRows.ts';
import { expectAccessible } from './support/accessible.ts';
import { MouseHands } from './support/mouseHands.ts';
import { RoomPage } from './support/roomPage.ts';

test.use({ hasTouch: true });

const faults: string[] = [];

test.beforeEach(async ({ page }) => {
  faults.length = 0;
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
});

test.afterEach(() => expect(faults).toEqual([]));

/** A run in which a hand goes to the face and then takes the gel, up to its report. */
async function brokenRun(page: Page): Promise<void> {
  const room = await new RoomPage(page).start('A quiet room');
  const hands = new MouseHands(room);
  await hands.palmTo('right', -0.3, 1.4);
  await hands.palmTo('right', -0.12, 1.5);
  await hands.palmTo('right', -0.03, 1.64);
  expect(await room.rulesBroken()).toEqual(['hand-on-face']);
  await page.keyboard.press('KeyB');
  await hands.palmTo('right', -0.3, 1.4);
  await hands.turn('right', -40);
  await hands.pick('right', 'gel');
  await hands.palmTo('right', -0.3, 1.3);
  await room.advance(240);
  await room.finish();
}

/** The same recording played again here, by the core alone. */
async function playedAgain(page: Page): Promise<RunLog> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the run file' }).click();
  const read = readRunFile(gunzipSync(readFileSync(await (await saving).path())).toString());
  if (!read.ok) throw new Error(runFileErrorWords(read.error));
  const debrief = new DebriefOfRun(read.value, () => {});
  for (const news of traceRun(read.value, (scenario, seed) => new Run(scenario, seed))) debrief.take(news);
  debrief.end();
  return debrief.log!;
}

const slider = (page: Page): Locator => page.getByRole('slider', { name: 'Time in the run' });
const stepOf = async (page: Page): Promise<number> => Number(await slider(page).getAttribute('aria-valuenow'));

/** Middle of the lanes of the timeline at a step, on the screen; the lanes begin and end where its first thin line does. */
async function onTimeline(page: Page, share: number): Promise<{ x: number; y: number }> {
  const line = (await page.locator('.timeline .lane-line').first().boundingBox())!;
  const box = (await slider(page).boundingBox())!;
  return { x: line.x + line.width * share, y: box.y + box.height - 8 };
}

test('a whole debrief: what went wrong, what it reached, what would have saved it', async ({ page }) => {
  test.setTimeout(600_000);
  await brokenRun(page);
  await page.getByRole('button', { name: 'Debrief' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Debrief' })).toBeVisible();
  const log = await playedAgain(page);
  await expect(page.getByRole('progressbar', { name: 'Played again' })).toHaveCount(0, { timeout: 120_000 });
  await expect(page.getByText('goes another way')).toHaveCount(0);

  // The chain is the core's, link by link.
  const nodes = thingGraph(breakGraph(log, 1)).nodes;
  const links = page.getByRole('tabpanel').locator('.chain-link');
  expect(nodes.length).toBeGreaterThan(1);
  await expect(links).toHaveCount(nodes.length);
  await expect(page.locator('.chain-overlay .chain-marker')).toHaveCount(nodes.length);
  await links.last().click();
  expect(await stepOf(page)).toBe(nodes.at(-1)!.step);

  await keysMove(page, log);
  await dragMoves(page, log);
  await fingerMoves(page, log);
  await playingMoves(page);
  await whatIfIsTold(page, log);
  await followIsListed(page, log);
  await everyPartIsAccessible(page);
  await smallScreensHoldIt(page);

  await page.getByRole('tab', { name: 'Breaks' }).click();
  await page.getByRole('button', { name: 'Report', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Report' })).toBeVisible();
});

async function keysMove(page: Page, log: RunLog): Promise<void> {
  await slider(page).focus();
  await page.keyboard.press('Home');
  expect(await stepOf(page)).toBe(0);
  await page.keyboard.press('ArrowRight');
  expect(await stepOf(page)).toBe(12);
  await page.keyboard.press('Shift+ArrowRight');
  expect(await stepOf(page)).toBe(132);
  // The break may lie before or behind this instant, as the machine had time to act.
  await page.keyboard.press('Home');
  await page.keyboard.press('KeyB');
  expect(await stepOf(page)).toBe(log.result.breaks[0]!.step);
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /break 1 begins/);
  const touch = nextEvent(log, 'touch', log.result.breaks[0]!.step, 1)!;
  await page.keyboard.press('KeyT');
  expect(await stepOf(page)).toBe(touch);
  await page.keyboard.press('Shift+KeyC');
  expect(await stepOf(page)).toBe(nextEvent(log, 'command', touch, -1));
  await page.keyboard.press('End');
  await expect(slider(page)).toHaveAttribute('aria-valuenow', (await slider(page).getAttribute('aria-valuemax'))!);
}

async function dragMoves(page: Page, log: RunLog): Promise<void> {
  const from = await onTimeline(page, 0.9);
  const to = await onTimeline(page, 0.25);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let k = 1; k <= 10; k++) await page.mouse.move(from.x + ((to.x - from.x) * k) / 10, from.y);
  await page.mouse.up();
  const perPixel = log.steps / (await page.locator('.timeline .lane-line').first().boundingBox())!.width;
  expect(Math.abs((await stepOf(page)) - 0.25 * log.steps)).toBeLessThan(2 * perPixel);
  // A tap on the break's mark leads to its beginning.
  const mark = (await page.locator('.timeline .diamond').boundingBox())!;
  await page.mouse.click(mark.x + mark.width / 2, mark.y + mark.height / 2);
  expect(await stepOf(page)).toBe(log.result.breaks[0]!.step);
}

/** One finger drags along the timeline, another drag moves the room. */
async function fingerMoves(page: Page, log: RunLog): Promise<void> {
  const devTools = await page.context().newCDPSession(page);
  const drag = async (from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> => {
    await devTools.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
    for (let k = 1; k <= 8; k++) await devTools.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [{ x: from.x + ((to.x - from.x) * k) / 8, y: from.y + ((to.y - from.y) * k) / 8 }] });
    await devTools.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  };
  await drag(await onTimeline(page, 0.3), await onTimeline(page, 0.6));
  const perPixel = log.steps / (await page.locator('.timeline .lane-line').first().boundingBox())!.width;
  expect(Math.abs((await stepOf(page)) - 0.6 * log.steps)).toBeLessThan(2 * perPixel);

  const marker = page.locator('.chain-overlay .true-place').first();
  const before = (await marker.boundingBox())!;
  const room = (await page.locator('.debrief-room').boundingBox())!;
  const middle = { x: room.x + room.width * 0.4, y: room.y + room.height * 0.6 };
  await drag(middle, { x: middle.x + 60, y: middle.y - 30 });
  await expect.poll(async () => Math.round((await marker.boundingBox())!.x - before.x)).toBe(60);
  await page.keyboard.press('Digit0');
}

async function playingMoves(page: Page): Promise<void> {
  await page.keyboard.press('Home');
  await page.getByLabel('Speed').selectOption('8');
  await page.getByRole('button', { name: 'Play' }).click();
  await expect.poll(() => stepOf(page)).toBeGreaterThan(120);
  await page.getByRole('button', { name: 'Pause' }).click();
  const stopped = await stepOf(page);
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
  expect(await stepOf(page)).toBe(stopped);
}

async function whatIfIsTold(page: Page, log: RunLog): Promise<void> {
  const told = alternatives(log, 1);
  const choices = page.getByRole('group', { name: 'What if' });
  await expect(choices.getByRole('radio')).toHaveCount(told.length + 1);
  for (const { title, sentence } of told) await expect(choices.getByText(title).locator('..')).toContainText(sentence);
  const best = told.at(-1)!;
  await choices.getByRole('radio', { name: best.title }).check();
  await expect(page.getByText(`What if: ${best.title}`)).toBeVisible();
  const spared = new Set(best.outcome.spared.map(({ surface }) => surface));
  const wholly = thingGraph(breakGraph(log, 1)).nodes.filter(({ parts }) => parts.every(({ surface }) => spared.has(surface)));
  await expect(page.locator('.chain-saved')).toHaveCount(wholly.length);

  // One's own: the first touch that is offered at the break is thought away.
  await slider(page).focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('KeyB');
  await page.getByText('Another touch undone, or another remedy').click();
  await page.getByRole('button', { name: 'Try' }).first().click();
  await expect(choices.getByRole('radio')).toHaveCount(told.length + 2);
  await expect(page.getByText(/^What if: Without this touch/)).toBeVisible();
  await choices.getByRole('radio', { name: 'As it was' }).check();
  await expect(page.getByText(/^What if: /)).toHaveCount(0);
}

async function followIsListed(page: Page, log: RunLog): Promise<void> {
  await page.getByLabel('follow').selectOption({ label: 'right glove' });
  const rows = followRows(follow(log, { object: 'glove.right' }));
  const listed = page.getByRole('tabpanel').locator('.row-button');
  await expect(listed).toHaveCount(rows.length);
  const changed = rows.findIndex((row) => row.changed);
  await expect(listed.nth(changed)).toContainText('became unsterile here');
  await listed.nth(changed).click();
  expect(await stepOf(page)).toBe(rows[changed]!.fromStep);
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /right glove became unsterile/);
  await expect(page.locator('.timeline .follow-lane .state-became')).not.toHaveCount(0);
}

async function everyPartIsAccessible(page: Page): Promise<void> {
  for (const layer of ['Hand paths', 'Heat map', 'Zones']) await page.getByRole('button', { name: layer }).click();
  for (const tab of ['Clearance', 'Events', 'Follow', 'Breaks']) {
    await page.getByRole('tab', { name: tab }).click();
    await expectAccessible(page);
  }
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  await expectAccessible(page);
  await page.keyboard.press('Escape');
}

async function smallScreensHoldIt(page: Page): Promise<void> {
  for (const [width, height] of [[820, 1180], [1180, 820], [1280, 720]] as const) {
    await page.setViewportSize({ width, height });
    expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width} by ${height}`).toBeLessThanOrEqual(width);
    await expect(page.getByRole('button', { name: 'Play' })).toBeInViewport();
    await expect(slider(page)).toBeInViewport();
  }
}
