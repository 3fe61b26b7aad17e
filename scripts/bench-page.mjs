#!/usr/bin/env node
/**
 * Measures the built page in headless Chromium with the processor slowed four times: time to the first picture of the start page and
 * of the room, frames per second of the page and of the painted room while a hand moves, and script loaded up to each of them (gzip,
 * kB). The browser slows the page's thread alone: workers (the painter, the room that settles ahead) run at full speed.
 * Usage: npm run build && npm run bench:page [-- --json] [-- --runs 3] [-- --dir dist] [-- --scenario sheath-short]. The best of the runs is quoted: whatever else
 * the machine does only makes it worse. Quote figures with the machine.
 */
import { execFileSync, spawn } from 'node:child_process';
import { parseArgs } from 'node:util';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';

const SLOWDOWN = 4;
const MOVE_S = 8;
/** How long somebody reads the start page before pressing Start. */
const READ_MS = 5000;

const { values } = parseArgs({ options: { json: { type: 'boolean' }, runs: { type: 'string', default: '1' }, dir: { type: 'string', default: 'dist' }, scenario: { type: 'string' } } });
const port = execFileSync(process.execPath, ['scripts/free-port.mjs'], { encoding: 'utf8' }).trim();
const chromePath = execFileSync(process.execPath, ['scripts/ensure-browser.mjs'], { encoding: 'utf8' }).trim();
const server = spawn(process.execPath, ['scripts/serve.mjs', '--strict', '--port', port, '--dir', values.dir], { stdio: ['ignore', 'pipe', 'inherit'] });
await new Promise((ready) => server.stdout.once('data', ready));

const browser = await chromium.launch({ executablePath: chromePath });
try {
  const runs = [];
  for (let k = 0; k < Number(values.runs); k++) runs.push({ ...(await measureStart()), ...(await measureRoom()) });
  const best = (name, better) => runs.map((run) => run[name]).sort((a, b) => better * (b - a))[0];
  const smoothest = runs.sort((a, b) => b.fps - a.fps)[0];
  const figures = {
    'processor slowed': `${SLOWDOWN} times`,
    'start page, first picture (ms)': Math.round(best('firstMs', -1)),
    'script to it (kB gzip)': best('startKb', -1).toFixed(1),
    'from Start at once to first step (ms)': Math.round(best('atOnceMs', -1)),
    'from Start after 5 s to first step (ms)': Math.round(best('roomMs', -1)),
    'script to it, in all (kB gzip)': best('roomKb', -1).toFixed(1),
    'frames per second, mean': smoothest.fps.toFixed(1),
    'frame gap, median / 95 % (ms)': `${smoothest.median.toFixed(1)} / ${smoothest.late.toFixed(1)}`,
    'rooms painted per second': smoothest.painted.toFixed(1),
    'simulated seconds per second': smoothest.pace.toFixed(2),
  };
  if (values.json) console.log(JSON.stringify(figures, null, 2));
  else for (const [name, value] of Object.entries(figures)) console.log(`${name.padEnd(42)} ${value}`);
} finally {
  await browser.close();
  server.kill();
}

/** A fresh page with its scripts, slowed, after its first picture; `script` counts what was loaded. */
async function openPage() {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
  const page = await context.newPage();
  const script = { bytes: 0 };
  page.on('response', async (response) => {
    if (new URL(response.url()).pathname.endsWith('.js')) script.bytes += gzipSync(await response.body().catch(() => Buffer.alloc(0))).length;
  });
  const devTools = await context.newCDPSession(page);
  await devTools.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.goto(`http://127.0.0.1:${port}/?test&renderer=canvas${values.scenario ? `&scenario=${values.scenario}` : ''}`);
  await page.getByRole('button', { name: /^Start/ }).waitFor();
  return { page, context, script };
}

/** Milliseconds from pressing Start to the first step of the room. */
async function pressStart(page) {
  const pressed = await page.evaluate(() => performance.now());
  await page.getByRole('button', { name: /^Start/ }).click();
  await page.waitForFunction(() => window.trainer?.stepCount() > 0, undefined, { timeout: 60_000 });
  return (await page.evaluate(() => performance.now())) - pressed;
}

async function measureStart() {
  const { page, context, script } = await openPage();
  const firstMs = await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN);
  const startKb = script.bytes / 1000;
  const atOnceMs = await pressStart(page);
  await context.close();
  return { firstMs, startKb, atOnceMs };
}

async function measureRoom() {
  const { page, context, script } = await openPage();
  await page.waitForTimeout(READ_MS);
  const roomMs = await pressStart(page);
  const roomKb = script.bytes / 1000;
  const painter = page.workers().find((worker) => worker.url().includes('stageWorker'));
  await painter?.evaluate(() => {
    const post = self.postMessage.bind(self);
    self.painted = 0;
    self.postMessage = (message, ...more) => {
      if (message?.kind === 'painted') self.painted++;
      post(message, ...more);
    };
  });
  const frames = page.evaluate(
    (ms) =>
      new Promise((done) => {
        const times = [];
        const steps = window.trainer.stepCount();
        const begin = performance.now();
        const tick = (now) => {
          times.push(now);
          if (now - begin < ms) requestAnimationFrame(tick);
          else done({ times, simulated: (window.trainer.stepCount() - steps) / 120, seconds: (now - begin) / 1000 });
        };
        requestAnimationFrame(tick);
      }),
    MOVE_S * 1000,
  );
  const paintedSoFar = () => painter?.evaluate(() => ({ count: self.painted, seconds: performance.now() / 1000 })) ?? { count: NaN, seconds: NaN };
  const before = await paintedSoFar();
  for (let k = 0; k < MOVE_S * 20; k++) {
    await page.mouse.move(300 + 150 * Math.sin(k / 9), 300 + 90 * Math.cos(k / 7));
    await page.waitForTimeout(40);
  }
  const { times, simulated, seconds } = await frames;
  const after = await paintedSoFar();
  const painted = (after.count - before.count) / (after.seconds - before.seconds);
  await context.close();
  const gaps = times.slice(1).map((t, k) => t - times[k]).sort((a, b) => a - b);
  const at = (share) => gaps[Math.floor(gaps.length * share)];
  return { roomMs, roomKb, fps: (times.length - 1) / seconds, median: at(0.5), late: at(0.95), painted, pace: simulated / seconds };
}
