/**
 * Takes pictures of the fixtures and measures a frame: `node src/app/canvas/dev/shots.mjs <folder> [time] [only]`.
 * Needs a Chromium named by CHROMIUM, or at /usr/bin/chromium.
 */
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { createServer } from 'vite';

const [folder = join(tmpdir(), 'canvas-shots'), mode = '', only = ''] = process.argv.slice(2);
const SHOTS = [
  ['field-1280', 1280, 720, 'scene=field'],
  ['field-1600', 1600, 900, 'scene=field'],
  ['marked-1280', 1280, 720, 'scene=marked&shown=1'],
  ['room-1600', 1600, 900, 'scene=field&framing=room'],
  ['room-shown-1600', 1600, 900, 'scene=marked&framing=room&shown=1'],
  ['open-1280', 1280, 720, 'scene=open&shown=1'],
  ['aside-1280', 1280, 720, 'scene=aside&framing=reach'],
  ['cards-1280', 1280, 720, 'scene=cards'],
  ['run-1280', 1280, 720, 'scene=run&shown=1'],
  ['sheath-lying-1600', 1600, 900, 'scene=lying&framing=room'],
  ['sheath-table-1280', 1280, 720, 'scene=lying&framing=reach&zoom=3&atX=300&atY=400'],
  ['sheath-holder-1280', 1280, 720, 'scene=lying&framing=reach&zoom=3&atX=1040&atY=420'],
  ['sheath-overMouth-1280', 1280, 720, 'scene=overMouth'],
  ['sheath-overMouth-reach-1600', 1600, 900, 'scene=overMouth&framing=reach'],
  ['sheath-overMouth-near-1280', 1280, 720, 'scene=overMouth&zoom=2.6&atX=640&atY=380'],
  ['sheath-drawing-near-1280', 1280, 720, 'scene=drawing&zoom=2.6&atX=870&atY=200'],
  ['sheath-inside-1280', 1280, 720, 'scene=inside&shown=1'],
  ['sheath-drawing-1280', 1280, 720, 'scene=drawing'],
  ['sheath-drawing-reach-1600', 1600, 900, 'scene=drawing&framing=reach&shown=1'],
  ['sheath-banded-1280', 1280, 720, 'scene=banded'],
  ['sheath-torn-1280', 1280, 720, 'scene=torn&shown=1'],
  ['sheath-torn-near-1280', 1280, 720, 'scene=torn&zoom=2.6&atX=670&atY=420'],
  ['loading-start-1600', 1600, 900, 'scene=loading&seconds=0.05&framing=room'],
  ['loading-held-1280', 1280, 720, 'scene=loading&seconds=5.8'],
  ['loading-open-1280', 1280, 720, 'scene=loading&seconds=10'],
  ['loading-over-1280', 1280, 720, 'scene=loading&seconds=17.5'],
  ['loading-in-1280', 1280, 720, 'scene=loading&seconds=24&shown=1'],
  ['loading-oneHand-1280', 1280, 720, 'scene=loading&seconds=28'],
  ['gown-start-1280', 1280, 720, 'scene=gown&seconds=0.5'],
  ['gown-held-1280', 1280, 720, 'scene=gown&seconds=6.6'],
  ['gown-falling-1280', 1280, 720, 'scene=gown&seconds=7.4'],
  ['gown-open-1280', 1280, 720, 'scene=gown&seconds=11.5'],
  ['gown-armsIn-1280', 1280, 720, 'scene=gown&seconds=13.2'],
  ['gown-tying-1280', 1280, 720, 'scene=gown&seconds=24'],
  ['gown-tied-1280', 1280, 720, 'scene=gown&seconds=29.4&shown=1'],
  ['gown-glove-1280', 1280, 720, 'scene=gown&seconds=36.5'],
  ['gown-laid-1280', 1280, 720, 'scene=gown&seconds=39.2'],
  ['gown-over-1280', 1280, 720, 'scene=gown&seconds=41.5&shown=1'],
  ['gown-room-1600', 1600, 900, 'scene=gown&seconds=11.5&framing=room'],
];

const server = await createServer({ root: new URL('.', import.meta.url).pathname, configFile: false, logLevel: 'error', server: { port: 5397, hmr: false, watch: null, fs: { allow: ['/'] } }, optimizeDeps: { include: ['pixi.js', 'pixi.js/unsafe-eval', 'zod'] }, cacheDir: join(tmpdir(), 'canvas-dev-cache') });
await server.listen();
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium' });
try {
  for (const [name, width, height, query] of SHOTS) {
    if (only !== '' && !name.includes(only)) continue;
    const page = await browser.newPage({ viewport: { width, height }, deviceScaleFactor: Number(process.env.DENSITY ?? 1) });
    page.on('pageerror', (error) => console.error(name, error.message));
    page.on('console', (message) => { if (message.type() === 'error') console.error(name, message.text()); });
    await page.goto(`http://localhost:5397/index.html?${query}`);
    await page.waitForFunction(() => window.__ready === true, null, { timeout: 30000 });
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${folder}/${name}.png` });
    if (mode === 'time' && query.includes('scene=run')) for (const rate of [1, 4]) console.log(name, `slowed ${rate} times`, await measure(page, rate));
    await page.close();
  }
} finally {
  await browser.close();
  await server.close();
}

/**
 * Milliseconds of the page's main thread per frame while a run is played: all its tasks (drawing commands and filling of pixels, which
 * a software canvas does on the same thread), and the calls of `draw` alone.
 */
async function measure(page, rate) {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable', { timeDomain: 'threadTicks' });
  await client.send('Emulation.setCPUThrottlingRate', { rate });
  const taskSeconds = async () => (await client.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration').value;
  const results = {};
  for (const kind of ['still', 'play']) {
    const before = await taskSeconds();
    const calls = await page.evaluate(async (name) => {
      const pictures = window.__played;
      const times = [];
      for (let i = 0; i + 2 < pictures.length; i++) {
        await new Promise(requestAnimationFrame);
        const start = performance.now();
        if (name === 'play') window.__draw(pictures[i + 1], pictures[i + 2], 0.5);
        else window.__draw({ ...pictures.at(-1) }, { ...pictures.at(-1) }, 0.5);
        times.push(performance.now() - start);
      }
      return times.sort((a, b) => a - b);
    }, kind);
    const tasks = ((await taskSeconds()) - before) * 1000 / calls.length;
    results[kind] = { allTasksMs: tasks.toFixed(1), drawMedianMs: calls[calls.length >> 1].toFixed(1), drawP95Ms: calls[Math.floor(calls.length * 0.95)].toFixed(1) };
  }
  return results;
}
