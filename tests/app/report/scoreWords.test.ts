import { describe, expect, it } from 'vitest';
import { noticingWords } from '../../../src/app/report/noticingWords.ts';
import { verifiedWords } from '../../../src/app/report/print/verifiedWords.ts';
import { reportView } from '../../../src/app/report/reportView.ts';
import { intervalText, pointsText, unscoredWords, valueText } from '../../../src/app/report/scoreWords.ts';
import { noticingOfRun } from '../../../src/core/scoring/noticing/noticingOfRun.ts';
import { withBreaks } from '../../storage/support/withBreaks.ts';
import { finishedRun, playFor } from '../../core/recording/support/sampleRun.ts';
import { scenarioWith } from '../support/scenario.ts';

describe('numbers of a score', () => {
  it('are told with their unit', () => {
    const told = [[3, ''], [3, 'of 5'], [12.4, 'cm'], [125, 's'], [1, 'done'], [0, 'done'], [null, 's'], [-7.25, ''], [93.33, 'per 10 min']] as const;
    expect(told.map(([value, unit]) => valueText({ value, unit }))).toEqual(['3', '3 of 5', '12.4 cm', '2 min 5 s', 'done', 'not done', '–', '−7.25', '93.33 per 10 min']);
  });

  it('have points and an interval only where there are any', () => {
    expect([pointsText({ points: 3.75, of: 5.63 }), pointsText({ points: null, of: null })]).toEqual(['3.75 of 5.63', '']);
    expect([intervalText({ interval: [0.5, 12] }), intervalText({})]).toEqual(['95 % interval 0.5 to 12', '']);
  });
});

describe('noticing in words', () => {
  const run = finishedRun(240);
  const said = { ...withBreaks(run, ['major', 'major', 'major', 'minor']).result! };
  const result = { ...said, breaks: said.breaks.map((broken, k) => ({ ...broken, noticedStep: k < 3 ? broken.step + 120 * (k + 1) : null })) };

  it('gives share, interval and the middle time', () => {
    // Wilson's interval of 3 of 4 is 30.1 to 95.4 % (Newcombe 1998, method 3, by hand).
    expect(noticingWords(noticingOfRun(result, run.header.scenario)).slice(0, 2)).toEqual(['3 of 4 breaks said: 75 %, 95 % interval 30 % to 95 %.', 'Half of them were said within 2 s.']);
  });

  it('does not invent a share of nothing', () => {
    expect(noticingWords(noticingOfRun(run.result!, run.header.scenario))[0]).toBe('There was no break to notice.');
  });
});

describe('what a report is made of', () => {
  it('names exercises for a scored run from the scenarios on offer', () => {
    const run = withBreaks(finishedRun(240), ['critical']);
    const offers = [scenarioWith({ id: 'one', title: 'One' }), scenarioWith({ id: 'two', title: 'Two' })];
    const view = reportView(run, run.result!, offers);
    expect(view.score).toBe(run.score);
    expect(view.exercises.length).toBeGreaterThan(0);
    for (const { scenarioId } of view.exercises) expect(['one', 'two']).toContain(scenarioId);
    expect(view.flags).toEqual([]);
  });

  it('flags a scenario outside published practice', () => {
    const run = finishedRun(240);
    const file = { ...run, header: { ...run.header, scenario: scenarioWith({ policy: { marginM: 0.06 } }) } };
    expect(reportView(file, run.result!, []).flags).toMatchObject([{ path: 'policy.marginM', value: '6 cm' }]);
  });

  it('gives a run that was broken off no verdict, and says why', () => {
    const run = playFor(240).recorder.soFar();
    const view = reportView(run, finishedRun(240).result!, []);
    expect([view.score, view.exercises]).toEqual([null, []]);
    expect(unscoredWords(run)).toMatch(/broken off/);
    expect(unscoredWords(finishedRun(240))).toMatch(/before runs were scored/);
  });
});

describe('on paper', () => {
  it('it is said whether the recording was checked', () => {
    expect(verifiedWords(2, true, null)).toBe('not verified before this was printed');
    expect(verifiedWords(1, false, null)).toMatch(/version 1 .* cannot be verified/);
    expect(verifiedWords(2, true, { verdict: 'verified' })).toMatch(/^verified/);
    expect(verifiedWords(2, true, { verdict: 'diverged', firstDivergentStep: 1200 })).toBe('does NOT verify: goes another way from 00:10 on');
    expect(verifiedWords(2, true, { verdict: 'resultDiffers', differences: [] })).toMatch(/^does NOT/);
    expect(verifiedWords(2, true, { verdict: 'scoreDiffers', differences: [] })).toMatch(/^does NOT/);
  });
});
