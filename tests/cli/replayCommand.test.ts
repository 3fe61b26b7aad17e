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
import { scoreRun } from '../../src/core/scoring/scoreRun.ts';
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
const broken: RunResult = { ...played.result!, breaks: BREAKS, words: { glove: 'left glove, fingers', rail: 'right rail' } };
const withBreaks: RunFile = { ...played, result: broken, score: scoreRun(broken, played.header.scenario) };
const old: RunFile = { ...played, result: { ...played.result!, handling: { ...played.result!.handling, measured: null } }, score: null };

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'runs-'));
  writeFileSync(at('good.json'), writeRunFile(played));
  writeFileSync(at('good.json.gz'), gzipSync(writeRunFile(played)));
  writeFileSync(at('breaks.json'), writeRunFile(withBreaks));
  writeFileSync(at('old.json'), writeRunFile(old));
  writeFileSync(at('other-score.json'), writeRunFile({ ...played, score: { ...played.score!, total: 99 } }));
  writeFileSync(at('other-rubric.json'), writeRunFile({ ...played, score: { ...played.score!, rubricVersion: 999 } }));
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
    const { code, lines, faults } = replay([name]);
    expect([code, lines.length, faults]).toEqual([0, 1, []]);
    expect(lines[0]!.split('\n')[0]).toBe(`${name}: verified. “Ein Übungsfeld”, 0:03, no breaks: its result follows from its recording, bit for bit.`);
  });

  it('prints verdict, score and parts, with what stands against met', () => {
    const { lines } = replay(['good.json']);
    const { parts, total } = played.score!;
    expect(lines[0]!.split('\n').slice(1)).toEqual([
      `  not yet, ${total} of 100 (standard 90). ${total} of 100 points; the standard is 90.`,
      ...parts.map(({ words, points, of }) => `    ${words}: ${points} of ${of}`),
    ]);
  });

  it('says of a run from before there were scores what it lacks, and verifies what there is', () => {
    const { code, lines } = replay(['old.json']);
    expect(code).toBe(0);
    expect(lines[0]!.split('\n')[1]).toMatch(/^ {2}no score: the clearance that the hands kept and .* were not measured yet when this run was saved$/);
  });

  it('lists the breaks in plain words, also under rules that it does not know', () => {
    const { code, lines } = replay(['breaks.json'], RunWithBreaks);
    expect(code).toBe(0);
    const [line, score, , , , , title, first, second] = lines[0]!.split('\n');
    expect(line).toContain('2 breaks');
    expect(score).toContain('1 critical break was left open.');
    expect(title).toMatch(/^ {2}no {2}at {4}severity {2}reach {2}what happened +noticed {2}remedied$/);
    expect(first).toMatch(/^ {2}1 {3}0:01 {2}critical {2}site {3}.*[Ll]eft glove, fingers.* 0:02 {5}no$/);
    expect(second).toMatch(/^ {2}2 {3}1:00 {2}minor {5}none {3}left glove, fingers: rule-of-another-trainer +no {7}no$/);
  });

  it.each<[string, RegExp]>([
    ['diverged.json', /DIVERGED\. .*found at 0:01 \(step 120\)\.$/],
    ['breaks.json', /RESULT DIFFERS\. .*: breaks\.0 is \{.*, playing it again gives nothing, and \d more\.$/],
    ['other-score.json', /SCORE DIFFERS\. .*: total is 99, the rubric gives 0\.$/],
    ['other-rubric.json', /score not verifiable\. .*under scoring rules 999, these are \d+\.$/],
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
      { exitCode: 0, verdict: 'verified', runId: 'run-1', scenario: 'recording-test', steps: 400, breaks: [], score: { verdict: 'notYet', parts: [{ id: 'asepsis' }, {}, {}, {}] } },
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
