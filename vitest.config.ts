import { defineConfig } from 'vitest/config';

/** Logic is tested in Node; pages are tested by Playwright from tests/browser. */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    pool: 'threads',
    maxWorkers: 2,
    testTimeout: 60_000,
  },
});
