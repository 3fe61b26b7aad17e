import { expect, test, type Page } from '@playwright/test';
import { strFromU8, unzipSync } from 'fflate';
import { readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { checksumOf } from '../../src/core/recording/checksum.ts';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { finishedRun } from '../core/recording/support/sampleRun.ts';
import { withBreaks } from '../storage/support/withBreaks.ts';
import { expectAccessible } from './support/accessible.ts';
import { RoomPage } from './support/roomPage.ts';

const faults: string[] = [];

test.beforeEach(({ page }) => {
  faults.length = 0;
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
});

test.afterEach(() => expect(faults).toEqual([]));

/** Plays a scenario for two seconds and ends it. */
async function playRun(page: Page, title: string): Promise<void> {
  const room = await new RoomPage(page).start(title);
  await room.advance(240);
  await room.finish();
}

async function openRuns(page: Page): Promise<void> {
  await page.goto('?test&renderer=canvas');
  await page.getByRole('button', { name: 'My runs' }).click();
  await expect(page.getByRole('heading', { name: 'My runs', level: 1 })).toBeFocused();
}

/** Reading files may take long on a busy machine. */
const PATIENCE = { timeout: 60_000 };

const rows = (page: Page) => page.locator('.run-row');
const answer = (page: Page) => page.locator('.library-news [role="status"]');

test('runs are listed, filtered, deleted and taken back, exported, wiped and imported', async ({ page }, info) => {
  test.slow();
  await playRun(page, 'A quiet room');
  await playRun(page, 'High rails, short sheath');
  await page.getByRole('button', { name: 'My runs' }).click();
  await expect(rows(page)).toHaveCount(2);
  await expect(rows(page).first()).toContainText('High rails, short sheath');
  await expect(rows(page).first()).toContainText('not yet');
  await expect(page.getByText('2 runs have not been exported yet.')).toBeVisible();
  await expect(page.getByRole('img', { name: /^Breaks per run from the oldest to the newest: \d+, \d+$/ })).toBeVisible();
  await page.getByText('As a table').click();
  await expect(page.locator('.trend-table tbody tr')).toHaveCount(2);
  await expectAccessible(page);

  // Filter.
  await page.getByLabel('Scenario').selectOption({ label: 'A quiet room' });
  await expect(rows(page)).toHaveCount(1);
  await expect(page.getByText('1 of 2 runs')).toBeVisible();
  await page.getByLabel('Scenario').selectOption({ label: 'all' });
  await page.getByLabel('Find').fill('rails');
  await expect(rows(page)).toHaveCount(1);
  await page.getByLabel('Verdict').selectOption('met');
  await expect(page.getByText('No run passes these choices.')).toBeVisible();
  await page.getByLabel('Verdict').selectOption({ label: 'all' });

  // Delete by keyboard; it can be taken back after the page was closed.
  await page.getByRole('button', { name: /^Delete the run of/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText('1 run deleted.')).toBeVisible();
  await expect(rows(page)).toHaveCount(0);
  await openRuns(page);
  await expect(rows(page)).toHaveCount(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(rows(page)).toHaveCount(2);
  await expect(page.getByText('1 run deleted.')).toHaveCount(0);

  // Export.
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export all shown (2)' }).click();
  const download = await saving;
  expect(download.suggestedFilename()).toMatch(/^runs-\d{4}-\d{2}-\d{2}-2\.zip$/);
  await expect(answer(page)).toHaveText('2 runs exported as one archive.', PATIENCE);
  const archive = info.outputPath('runs.zip');
  await download.saveAs(archive);
  const members = unzipSync(readFileSync(archive));
  expect(Object.keys(members).map((name) => name.replace(/^runs\/.*\.json\.gz$/, 'run'))).toEqual(['run', 'run', 'runs.csv', 'manifest.json']);
  expect(strFromU8(members['runs.csv']!).split('\r\n')).toHaveLength(4);

  // Wipe.
  await page.getByLabel('Choose all runs shown').check();
  await page.getByRole('button', { name: 'Delete the chosen' }).click();
  await expect(page.getByText('No runs yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByRole('button', { name: 'Yes, delete for good' }).click();
  await expect(page.getByText('2 runs deleted.')).toHaveCount(0);

  // Import twice, with a file that is none.
  const letter = info.outputPath('letter.json');
  writeFileSync(letter, 'Dear reader');
  const files = page.getByLabel('Archives or run files');
  await files.setInputFiles([archive, letter]);
  await expect(answer(page)).toHaveText('2 runs imported. 1 file was refused.', PATIENCE);
  await expect(page.getByRole('list', { name: 'Refused files' })).toContainText('letter.json: The file is not readable as a run');
  await expect(rows(page)).toHaveCount(2);
  await files.setInputFiles(archive);
  await expect(answer(page)).toHaveText('2 runs were here already and skipped.', PATIENCE);
  await expect(rows(page)).toHaveCount(2);

  // Open, verify, follow what to practise next.
  await page.getByRole('button', { name: /^Report of the run of/ }).first().click();
  await expect(page.getByRole('heading', { name: 'Report' })).toBeFocused();
  await expect(page.getByRole('heading', { name: 'Not yet' })).toBeVisible();
  await page.getByRole('button', { name: 'Verify the recording' }).click();
  await expect(page.getByText('The recording verifies')).toBeVisible(PATIENCE);
  await page.getByRole('main').getByText('The work itself').click();
  await expect(page.locator('.score-lines').getByText('Gel on the site')).toBeVisible();
  await expectAccessible(page);
  const exercise = page.locator('.next a').first();
  expect(await exercise.getAttribute('href')).toMatch(/^\?scenario=[a-z-]+&seed=\d+$/);
  await exercise.click();
  await expect(page.getByRole('application')).toBeVisible();
});

test('a run of another simulation can be looked at and says that it cannot be verified; a changed copy of it is kept beside it and marked', async ({ page }, info) => {
  const old = JSON.parse(readFileSync('tests/fixtures/run-v1.json', 'utf8')) as { header: { runId: string } };
  const file = info.outputPath('old.json.gz');
  writeFileSync(file, gzipSync(JSON.stringify(old)));
  await openRuns(page);
  await page.getByLabel('Archives or run files').setInputFiles(file);
  await expect(answer(page)).toHaveText('1 run imported.', PATIENCE);
  await expect(rows(page).first()).toContainText('Recorded under version 1 of the simulation: it can be looked at here, not verified.');
  await page.getByRole('button', { name: /^Report of/ }).click();
  await expect(page.getByText('cannot be verified here')).toBeVisible();
  await expect(page.getByRole('main').getByText('it has no verdict')).toBeVisible();

  const changed = { ...old, header: { ...old.header, engine: 'another engine' } };
  writeFileSync(file, gzipSync(JSON.stringify({ ...changed, checksum: checksumOf(JSON.parse(JSON.stringify(changed))) })));
  await page.getByRole('button', { name: 'My runs' }).click();
  await page.getByLabel('Archives or run files').setInputFiles(file);
  await expect(answer(page)).toHaveText('1 run has the id of a run that was here, but another content: both are kept and marked.', PATIENCE);
  await expect(rows(page)).toHaveCount(2);
  await expect(page.getByText('There is another recording under the same id')).toHaveCount(2);
});

test('the debrief of a run opens from the list, and leads to its report', async ({ page }) => {
  await playRun(page, 'A quiet room');
  await page.getByRole('button', { name: 'My runs' }).click();
  await page.getByRole('button', { name: /^Debrief of the run of/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Debrief' })).toBeVisible();
  const time = page.getByRole('slider', { name: 'Time in the run' });
  expect(Number(await time.getAttribute('aria-valuemax')), 'two seconds and what ending takes').toBeGreaterThanOrEqual(240);
  // The end can be gone to once all of the run has been played again.
  await expect(async () => {
    await time.press('End');
    expect(await time.getAttribute('aria-valuenow')).toBe(await time.getAttribute('aria-valuemax'));
  }).toPass(PATIENCE);
  await page.getByRole('button', { name: 'Report' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Report' })).toBeVisible();
});

const pagesOf = async (page: Page, format: string): Promise<number> => [...(await page.pdf({ format })).toString('latin1').matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;

test('a printed report fits two pages of A4 and of US Letter', async ({ page }) => {
  await playRun(page, 'A quiet room');
  for (const format of ['A4', 'Letter']) expect([1, 2], format).toContain(await pagesOf(page, format));
  await page.emulateMedia({ media: 'print' });
  for (const words of ['Verdict: not yet', 'not verified before this was printed', 'Insertion bundle', 'Trainee', 'Supervisor', 'no proof of competence']) await expect(page.locator('.print')).toContainText(words);
  await expect(page.getByRole('button', { name: 'Print' })).toBeHidden();
});

test('a printed report with more breaks and more words of the assistant than fit says how many it leaves out', async ({ page }, info) => {
  const file = info.outputPath('many.json.gz');
  const many = withBreaks(finishedRun(2400), Array<'major'>(15).fill('major'), [2, 5]);
  const challenges = Array.from({ length: 8 }, (_, k) => ({
    step: 10 * k,
    break: k + 1,
    said: [{ step: 10 * k, words: 'Is your left glove still sterile?' }],
    answered: k === 1 ? null : { how: k === 0 ? ('stop' as const) : ('fine' as const), step: 10 * k + 240 },
    stillInTime: k === 0,
  }));
  writeFileSync(file, gzipSync(writeRunFile({ ...many, result: { ...many.result!, challenges } })));
  await openRuns(page);
  await page.getByLabel('Archives or run files').setInputFiles(file);
  await expect(rows(page)).toHaveCount(1, PATIENCE);
  await page.getByRole('button', { name: /^Report of/ }).click();
  await expect(page.locator('.print-breaks tbody tr')).toHaveCount(12);
  await expect(page.locator('.print')).toContainText('And 3 more, which the report on screen and the run file have.');
  const spoken = page.locator('.print-challenges tbody tr');
  await expect(spoken).toHaveCount(6);
  await expect(spoken.nth(0)).toHaveText(/Is your left glove still sterile\?You thanked and stopped after 2 s; your hands were still within 2 s\. It was left open\.$/);
  await expect(spoken.nth(1)).toContainText('You did not answer.');
  await expect(spoken.nth(2)).toContainText('You said that it is fine, after 2 s; your hands went on. It was put right.');
  await expect(page.locator('.print')).toContainText('And 2 more, which the report on screen and the run file have.');
  for (const format of ['A4', 'Letter']) expect(await pagesOf(page, format), format).toBe(2);
});
