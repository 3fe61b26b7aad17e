#!/usr/bin/env node
/**
 * Prints "N passed, N failed" for the last run of all checks, from the reports of both test runners. A check that failed without
 * a failed test of its own (types, lint, build, a runner that did not start) counts as one failure.
 */
import { existsSync, readFileSync } from 'node:fs';
import { BROWSER_REPORT, STAGES_FILE, UNIT_REPORT } from './reports.mjs';

const read = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null);
const unit = read(UNIT_REPORT);
const browser = read(BROWSER_REPORT)?.stats;
const counts = {
  'unit tests': { passed: unit?.numPassedTests ?? 0, failed: unit?.numFailedTests ?? 0 },
  'browser tests': { passed: (browser?.expected ?? 0) + (browser?.flaky ?? 0), failed: browser?.unexpected ?? 0 },
};
const sum = (kind) => Object.values(counts).reduce((total, count) => total + count[kind], 0);
const stages = read(STAGES_FILE) ?? [{ name: 'all', ok: false }];
const otherFailures = stages.filter(({ name, ok }) => !ok && !counts[name]?.failed).length;
console.log(`${sum('passed')} passed, ${sum('failed') + otherFailures} failed`);
