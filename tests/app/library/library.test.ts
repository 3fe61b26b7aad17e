import { describe, expect, it } from 'vitest';
import { filterRuns, NO_FILTER, scenariosOf } from '../../../src/app/library/filterRuns.ts';
import { bytesText, exportReminder, exportWords, importWords, keepingWords, roomWords } from '../../../src/app/library/libraryWords.ts';
import { breaksText, verdictText } from '../../../src/app/library/runWords.ts';
import { trendOf } from '../../../src/app/library/trend.ts';
import { storedRun } from './storedRuns.ts';

const keys = (runs: readonly { readonly key: string }[]): string[] => runs.map(({ key }) => key);

describe('the filter', () => {
  const runs = [
    storedRun({ key: 'c', runId: 'c-77', startedAt: '2026-03-06T12:00:00.000Z', verdict: 'notYet' }),
    storedRun({ key: 'b', scenarioId: 'high-rails', title: 'High rails', startedAt: '2026-03-05T12:00:00.000Z', verdict: null, finished: false }),
    storedRun({ key: 'a', startedAt: '2026-03-04T12:00:00.000Z' }),
  ];

  it('lets everything pass at first', () => expect(keys(filterRuns(runs, NO_FILTER))).toEqual(['c', 'b', 'a']));

  it.each([
    [{ scenario: 'quiet-room' }, ['c', 'a']],
    [{ verdict: 'met' as const }, ['a']],
    [{ verdict: 'none' as const }, ['b']],
    [{ text: 'QUIET  mar' }, ['c', 'a']],
    [{ text: 'c-77' }, ['c']],
    [{ text: 'nothing like it' }, []],
    [{ from: '2026-03-05' }, ['c', 'b']],
    [{ to: '2026-03-05' }, ['b', 'a']],
    [{ from: '2026-03-05', to: '2026-03-05', scenario: 'quiet-room' }, []],
  ])('%j', (change, expected) => expect(keys(filterRuns(runs, { ...NO_FILTER, ...change }))).toEqual(expected));

  it('offers each scenario once, by title, and none for a damaged line', () => {
    expect(scenariosOf([...runs, storedRun({ scenarioId: '', title: '' })])).toEqual([
      { id: 'quiet-room', title: 'A quiet room' },
      { id: 'high-rails', title: 'High rails' },
    ]);
  });
});

describe('the chart of breaks', () => {
  it('shows finished runs from the oldest to the newest and counts every break once', () => {
    const trend = trendOf([storedRun({ key: 'new', breaks: { minor: 1, major: 0, critical: 2 } }), storedRun({ key: 'open', finished: false }), storedRun({ key: 'old' })]);
    expect(trend.bars.map(({ key, total }) => [key, total])).toEqual([['old', 0], ['new', 3]]);
    expect([trend.ticks, trend.top, trend.left]).toEqual([[0, 1, 2, 3], 3, 0]);
  });

  it.each([[0, [0, 1]], [4, [0, 1, 2, 3, 4]], [7, [0, 2, 4, 6, 8]], [17, [0, 5, 10, 15, 20]], [199, [0, 50, 100, 150, 200]]])('with at most %i breaks has the lines %j: from nothing to above the highest', (most, ticks) => {
    expect(trendOf([storedRun({ breaks: { minor: most, major: 0, critical: 0 } })]).ticks).toEqual(ticks);
  });

  it('keeps the newest and says how many are left out', () => {
    const trend = trendOf(Array.from({ length: 50 }, (_, k) => storedRun({ key: String(k) })));
    expect([trend.bars.length, trend.left, trend.bars.at(-1)?.key]).toEqual([40, 10, '0']);
  });
});

describe('words of the page', () => {
  it('tell what an import came to', () => {
    const none = { added: 0, same: 0, takenBack: 0, beside: 0, refused: [] };
    expect(importWords(none)).toBe('0 runs imported.');
    expect(importWords({ ...none, added: 1, same: 2, refused: [{ name: 'x', words: 'Wrong.' }] })).toBe('1 run imported. 2 runs were here already and skipped. 1 file was refused.');
    expect(importWords({ ...none, takenBack: 1, beside: 2 })).toBe('1 run that had been deleted or damaged here is back. 2 runs have the id of a run that was here, but another content: both are kept and marked.');
  });

  it('tell what an export came to', () => {
    expect(exportWords({ saved: 2, failed: [] })).toBe('2 runs exported as one archive.');
    expect(exportWords({ saved: 0, failed: [{ name: 'x', words: 'Gone.' }] })).toBe('Nothing was exported. 1 run could not be read.');
  });

  it('tell how safe the runs are', () => {
    const state = { persisted: true, usedBytes: 12_345_678, quotaBytes: 2.14e9 };
    expect(keepingWords(state)).toMatch(/has promised/);
    expect(keepingWords({ ...state, persisted: false })).toMatch(/may clear/);
    expect(keepingWords({ ...state, persisted: null })).toMatch(/may clear/);
    expect(roomWords(state)).toBe('12 MB used of about 2.1 GB that it allows.');
    expect(roomWords({ ...state, quotaBytes: null })).toBeNull();
    expect([0, 820_400, 1_440_000, 62e9].map(bytesText)).toEqual(['0 kB', '820 kB', '1.4 MB', '62 GB']);
  });

  it('remind of runs that are nowhere else', () => {
    expect(exportReminder([])).toBeNull();
    expect(exportReminder([storedRun(), storedRun({ exportedAt: '2026-03-04T12:00:00.000Z' }), storedRun({ fault: 'Damaged.' })])).toMatch(/^1 run has not been exported yet\./);
    expect(exportReminder([storedRun({ exportedAt: '2026-03-04T12:00:00.000Z' })])).toMatch(/a copy outside/);
  });

  it('tell verdict and breaks of a line', () => {
    expect([storedRun(), storedRun({ verdict: 'notYet' }), storedRun({ verdict: null }), storedRun({ verdict: null, finished: false })].map(verdictText)).toEqual(['met', 'not yet', 'not scored', 'none']);
    expect(breaksText(storedRun())).toBe('none');
    expect(breaksText(storedRun({ breaks: { minor: 3, major: 1, critical: 2 } }))).toBe('2 critical, 1 major and 3 minor');
    expect(breaksText(storedRun({ finished: false }))).toBe('–');
  });
});
