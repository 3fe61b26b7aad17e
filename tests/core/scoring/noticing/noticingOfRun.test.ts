import { describe, expect, it } from 'vitest';
import type { Break } from '../../../../src/core/ledger/break.ts';
import type { RunResult } from '../../../../src/core/run/result.ts';
import { noticingOfRun } from '../../../../src/core/scoring/noticing/noticingOfRun.ts';
import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../../src/core/scenario/schema.ts';
import { detection } from '../../../../src/core/statistics/detection.ts';
import { garwood, wilson } from '../../../../src/core/statistics/intervals.ts';
import { breakWith } from '../../../app/support/breakWith.ts';
import { resultWith } from '../resultWith.ts';

type Cues = NonNullable<ScenarioSource['cues']>;
/** Three look-alikes at 10, 30 and 50 s, and a cough that is none. */
const PLANTED: Cues = [
  { atS: 10, kind: 'cough', lookAlike: true },
  { atS: 30, kind: 'cordPulled', lookAlike: true },
  { atS: 45, kind: 'cough' },
  { atS: 50, kind: 'cough', lookAlike: true },
];
const scenario = (cues: Cues = PLANTED): Scenario => scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'n', title: 'Noticing', summary: 'For tests.', seed: 1, station: 'field', cues });
const S = 120;
const CUES: RunResult['cues'] = PLANTED.map(({ atS, kind }) => ({ step: atS * S, kind, words: kind }));
const broken = (number: number, atS: number, noticedS: number | null, parts: Partial<Break> = {}): Break => breakWith({ number, step: atS * S, noticedStep: noticedS === null ? null : noticedS * S, ...parts });
const said = (...atS: number[]): RunResult['notices'] => atS.map((s) => ({ step: s * S, breaks: [] }));
const answering = (atS: number, ...breaks: number[]): RunResult['notices'][number] => ({ step: atS * S, breaks });
const outcomes = (result: RunResult, of = scenario()): string[] => noticingOfRun(result, of).trials.map(({ outcome }) => outcome);

describe('Breaks noticed', () => {
  const result = resultWith({ breaks: [broken(1, 5, 8), broken(2, 20, null), broken(3, 25, 25.5)], notices: [answering(8, 1), answering(25.5, 3)] });

  it('are counted of those that were made, with Wilson’s interval', () => {
    expect(noticingOfRun(result, scenario([])).sensitivity).toEqual(wilson(2, 3));
  });

  it('have no share when nothing was broken', () => {
    expect(noticingOfRun(resultWith({}), scenario([])).sensitivity).toMatchObject({ share: null, count: 0, of: 0 });
  });

  it('come with the time that each took, and a median that does not forget the unnoticed', () => {
    const noticing = noticingOfRun(result, scenario([]));
    expect(noticing.timesToNotice).toEqual([{ break: 1, seconds: 3 }, { break: 3, seconds: 0.5 }]);
    expect(noticing.medianS).toBe(3);
    expect(noticingOfRun(resultWith({ breaks: [broken(1, 5, 8), broken(2, 20, null), broken(3, 30, null)] }), scenario([])).medianS).toBeNull();
  });

  it('are not those that were remedied without a word, which are named', () => {
    const quiet = resultWith({ breaks: [broken(1, 5, null, { remediedStep: 9 * S, remedies: ['changeGlove'] })] });
    const noticing = noticingOfRun(quiet, scenario([]));
    expect(noticing.sensitivity.count).toBe(0);
    expect(noticing.remediedUnsaid).toEqual([1]);
  });
});

describe('False reports', () => {
  it('are those that answer no break; one that repeats the last within two seconds is none', () => {
    const result = resultWith({ breaks: [broken(1, 5, 8)], notices: [answering(8, 1), ...said(9.5, 40, 41, 60)] });
    const { falseReports, falseReportRate } = noticingOfRun(result, scenario([]));
    expect(falseReports).toEqual([40 * S, 60 * S]);
    expect(falseReportRate).toEqual(garwood(2, 1));
  });
});

