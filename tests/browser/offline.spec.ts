import { spawn, type ChildProcess } from 'node:child_process';
import { expect, test, type Page } from '@playwright/test';

const servers: ChildProcess[] = [];
test.afterEach(() => {
  for (const server of servers.splice(0)) server.kill();
});

/** A server of the built page that a test may stop. */
async function ownServer(...words: string[]): Promise<{ address: string; server: ChildProcess }> {
  const server = spawn(process.execPath, ['scripts/serve.mjs', '--port', '0', ...words]);
  servers.push(server);
  const address = await new Promise<string>((resolve) => void server.stdout.on('data', (text: Buffer) => resolve(/http:\S+/.exec(text.toString())![0])));
  return { address, server };
}

/** The page shows its first words, and nothing failed on the way. */
async function expectWhole(page: Page, address: string): Promise<void> {
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(faults).toEqual([]);
}

test('works from any folder of a server', async ({ page }) => {
  const { address } = await ownServer('--base', '/teaching/sterile field/');
  expect(address).toMatch(/\/teaching\/sterile%20field\/$/);
  await expectWhole(page, address);
});

test('works without a network after the first visit, under any query', async ({ page, context }) => {
  const { address, server } = await ownServer();
  await expectWhole(page, address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  server.kill();
  await context.setOffline(true);
  await expectWhole(page, address);
  await expectWhole(await context.newPage(), `${address}?anything=1`);
});
