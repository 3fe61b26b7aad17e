import { spawnSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

let folder = '';
const put = (name: string, content: string | Buffer): void => {
  mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
  writeFileSync(path.join(folder, name), content);
};
const run = (script: string, ...words: string[]) => spawnSync(process.execPath, [path.resolve('scripts', script), ...words], { cwd: folder, encoding: 'utf8', env: { ...process.env, CHROME_PATH: path.join(folder, 'none') } });

beforeEach(() => (folder = mkdtempSync(path.join(tmpdir(), 'checks-'))));
afterEach(() => rmSync(folder, { recursive: true }));

describe('The closing line', () => {
  const stages = (...failed: string[]): string => JSON.stringify(['types', 'lint', 'unit tests', 'build', 'browser tests'].map((name) => ({ name, ok: !failed.includes(name) })));

  it('sums the tests of both runners', () => {
    put('.cache/reports/stages.json', stages());
    put('.cache/reports/unit.json', JSON.stringify({ numPassedTests: 40, numFailedTests: 0 }));
    put('.cache/reports/browser.json', JSON.stringify({ stats: { expected: 7, flaky: 1, unexpected: 0, skipped: 2 } }));
    expect(run('count-tests.mjs').stdout).toBe('48 passed, 0 failed\n');
  });

  it('counts what failed, and a check without tests of its own once', () => {
    put('.cache/reports/stages.json', stages('lint', 'unit tests', 'browser tests'));
    put('.cache/reports/unit.json', JSON.stringify({ numPassedTests: 38, numFailedTests: 2 }));
    expect(run('count-tests.mjs').stdout).toBe('38 passed, 4 failed\n');
  });

  it('never looks well when nothing was run', () => {
    expect(run('count-tests.mjs').stdout).toBe('0 passed, 1 failed\n');
  });
});

describe('The budget of the first frame', () => {
  /** A page whose entry imports `shared` statically and `later` on demand; the sizes do not shrink when zipped. */
  function build(sharedKb: number): void {
    const chunk = (file: string, rest: object): object => ({ file, ...rest });
    put('dist/.vite/manifest.json', JSON.stringify({ 'index.html': chunk('a.js', { isEntry: true, imports: ['_shared'], dynamicImports: ['later'] }), _shared: chunk('shared.js', { imports: ['_shared'] }), later: chunk('later.js', { isDynamicEntry: true }) }));
    put('dist/a.js', randomBytes(10_000));
    put('dist/shared.js', randomBytes(sharedKb * 1000));
    put('dist/later.js', randomBytes(500_000));
  }

  it('counts the entry and its static imports alone', () => {
    build(150);
    expect(run('check-budget.mjs')).toMatchObject({ status: 0, stdout: expect.stringMatching(/: 160\.\d kB gzipped of 200 kB/) });
  });

  it('fails the build beyond it and names the largest part', () => {
    build(250);
    const { status, stderr } = run('check-budget.mjs');
    expect(status).toBe(1);
    expect(stderr).toMatch(/^ +250\.\d kB {2}shared\.js/);
  });
});

it('a named browser that does not run is not replaced by another', () => {
  const { status, stdout, stderr } = run('ensure-browser.mjs');
  expect([status, stdout]).toEqual([1, '']);
  expect(stderr).toContain('does not run');
});
