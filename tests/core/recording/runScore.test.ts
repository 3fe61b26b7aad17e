import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checksumOf, contentHash } from '../../../src/core/recording/checksum.ts';
import { readRunFile } from '../../../src/core/recording/readRunFile.ts';
import type { RunFile } from '../../../src/core/recording/recording.ts';
import { verifyRun } from '../../../src/core/recording/verifyRun.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import type { Break } from '../../../src/core/ledger/break.ts';
import { missingForScore, RUBRIC_VERSION, scoreRun } from '../../../src/core/scoring/scoreRun.ts';
import { makeFakeRun } from './support/FakeRun.ts';
import { finishedRun, playFor } from './support/sampleRun.ts';

const run = finishedRun(500);

/** What a reader makes of a text; it must be a run. */
function read(text: string): RunFile {
  const result = readRunFile(text);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

type Content = Record<string, unknown> & { header: { scenario: object } };

/** The kept file of version 1, with its scenario changed before it was played. */
function firstVersion(change: (scenario: object) => object = (scenario) => scenario): string {
  const kept = JSON.parse(readFileSync(new URL('../../fixtures/run-v1.json', import.meta.url), 'utf8')) as Content;
  const scenario = change(kept.header.scenario);
  const file = { ...kept, header: { ...kept.header, scenario, scenarioHash: contentHash(scenario) } };
  return JSON.stringify({ ...file, checksum: checksumOf(file) });
}

describe('A run file', () => {
  it('carries the score that the run came to, through a file and back', () => {
    expect(run.score).toEqual(scoreRun(run.result!, run.header.scenario));
    expect(read(writeRunFile(run)).score).toEqual(run.score);
  });

  it('carries none while the run is not finished', () => {
    expect(playFor(300).recorder.soFar().score).toBeNull();
    expect(read(writeRunFile(playFor(300).recorder.soFar())).score).toBeNull();
  });

  it('of version 1 has no score, and what it lacks is known', () => {
    const old = read(firstVersion());
    expect(old.score).toBeNull();
    expect(old.result!.handling.measured).toBeNull();
    expect(missingForScore(old.result!, old.header.scenario)).not.toEqual([]);
  });

  it('of version 1 is scored when opened where its rubric weighs nothing that it lacks', () => {
    const old = read(firstVersion((scenario) => ({ ...scenario, rubric: { points: { handling: 0 } } })));
    expect(missingForScore(old.result!, old.header.scenario)).toEqual([]);
    expect(old.score).toEqual(scoreRun(old.result!, old.header.scenario));
  });

  it('with a break that use made worse can be read', () => {
    const worse: Break = {
      number: 1, rule: 'glove-on-rail', step: 130, x: 0, y: 1, surface: 'glove.left#1:palm', against: 'rail.left', severity: 'critical', reach: 'site',
      spread: [], noticedStep: null, remediedStep: null, remedies: [], escalatedBy: ['unsterile-used-at-site'],
    };
    const result = { ...run.result!, breaks: [worse] };
    const file = { ...run, result, score: scoreRun(result, run.header.scenario) };
    expect(read(writeRunFile(file))).toEqual(file);
  });
});

describe('Verifying the score of a run', () => {
  const score = run.score!;

  it('finds points that do not follow from the recording', () => {
    expect(verifyRun({ ...run, score: { ...score, total: 99 } }, makeFakeRun)).toEqual({ verdict: 'scoreDiffers', differences: [{ path: 'total', written: '99', replayed: String(score.total) }] });
  });

  it('finds a verdict that does not follow, and a line that was left out', () => {
    expect(verifyRun({ ...run, score: { ...score, verdict: 'met' } }, makeFakeRun).verdict).toBe('scoreDiffers');
    const parts = score.parts.map((part) => ({ ...part, lines: part.lines.slice(1) }));
    expect(verifyRun({ ...run, score: { ...score, parts } }, makeFakeRun).verdict).toBe('scoreDiffers');
  });

  it('does not mind other words for the same numbers', () => {
    const parts = score.parts.map((part) => ({ ...part, words: 'Otherwise said' }));
    expect(verifyRun({ ...run, score: { ...score, parts } }, makeFakeRun)).toEqual({ verdict: 'verified' });
  });

  it('says so when it was given under other rules of scoring', () => {
    expect(verifyRun({ ...run, score: { ...score, rubricVersion: RUBRIC_VERSION + 1 } }, makeFakeRun)).toEqual({ verdict: 'otherRubric', rubricVersion: RUBRIC_VERSION + 1 });
  });

  it('looks at the result first: a score that follows from a false result is no use', () => {
    const result = { ...run.result!, steps: 400 };
    expect(verifyRun({ ...run, result, score: scoreRun(result, run.header.scenario) }, makeFakeRun).verdict).toBe('resultDiffers');
  });

  it('compares nothing that was not measured when the run was saved', () => {
    const result = { ...run.result!, handling: { ...run.result!.handling, measured: null } };
    expect(verifyRun({ ...run, result, score: null }, makeFakeRun)).toEqual({ verdict: 'verified' });
  });
});