describe('Look-alikes', () => {
  it('left alone are correct rejections; cues that are none are no trials', () => {
    expect(outcomes(resultWith({ cues: CUES }))).toEqual(['leftAlone', 'leftAlone', 'leftAlone']);
  });

  it('reported within the window are false alarms, before and after it not', () => {
    expect(outcomes(resultWith({ cues: CUES, notices: said(10.5) }))).toEqual(['falseAlarm', 'leftAlone', 'leftAlone']);
    expect(outcomes(resultWith({ cues: CUES, notices: said(20) }))).toEqual(['falseAlarm', 'leftAlone', 'leftAlone']);
    expect(outcomes(resultWith({ cues: CUES, notices: said(9.9, 20.1, 29) }))).toEqual(['leftAlone', 'leftAlone', 'leftAlone']);
  });

  it('have the window of the scenario', () => {
    const wide = { ...scenario(), noticing: { windowS: 15 } };
    expect(outcomes(resultWith({ steps: 70 * S, cues: CUES, notices: said(24) }), wide)).toEqual(['falseAlarm', 'leftAlone', 'leftAlone']);
  });

  it('do not count while a real break is there unsaid, whoever reports it', () => {
    const dropped = ['leftAlone', 'droppedForBreak', 'leftAlone'];
    expect(outcomes(resultWith({ cues: CUES, breaks: [broken(1, 25, 31)], notices: [answering(31, 1)] }))).toEqual(dropped);
    expect(outcomes(resultWith({ cues: CUES, breaks: [broken(1, 38, 42)], notices: [answering(42, 1)] }))).toEqual(dropped);
    expect(outcomes(resultWith({ cues: CUES, breaks: [broken(1, 35, null, { remediedStep: 45 * S, remedies: ['changeGlove'] })] }))).toEqual(dropped);
    expect(outcomes(resultWith({ cues: CUES, breaks: [broken(1, 41, null)] }))).toEqual(['leftAlone', 'leftAlone', 'droppedForBreak']);
    expect(outcomes(resultWith({ cues: CUES, breaks: [broken(1, 22, 26)], notices: [answering(26, 1)] }))).toEqual(['leftAlone', 'leftAlone', 'leftAlone']);
  });

  it('do not count when the run ends within the window, unless reported before', () => {
    expect(outcomes(resultWith({ steps: 55 * S, cues: CUES }))).toEqual(['leftAlone', 'leftAlone', 'droppedForEnd']);
    expect(outcomes(resultWith({ steps: 55 * S, cues: CUES, notices: said(52) }))).toEqual(['leftAlone', 'leftAlone', 'falseAlarm']);
  });

  it('that did not come are no trials', () => {
    expect(outcomes(resultWith({ steps: 20 * S, cues: CUES.slice(0, 1) }))).toEqual(['leftAlone']);
  });
});

describe('Telling breaks from look-alikes', () => {
  it('needs a break and a look-alike that counts: false alarms have no denominator otherwise', () => {
    expect(noticingOfRun(resultWith({ cues: CUES }), scenario()).discrimination).toBeNull();
    expect(noticingOfRun(resultWith({ breaks: [broken(1, 5, 8)] }), scenario([])).discrimination).toBeNull();
    expect(noticingOfRun(resultWith({ cues: CUES, breaks: [broken(1, 5, null)] }), scenario()).discrimination).toBeNull();
  });

  it('is d′ of the corrected rates (Hautus 1995), from the trials that count', () => {
    const result = resultWith({ cues: CUES, breaks: [broken(1, 22, 24), broken(2, 26, 29), broken(3, 62, null)], notices: [...said(12), answering(24, 1), answering(29, 2)] });
    const { discrimination } = noticingOfRun(result, scenario());
    expect(discrimination).toEqual({ ...detection(2.5 / 4, 1.5 / 4), hitRate: 2.5 / 4, falseAlarmRate: 1.5 / 4, breaks: 3, trials: 3 });
    expect(discrimination!.dPrime).toBeGreaterThan(0);
  });

  it('is not fooled by somebody who reports everything', () => {
    const result = resultWith({ cues: CUES, breaks: [broken(1, 22, 24)], notices: [...said(12), answering(24, 1), ...said(32, 52)] });
    expect(noticingOfRun(result, scenario()).discrimination!.dPrime).toBeLessThan(noticingOfRun(resultWith({ cues: CUES, breaks: [broken(1, 22, 24)] }), scenario()).discrimination!.dPrime);
    expect(noticingOfRun(result, scenario()).discrimination!.criterion).toBeLessThan(0);
  });
});
