/**
 * Takes pictures of the fixtures and measures a frame: `node src/app/canvas/dev/shots.mjs <folder> [time] [only]`.
 * Needs a Chromium named by CHROMIUM, or at /usr/bin/chromium.
 */
import { chromium } from '@playwright/test';
import { createServer } from 'vite';

const [folder = '/tmp/canvas-shots', mode = '', only = ''] = process.argv.slice(2);
const SHOTS = [
  ['field-1280', 1280, 720, 'scene=field'],
  ['field-1600', 1600, 900, 'scene=field'],
  ['marked-1280', 1280, 720, 'scene=marked&shown=1'],
  ['room-1600', 1600, 900, 'scene=field&framing=room'],
  ['room-shown-1600', 1600, 900, 'scene=marked&framing=room&shown=1'],
  ['open-1280', 1280, 720, 'scene=open&shown=1'],
  ['aside-1280', 1280, 720, 'scene=aside&framing=reach'],
];

const server = await createServer({ root: new URL('.', import.meta.url).pathname, configFile: false, logLevel: 'error', server: { port: 5391, hmr: false, watch: null, fs: { allow: ['/'] } }, optimizeDeps: { include: ['pixi.js', 'pixi.js/unsafe-eval', 'zod'] }, cacheDir: '/tmp/canvas-dev-cache' });
await server.listen();
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium' });
try {
  for (const [name, width, height, query] of SHOTS) {
    if (only !== '' && !name.includes(only)) continue;
    const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: Number(process.env.DENSITY ?? 1) });
    page.on('pageerror', (error) => console.error(name, error.message));
    page.on('console', (message) => { if (message.type() === 'error') console.error(name, message.text()); });
    await page.goto(`http://localhost:5391/index.html?${query}`);
    await page.waitForFunction(() => window.__ready === true, null, { timeout: 30000 });
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${folder}/${name}.png` });
    if (mode === 'time') console.log(name, await measure(page));
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
}

/** Main-thread milliseconds per frame with the processor slowed down four times, from the browser's own count of task time. */
async function measure(page) {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  await client.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const taskSeconds = async () => (await client.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration').value;
  const frames = 60;
  const run = (draws) => page.evaluate(async ([count, on]) => {
    const times = [];
    for (let i = 0; i < count; i++) {
      await new Promise(requestAnimationFrame);
      const start = performance.now();
      if (on) window.__draw(window.__moved(i / 9), window.__moved((i + 1) / 9), 0.5);
      times.push(performance.now() - start);
    }
    return times.sort((a, b) => a - b)[count >> 1];
  }, [frames, draws]);
  await run(true);
  const before = await taskSeconds();
  const median = await run(true);
  const busy = await taskSeconds();
  await run(false);
  const idle = await taskSeconds();
  await client.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { scriptMedianMs: median.toFixed(2), taskMsPerFrame: ((busy - before) * 1000 / frames).toFixed(2), idleTaskMsPerFrame: ((idle - busy) * 1000 / frames).toFixed(2) };
}
