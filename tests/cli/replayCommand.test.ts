import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replayCommand, USAGE } from '../../src/cli/replayCommand.ts';
import type { RunFile } from '../../src/core/recording/recording.ts';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { RULE_BOOK } from '../../src/core/ledger/rules/ruleBook.ts';
import type { RunResult } from '../../src/core/run/result.ts';
import { scenarioHash } from '../../src/core/scenario/scenarioHash.ts';
import { FakeRun } from '../core/recording/support/FakeRun.ts';
import { finishedRun, playFor } from '../core/recording/support/sampleRun.ts';

const BREAKS: RunResult['breaks'] = [
  { number: 1, rule: RULE_BOOK[0]!.id, step: 130, x: 0, y: 1, surface: 'glove', against: 'rail', severity: 'critical', reach: 'site', spread: [], noticedStep: 260, remediedStep: null, remedies: [] },
  { number: 2, rule: 'rule-of-another-trainer', step: 7200, x: 0, y: 1, surface: 'glove', against: null, severity: 'minor', reach: 'none', spread: [], noticedStep: null, remediedStep: null, remedies: [] },
];

/** A run that always comes to the same two breaks. */
class RunWithBreaks extends FakeRun {
  override result(): RunResult {
    return { ...super.result(), breaks: BREAKS, words: { glove: 'left glove, fingers', rail: 'right rail' } };
  }
}

let folder = '';
const at = (name: string): string => path.join(folder, name);
const played = finishedRun(400);
const withBreaks: RunFile = { ...played, result: { ...played.result!, breaks: BREAKS, words: { glove: 'left glove, fingers', rail: 'right rail' } } };

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'runs-'));
  writeFileSync(at('good.json'), writeRunFile(played));
  writeFileSync(at('good.json.gz'), gzipSync(writeRunFile(played)));
  writeFileSync(at('breaks.json'), writeRunFile(withBreaks));
  writeFileSync(at('diverged.json'), writeRunFile({ ...played, commands: played.commands.slice(1) }));
  writeFileSync(at('broken-off.json'), writeRunFile(playFor(333).recorder.soFar()));
  writeFileSync(at('other.json'), writeRunFile({ ...played, header: { ...played.header, simulation: 999 } }));
  writeFileSync(at('cut.json'), writeRunFile(played).slice(0, 900));
  writeFileSync(at('cut.json.gz'), gzipSync(writeRunFile(played)).subarray(0, 300));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** What the command prints and ends with. */
function replay(names: readonly string[], Kind: typeof FakeRun = FakeRun) {
  const lines: string[] = [];
  const faults: string[] = [];
  const words = names.map((name) => (name.startsWith('--') ? name : at(name)));
  const code = replayCommand(words, (scenario, seed) => new Kind(scenario, seed), { out: (text) => lines.push(text.replaceAll(`${folder}${path.sep}`, '')), fault: (text) => faults.push(text) });
  return { code, lines, faults };
}

describe('npm run replay', () => {
  it.each([['good.json'], ['good.json.gz']])('verifies %s', (name) => {
    expect(replay([name])).toEqual({ code: 0, lines: [`${name}: verified. “Ein Übungsfeld”, 0:03, no breaks: its result follows from its recording, bit for bit.`], faults: [] });
  });

  it('lists the breaks in plain words, also under rules that it does not know', () => {
    const { code, lines } = replay(['breaks.json'], RunWithBreaks);
    expect(code).toBe(0);
    const [line, title, first, second] = lines[0]!.split('\n');
    expect(line).toContain('2 breaks');
    expect(title).toMatch(/^ {2}no {2}at {4}severity {2}reach {2}what happened +noticed {2}remedied$/);
    expect(first).toMatch(/^ {2}1 {3}0:01 {2}critical {2}site {3}.*[Ll]eft glove, fingers.* 0:02 {5}no$/);
    expect(second).toMatch(/^ {2}2 {3}1:00 {2}minor {5}none {3}left glove, fingers: rule-of-another-trainer +no {7}no$/);
  });

  it.each<[string, RegExp]>([
    ['diverged.json', /DIVERGED\. .*found at 0:01 \(step 120\)\.$/],
    ['breaks.json', /RESULT DIFFERS\. .*: breaks\.0 is \{.*, playing it again gives nothing, and \d more\.$/],
    ['broken-off.json', /broken off\. .*stops at 0:02 without a result/],
    ['other.json', /not verifiable\. .*recorded under simulation 999/],
  ])('ends with 1 for %s and says why', (name, line) => {
    const { code, lines } = replay([name]);
    expect(code).toBe(1);
    expect(lines[0]!.split('\n')[0]).toMatch(line);
  });

  it.each<[string, RegExp]>([
    ['cut.json', /UNREADABLE\. The run file ends in the middle/],
    ['cut.json.gz', /UNREADABLE\. The zipped run file is damaged/],
    ['missing.json', /UNREADABLE\. There is no such file/],
    ['.', /UNREADABLE\. This is a folder/],
  ])('ends with 2 for %s and says why', (name, line) => {
    const { code, lines } = replay([name]);
    expect(code).toBe(2);
    expect(lines[0]).toMatch(line);
  });

  it('looks at every file and ends with the worst', () => {
    expect(replay(['good.json', 'diverged.json']).code).toBe(1);
    const { code, lines } = replay(['cut.json', 'good.json', 'diverged.json']);
    expect(code).toBe(2);
    expect(lines).toHaveLength(3);
  });

  it('prints for programs with --json', () => {
    const { code, lines } = replay(['good.json', '--json', 'cut.json', 'diverged.json', 'broken-off.json']);
    expect(code).toBe(2);
    expect(JSON.parse(lines.join('\n'))).toMatchObject([
      { exitCode: 0, verdict: 'verified', runId: 'run-1', scenario: 'recording-test', steps: 400, breaks: [] },
      { exitCode: 2, verdict: 'unreadable', words: expect.stringMatching(/ends in the middle/) },
      { exitCode: 1, verdict: 'diverged', firstDivergentStep: 120 },
      { exitCode: 1, verdict: 'brokenOff', steps: 333, breaks: null },
    ]);
  });

  it('does not let a file steer the terminal', () => {
    const scenario = { ...played.header.scenario, title: 'Red \u001b[31m alert' };
    const header = { ...played.header, scenario, scenarioHash: scenarioHash(scenario) };
    writeFileSync(at('escape.json'), writeRunFile({ ...played, header }));
    const { code, lines } = replay(['escape.json']);
    expect(code).toBe(0);
    expect(lines.join('')).toContain('“Red \u{fffd}[31m alert”');
  });

  it('explains itself', () => {
    expect(replay([])).toEqual({ code: 2, lines: [], faults: [USAGE] });
    expect(replay(['good.json', '--fast'])).toMatchObject({ code: 2, faults: [USAGE] });
    expect(replay(['--help'])).toEqual({ code: 0, lines: [USAGE], faults: [] });
  });
});
