import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import puppeteer from 'puppeteer-core';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { parseScenario } from '../../src/core/scenario/parseScenario.ts';
import { busyRun } from '../support/busyMinute.ts';

const SECONDS = 60;
const VERIFIED = /The recording verifies/;

/** A minute of busy hands, played and hashed here in Node; the page plays it again and compares every hash and the result. */
let folder: string;
let file: string;

test.beforeAll(() => {
  test.setTimeout(300_000);
  const read = parseScenario(readFileSync('scenarios/restless-patient-head-down.json', 'utf8'));
  if (!read.ok) throw new Error(read.error.message);
  folder = mkdtempSync(path.join(tmpdir(), 'engines-'));
  file = path.join(folder, 'busy-minute.json');
  writeFileSync(file, writeRunFile(busyRun(read.value, SECONDS, 20)));
});

test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('a minute of busy hands gives the same bits in Node and in Chromium', async ({ page, baseURL }) => {
  test.setTimeout(300_000);
  await page.goto(baseURL!);
  await page.getByLabel('Run or scenario file').setInputFiles(file);
  await page.getByRole('button', { name: 'Verify the recording' }).click();
  await expect(page.getByText(VERIFIED)).toBeVisible({ timeout: 240_000 });
});

test('and in Firefox', async ({ baseURL }) => {
  test.setTimeout(300_000);
  const firefox = firefoxPath();
  test.skip(firefox === null, 'no Firefox here and none can be installed');
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: firefox!, headless: true });
  try {
    const page = await browser.newPage();
    await page.goto(baseURL!);
    const input = await page.waitForSelector('input[type=file]');
    await input!.uploadFile(file);
    const button = await page.waitForSelector('::-p-text(Verify the recording)');
    await button!.click();
    const answer = await page.waitForFunction(() => document.querySelector('.verify [role=status]')?.textContent || null, { timeout: 240_000 });
    expect(await answer.jsonValue()).toMatch(VERIFIED);
  } finally {
    await browser.close();
  }
});

function firefoxPath(): string | null {
  try {
    return execFileSync(process.execPath, ['scripts/ensure-browser.mjs', '--firefox'], { encoding: 'utf8' }).trim() || null;
  } catch {
    return null;
  }
}
