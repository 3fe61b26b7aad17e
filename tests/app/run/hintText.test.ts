import { describe, expect, it } from 'vitest';
import { hintText } from '../../../src/app/run/hintText.ts';
import { breakWith } from '../support/breakWith.ts';
import { FakeRun } from '../support/FakeRun.ts';
import { scenarioWith } from '../support/scenario.ts';

const rule = () => ({ title: '', statement: '', sentence: '', source: '', remedies: ['changeGlove', 'newSheath'] as const });

describe('the hint', () => {
  it('is the next task while nothing is broken, or coaching is silent', () => {
    const run = new FakeRun(scenarioWith());
    expect(hintText({ run, coaching: 'shown' }, rule)).toBe('Squeeze gel on to the site.');
    run.breaks = [breakWith()];
    expect(hintText({ run, coaching: 'silent' }, rule)).toBe('Squeeze gel on to the site.');
  });

  it('answers the newest break that stands', () => {
    const run = new FakeRun(scenarioWith());
    run.breaks = [breakWith()];
    expect(hintText({ run, coaching: 'shown' }, rule)).toBe('Stop. Say so, then change the glove.');
    run.breaks = [breakWith({ noticedStep: 3, remedies: ['changeGlove'] })];
    expect(hintText({ run, coaching: 'shown' }, rule)).toBe('Stop: put on a new sheath.');
    run.breaks = [breakWith({ remediedStep: 9 })];
    expect(hintText({ run, coaching: 'shown' }, rule)).toBe('Squeeze gel on to the site.');
  });
});
