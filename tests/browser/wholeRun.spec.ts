import { expect, test } from '@playwright/test';
import { FieldWork } from './support/fieldWork.ts';
import { MouseHands } from './support/mouseHands.ts';
import { replaySaved } from './support/replaySaved.ts';
import { RoomPage } from './support/roomPage.ts';

test('a careful operator with a mouse: all six tasks, from the start page to a verified file without a break', async ({ page }) => {
  test.setTimeout(900_000);
  const room = await new RoomPage(page).start('A quiet room');
  const hands = new MouseHands(room);
  const work = new FieldWork(room, hands);
  await work.gel();
  await work.view();
  await page.screenshot({ path: 'test-results/whole-run-view.png' });
  await work.park();
  await work.anaesthetic();
  await work.ready();
  await page.screenshot({ path: 'test-results/whole-run-ready.png' });
  await work.putAway();
  await work.toGauze();
  await hands.drag('right', [-1.1, 1.3], [-1.42, 1.25]);
  expect(await room.tasksDone()).toEqual(['gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish']);
  expect(await room.rulesBroken()).toEqual([]);

  await room.finish();
  await page.screenshot({ path: 'test-results/whole-run-report.png', fullPage: true });
  await replaySaved(page, 0);
});
