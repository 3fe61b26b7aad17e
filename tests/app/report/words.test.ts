import { describe, expect, it } from 'vitest';
import { clockText, durationText } from '../../../src/app/parts/clockText.ts';
import { capital, counted, listed } from '../../../src/app/parts/sentence.ts';
import { tellBreak } from '../../../src/app/parts/tellBreak.ts';
import { paceWords } from '../../../src/app/report/paceWords.ts';
import { verificationWords } from '../../../src/app/report/verificationWords.ts';
import { breakWith } from '../support/breakWith.ts';

describe('words and figures', () => {
  it('write times of the run', () => {
    expect([0, 59.99, 412, 3600].map(clockText)).toEqual(['00:00', '00:59', '06:52', '60:00']);
    expect([4.4, 60, 80].map(durationText)).toEqual(['4 s', '1 min', '1 min 20 s']);
  });

  it('build sentences', () => {
    expect(listed([])).toBe('');
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(counted(1, 'break')).toBe('1 break');
    expect(counted(2, 'task is', 'tasks are')).toBe('2 tasks are');
    expect(capital('left glove')).toBe('Left glove');
  });

  it('tell a break by the sentence of its rule', () => {
    expect(tellBreak('{surface} on the {against}.', breakWith(), (id) => (id === 'glove' ? 'left glove, fingers' : 'mask'))).toBe('Left glove, fingers on the mask.');
  });

  it('name every pace of a run', () => {
    const pace = (slowdown: 1 | 2 | 4) => ({ step: 0, commands: [{ type: 'pace' as const, slowdown }] });
    expect(paceWords({ commands: [] })).toBe('normal pace');
    expect(paceWords({ commands: [pace(1), pace(4), pace(1)] })).toBe('normal pace and quarter pace');
  });

  it('say what checking came to', () => {
    expect(verificationWords({ verdict: 'verified' })).toMatchObject({ good: true });
    expect(verificationWords({ verdict: 'diverged', firstDivergentStep: 1200 }).words).toContain('from 00:10 on');
    expect(verificationWords({ verdict: 'resultDiffers', differences: [{ path: 'breaks.0.step', written: '1', replayed: '2' }] }).words).toContain('breaks.0.step');
    expect(verificationWords({ verdict: 'otherSimulation', simulation: 7 })).toMatchObject({ good: false });
    expect(verificationWords({ verdict: 'brokenOff', steps: 5 })).toMatchObject({ good: true });
  });
});
