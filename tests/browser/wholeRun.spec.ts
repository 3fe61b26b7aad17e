import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { MouseHands } from './support/mouseHands.ts';
import { RoomPage } from './support/roomPage.ts';

test('a careful operator with a mouse: from the start page to a verified file without a break', async ({ page }) => {
  test.setTimeout(400_000);
  const room = await new RoomPage(page).start('A quiet room');
  const hands = new MouseHands(room);
  const site = await room.site();

  await hands.take('right');
  await hands.turn(-40);
  await hands.pick('gel');
  await hands.endTo('gel', site.x - 0.05, site.y + 0.16);
  await hands.endTo('gel', site.x, site.y + 0.04, 1);
  await hands.use(1.2);
  expect(await room.tasksDone()).toContain('gel');
  await hands.endTo('gel', site.x - 0.1, site.y + 0.2);
  await hands.palmTo(-0.5, 1.46);
  await hands.palmTo(-1.42, 1.36);
  await hands.click();
  await room.advance(60);
  await hands.palmTo(-0.5, 1.46);
  await hands.palmTo(-0.3, 1.33);

  await hands.take('left');
  await hands.turn(-50);
  await hands.pick('probe');
  await hands.palmTo(0.16, 1.2);
  await hands.turn(-5);
  await hands.endTo('probe', site.x + 0.06, site.y + 0.13);
  await hands.endTo('probe', site.x, site.y + 0.003, 1);
  await room.advance(500);
  expect(await room.tasksDone()).toContain('view');

  await room.page.screenshot({ path: 'test-results/whole-run-view.png' });
  await room.finish();
  await page.screenshot({ path: 'test-results/whole-run-report.png', fullPage: true });
  const folder = mkdtempSync(path.join(tmpdir(), 'whole-run-'));
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the run file' }).click();
  const file = path.join(folder, (await saving).suggestedFilename());
  await (await saving).saveAs(file);
  const replay = spawnSync('npm', ['run', '--silent', 'replay', '--', file, '--json'], { encoding: 'utf8' });
  expect(replay.status, replay.stdout + replay.stderr).toBe(0);
  rmSync(folder, { recursive: true, force: true });
});
