#!/usr/bin/env node
/**
 * All checks in order: types, lint, unit tests, build, browser tests. Goes on after a failure, so that one look shows all of them,
 * and ends with 1 when there was any. Usage: node scripts/test.mjs (or npm test)
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { REPORTS, STAGES_FILE, UNIT_REPORT } from './reports.mjs';

const npx = (...words) => ['npx', ['--no-install', ...words]];
const STAGES = [
  { name: 'types of the core', run: npx('tsc', '-p', 'tsconfig.core.json') },
  { name: 'types', run: npx('tsc', '-p', 'tsconfig.json') },
  { name: 'lint', run: npx('oxlint', '--deny-warnings') },
  { name: 'unit tests', tests: true, run: npx('vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${UNIT_REPORT}`) },
  { name: 'build', run: ['npm', ['run', '--silent', 'build']] },
  { name: 'browser tests', tests: true, needs: 'build', run: npx('playwright', 'test') },
];

rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });
const outcomes = [];
for (const { name, tests = false, needs, run } of STAGES) {
  console.log(`\n== ${name} ==`);
  const skipped = outcomes.some((earlier) => earlier.name === needs && !earlier.ok);
  if (skipped) console.log(`Left out: there is no ${needs}.`);
  const [command, words] = run;
  const ok = !skipped && spawnSync(command, words, { stdio: 'inherit' }).status === 0;
  outcomes.push({ name, tests, ok });
  writeFileSync(STAGES_FILE, JSON.stringify(outcomes));
}
console.log('');
for (const { name, ok } of outcomes) console.log(`${ok ? 'ok    ' : 'FAILED'}  ${name}`);
process.exitCode = outcomes.every(({ ok }) => ok) ? 0 : 1;
