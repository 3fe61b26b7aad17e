import { execFileSync } from 'node:child_process';
import { defineConfig } from '@playwright/test';

// The workers inherit the environment, so that port and browser are found once for all of them.
const env = process.env;
env['PAGE_PORT'] ??= execFileSync(process.execPath, ['scripts/free-port.mjs'], { encoding: 'utf8' }).trim();
env['CHROME_PATH'] ??= execFileSync(process.execPath, ['scripts/ensure-browser.mjs'], { encoding: 'utf8' }).trim();
const url = `http://127.0.0.1:${env['PAGE_PORT']}/`;

/** Tests of the built page in Chromium, one after the other: `npm run build` comes first. */
export default defineConfig({
  testDir: 'tests/browser',
  testMatch: '*.spec.ts',
  outputDir: 'test-results',
  workers: 1,
  retries: env['CI'] ? 1 : 0,
  forbidOnly: Boolean(env['CI']),
  timeout: 90_000,
  reporter: [['list'], ['json', { outputFile: '.cache/reports/browser.json' }]],
  use: {
    baseURL: url,
    viewport: { width: 1280, height: 720 },
    browserName: 'chromium',
    launchOptions: { executablePath: env['CHROME_PATH'] },
    trace: 'retain-on-failure',
  },
  webServer: { command: `node scripts/serve.mjs --strict --port ${env['PAGE_PORT']}`, url, reuseExistingServer: false },
});
