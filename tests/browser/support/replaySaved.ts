import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, type Page } from '@playwright/test';

/** Saves the run from its report and plays the file again on the command line: it verifies, with so many breaks. */
export async function replaySaved(page: Page, breaks: number): Promise<void> {
  const folder = mkdtempSync(path.join(tmpdir(), 'saved-run-'));
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the run file' }).click();
  const file = path.join(folder, (await saving).suggestedFilename());
  await (await saving).saveAs(file);
  const replay = spawnSync('npm', ['run', '--silent', 'replay', '--', file, '--json'], { encoding: 'utf8' });
  expect(replay.status, replay.stdout + replay.stderr).toBe(0);
  const [{ verdict, breaks: replayed }] = JSON.parse(replay.stdout) as [{ verdict: string; breaks: unknown[] }];
  expect(verdict).toBe('verified');
  expect(replayed).toHaveLength(breaks);
  rmSync(folder, { recursive: true, force: true });
}
