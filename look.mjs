import { chromium } from '@playwright/test';
import { spawn, execFileSync } from 'node:child_process';
const port = execFileSync(process.execPath, ['scripts/free-port.mjs'], { encoding: 'utf8' }).trim();
const server = spawn(process.execPath, ['scripts/serve.mjs', '--strict', '--port', port], { stdio: ['ignore', 'pipe', 'inherit'] });
await new Promise((r) => server.stdout.once('data', r));
const executablePath = execFileSync(process.execPath, ['scripts/ensure-browser.mjs'], { encoding: 'utf8' }).trim();
const browser = await chromium.launch({ executablePath });
try {
  const page = await (await browser.newContext({ viewport: { width: 1280, height: 720 } })).newPage();
  page.on('console', (m) => m.type() === 'error' && console.log(m.text()));
  await page.goto(`http://127.0.0.1:${port}/?test&renderer=canvas&scenario=sheath-short`);
  await page.waitForTimeout(2000);
  await page.screenshot({ path: '/tmp/sbshots/v2/startpage.png' });
  await page.locator('input[type=file]').setInputFiles('/tmp/loading.json');
  await page.getByRole('button', { name: 'Debrief' }).click({ timeout: 60000 });
  await page.getByRole('heading', { level: 1, name: 'Debrief' }).waitFor({ timeout: 60000 });
  await page.getByRole('slider', { name: 'Time in the run' }).waitFor({ timeout: 120000 });
  await page.waitForTimeout(30000);
  await page.keyboard.press('Home');
  let at = 0;
  for (const [name, s, key] of [['held', 10], ['open', 14], ['gel', 21], ['over', 46], ['overField', 46, '0'], ['in', 52], ['taken', 56], ['drawn', 62], ['drawnWide', 62, '9'], ['tail', 72], ['bands', 84], ['end', 95]]) {
    while (at < s) { await page.keyboard.press(s - at >= 10 ? 'PageUp' : 'Shift+ArrowRight'); at += s - at >= 10 ? 10 : 1; }
    if (key) await page.keyboard.press(key);
    await page.waitForTimeout(2500);
    await page.screenshot({ path: `/tmp/sbshots/v2/debrief-${name}.png` });
  }
} finally { await browser.close(); server.kill(); }
