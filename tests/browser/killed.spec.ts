import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, expect, test, type BrowserContext, type Page } from '@playwright/test';

const PAGE = '?test&renderer=canvas';
/** A run may lose its last second when the browser dies. */
const LOST_STEPS_MAX = 120;

const stepCount = (page: Page): Promise<number> => page.evaluate(() => (window as unknown as { trainer: { stepCount(): number } }).trainer.stepCount());

test('a killed browser loses at most the last second of a run, which can then go on', async ({ baseURL }) => {
  test.slow();
  const profile = mkdtempSync(path.join(tmpdir(), 'profile-'));
  const open = (): Promise<BrowserContext> => chromium.launchPersistentContext(profile, { executablePath: process.env['CHROME_PATH']!, viewport: { width: 1280, height: 720 } });

  const before = await open();
  const page = await before.newPage();
  await page.goto(`${baseURL}${PAGE}`);
  await page.getByRole('button', { name: /^Start/ }).click();
  await page.waitForFunction(() => 'trainer' in window);
  await page.mouse.move(500, 300);
  await page.mouse.move(800, 420, { steps: 20 });
  await expect.poll(() => stepCount(page), { timeout: 60_000 }).toBeGreaterThan(300);
  const devTools = await before.newCDPSession(page);
  const played = await stepCount(page);
  await devTools.send('Browser.crash').catch(() => undefined);
  await before.close().catch(() => undefined);

  const after = await open();
  const again = await after.newPage();
  await again.goto(`${baseURL}${PAGE}`);
  await again.getByRole('button', { name: 'Go on' }).click();
  await again.waitForFunction(() => 'trainer' in window);
  expect(await stepCount(again)).toBeGreaterThanOrEqual(played - LOST_STEPS_MAX);
  await after.close();
  rmSync(profile, { recursive: true, force: true });
});
