import { describe, expect, it } from 'vitest';
import { chainRows, lengthText, noticedWords, reachWords, remediedWords, shareText, summaryWords } from '../../../src/app/report/reportFacts.ts';
import type { RunResult } from '../../../src/core/run/result.ts';
import { breakWith } from '../support/breakWith.ts';
import { FakeRun } from '../support/FakeRun.ts';
import { scenarioWith } from '../support/scenario.ts';

const resultWith = (parts: Partial<RunResult>): RunResult => ({ ...new FakeRun(scenarioWith()).result(), ...parts });

describe('a break in the report', () => {
  it('says whether and when it was noticed', () => {
    expect(noticedWords(breakWith())).toBe('not noticed');
    expect(noticedWords(breakWith({ step: 120, noticedStep: 180 }))).toBe('noticed at once');
    expect(noticedWords(breakWith({ step: 120, noticedStep: 120 + 43 * 120 }))).toBe('noticed after 43 s');
  });

  it('says what was done about it', () => {
    expect(remediedWords(breakWith())).toBe('not remedied');
    expect(remediedWords(breakWith({ remedies: ['changeGlove'] }))).toBe('remedied in part: changed a glove');
    expect(remediedWords(breakWith({ remediedStep: 90 * 120, remedies: ['coverDrape', 'changeGlove'] }))).toBe('remedied after 1 min 30 s: covered the drape and changed a glove');
  });

  it('says how far it got', () => {
    expect(reachWords(breakWith({ reach: 'site' }))).toBe('it reached the site');
    expect(reachWords(breakWith({ reach: 'none' }))).toBe('it reached nothing else');
  });

  it('lists its chain from the root', () => {
    const spread = [
      { surface: 'glove', depth: 0, step: 0, touch: 1, from: null },
      { surface: 'sheath', depth: 1, step: 60, touch: 2, from: 'glove' },
    ];
    expect(chainRows(breakWith({ spread }), { glove: 'left glove', face: 'face', sheath: 'probe sheath' })).toEqual([
      { number: 1, step: 0, surface: 'left glove', how: 'met face' },
      { number: 2, step: 60, surface: 'probe sheath', how: 'touched left glove' },
    ]);
  });
});

describe('the summary of a run', () => {
  it('counts without a verdict', () => {
    const breaks = [breakWith({ noticedStep: 5 }), breakWith({ number: 2, noticedStep: 9, remediedStep: 10 })];
    expect(summaryWords(resultWith({ breaks }))).toBe('2 breaks: 2 noticed, 1 remedied.');
    expect(summaryWords(resultWith({}))).toBe('No break of sterility.');
    expect(summaryWords(resultWith({ notices: [{ step: 3, breaks: [] }] }))).toBe('No break of sterility; 1 notice had nothing to answer.');
  });
});

describe('figures', () => {
  it('are told in the unit one would say', () => {
    expect([12.74, 0.031, 0.004, 0].map(lengthText)).toEqual(['12.7 m', '3.1 cm', '4 mm', '0 mm']);
    expect([null, 0.704].map(shareText)).toEqual(['never at the site', '70 %']);
  });
});
