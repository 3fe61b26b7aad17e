import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import puppeteer from 'puppeteer-core';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { parseScenario } from '../../src/core/scenario/parseScenario.ts';
import type { RunFile } from '../../src/core/recording/recording.ts';
import { busyRun } from '../support/busyMinute.ts';
import { ROOMY } from '../support/gownRooms.ts';
import { GownWork } from '../support/gownWork.ts';
import { Loading } from '../support/loading.ts';
import { recordedScript } from '../support/recordedScript.ts';
import { shippedScenario } from '../support/runOperator.ts';

const SECONDS = 60;
const VERIFIED = /The recording verifies/;

/** A minute of busy hands, a whole loading and a whole gowning, played and hashed here in Node; the page plays them again and compares every hash and the result. */
let folder: string;
const files = new Map<string, string>();
const PLAYED = ['a minute of busy hands', 'a whole loading of the sheath', 'gown and gloves, the gown raised against the own clothes'] as const;

test.beforeAll(() => {
  test.setTimeout(300_000);
  const read = parseScenario(readFileSync('scenarios/restless-patient-head-down.json', 'utf8'));
  if (!read.ok) throw new Error(read.error.message);
  folder = mkdtempSync(path.join(tmpdir(), 'engines-'));
  const keep = (name: string, run: RunFile): void => {
    const file = path.join(folder, `${name.replaceAll(/[ ,]+/g, '-')}.json`);
    writeFileSync(file, writeRunFile(run));
    files.set(name, file);
  };
  keep(PLAYED[0], busyRun(read.value, SECONDS, 20));
  keep(PLAYED[1], recordedScript((op) => new Loading(op).all(), shippedScenario('sheath-short')));
  keep(PLAYED[2], recordedScript((op) => new GownWork(op).lift().fallOpen().takeShoulder().holdUp(0.75).slipIn().stretch().tie().glove('right').glove('left').card(), ROOMY));
});

test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

for (const played of PLAYED) test(`${played} gives the same bits in Node and in Chromium`, async ({ page, baseURL }) => {
  test.setTimeout(300_000);
  await page.goto(baseURL!);
  await page.getByLabel('Run or scenario file').setInputFiles(files.get(played)!);
  await page.getByRole('button', { name: 'Verify the recording' }).click();
  await expect(page.getByText(VERIFIED)).toBeVisible({ timeout: 240_000 });
});

for (const played of PLAYED) test(`${played} gives the same bits in Firefox`, async ({ baseURL }) => {
  test.setTimeout(300_000);
  const firefox = firefoxPath();
  test.skip(firefox === null, 'no Firefox here and none can be installed');
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: firefox!, headless: true });
  try {
    const page = await browser.newPage();
    await page.goto(baseURL!);
    const input = await page.waitForSelector('input[type=file]');
    await input!.uploadFile(files.get(played)!);
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
