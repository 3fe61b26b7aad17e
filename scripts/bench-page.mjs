#!/usr/bin/env node
/**
 * Measures the built page in headless Chromium with the processor slowed four times: time to the first picture of the start page and
 * of the room, frames per second of the room while a hand moves, and script loaded up to each of them (gzip, kB).
 * Usage: npm run build && npm run bench:page [-- --json]. Figures of one noisy machine: quote them with the machine.
 */
import { execFileSync, spawn } from 'node:child_process';
import { gzipSync } from 'node:zlib';
import { chromium } from '@playwright/test';

const SLOWDOWN = 4;
const MOVE_S = 8;
const port = execFileSync(process.execPath, ['scripts/free-port.mjs'], { encoding: 'utf8' }).trim();
const chromePath = execFileSync(process.execPath, ['scripts/ensure-browser.mjs'], { encoding: 'utf8' }).trim();
const server = spawn(process.execPath, ['scripts/serve.mjs', '--strict', '--port', port], { stdio: ['ignore', 'pipe', 'inherit'] });
await new Promise((ready) => server.stdout.once('data', ready));

const browser = await chromium.launch({ executablePath: chromePath });
try {
  const figures = await measure(await browser.newPage({ viewport: { width: 1280, height: 720 } }));
  if (process.argv.includes('--json')) console.log(JSON.stringify(figures, null, 2));
  else for (const [name, value] of Object.entries(figures)) console.log(`${name.padEnd(34)} ${value}`);
} finally {
  await browser.close();
  server.kill();
}

async function measure(page) {
  let scriptBytes = 0;
  page.on('response', async (response) => {
    if (new URL(response.url()).pathname.endsWith('.js')) scriptBytes += gzipSync(await response.body().catch(() => Buffer.alloc(0))).length;
  });
  const devTools = await page.context().newCDPSession(page);
  await devTools.send('Emulation.setCPUThrottlingRate', { rate: SLOWDOWN });
  await page.goto(`http://127.0.0.1:${port}/?test&renderer=canvas`);
  await page.getByRole('button', { name: /^Start/ }).waitFor();
  const startMs = await page.evaluate(() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN);
  const startKb = scriptBytes / 1000;
  const pressed = await page.evaluate(() => performance.now());
  await page.getByRole('button', { name: /^Start/ }).click();
  await page.waitForFunction(() => window.trainer?.stepCount() > 0, undefined, { timeout: 60_000 });
  const roomMs = (await page.evaluate(() => performance.now())) - pressed;
  const roomKb = scriptBytes / 1000;
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
  for (let k = 0; k < MOVE_S * 20; k++) {
    await page.mouse.move(300 + 150 * Math.sin(k / 9), 300 + 90 * Math.cos(k / 7));
    await page.waitForTimeout(40);
  }
  const { times, simulated, seconds } = await frames;
  const gaps = times.slice(1).map((t, k) => t - times[k]).sort((a, b) => a - b);
  const at = (share) => gaps[Math.floor(gaps.length * share)];
  return {
    'processor slowed': `${SLOWDOWN} times`,
    'start page, first picture (ms)': Math.round(startMs),
    'script to it (kB gzip)': startKb.toFixed(1),
    'room, from Start to first step (ms)': Math.round(roomMs),
    'script to it, in all (kB gzip)': roomKb.toFixed(1),
    'frames per second, mean': ((times.length - 1) / seconds).toFixed(1),
    'frame gap, median / 95 % (ms)': `${at(0.5).toFixed(1)} / ${at(0.95).toFixed(1)}`,
    'simulated seconds per second': (simulated / seconds).toFixed(2),
  };
}
