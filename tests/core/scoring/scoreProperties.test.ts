import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Break } from '../../../src/core/ledger/break.ts';
import { RULE_BOOK } from '../../../src/core/ledger/rules/ruleBook.ts';
import type { RunResult } from '../../../src/core/run/result.ts';
import { gradeBreaks } from '../../../src/core/scoring/grading.ts';
import { isCriticalTask } from '../../../src/core/scoring/procedurePart.ts';
import { scoreRun } from '../../../src/core/scoring/scoreRun.ts';
import { allTasks, broken, measured, runWith, scenarioWith } from './scoredRun.ts';

const step = fc.integer({ min: 0, max: 40000 });

const aBreak: fc.Arbitrary<Break> = fc
  .record({
    rule: fc.constantFrom(...RULE_BOOK.map(({ id }) => id)),
    step,
    severity: fc.constantFrom('minor', 'major', 'critical'),
    reach: fc.constantFrom('none', 'field', 'device', 'site'),
    saidAfter: fc.option(fc.integer({ min: 0, max: 9000 })),
    rightAfter: fc.option(fc.integer({ min: 0, max: 9000 })),
    used: fc.boolean(),
  })
  .map(({ saidAfter, rightAfter, used, ...known }) =>
    broken({ ...known, noticedStep: saidAfter === null ? null : known.step + saidAfter, remediedStep: rightAfter === null ? null : known.step + rightAfter, ...(used ? { escalatedBy: ['unsterile-used-at-site'] } : {}) }),
  );

const aRun: fc.Arbitrary<RunResult> = fc
  .record({
    breaks: fc.array(aBreak, { maxLength: 5 }),
    done: fc.array(fc.option(step), { minLength: 6, maxLength: 6 }),
    steadyShare: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
    steps: fc.integer({ min: 1, max: 80000 }),
    gap: fc.double({ min: 0, max: 0.3, noNaN: true }),
    drops: fc.array(step, { maxLength: 3 }),
    slid: fc.double({ min: 0, max: 0.05, noNaN: true }),
  })
  .map(({ breaks, done, steadyShare, steps, gap, drops, slid }) =>
    runWith({
      breaks: breaks.map((known, k) => ({ ...known, number: k + 1 })),
      tasks: allTasks().map((task, k) => ({ ...task, doneStep: done[k]! })),
      steadyShare,
      steps,
      driftM: { left: slid, right: 0 },
      measured: measured({ drops: drops.map((at) => ({ thing: 'gel', step: at })), clearance: [{ hand: 'left', thing: 'pole', metres: gap, step: 3 }] }),
    }),
  );

const SCENARIO = scenarioWith();
const total = (result: RunResult): number => scoreRun(result, SCENARIO).total;
const withBreak = (result: RunResult, k: number, change: Partial<Break>): RunResult => ({ ...result, breaks: result.breaks.map((known, n) => (n === k ? { ...known, ...change } : known)) });

/** Tries a law on many runs that have a break to speak of. */
const forEveryBreak = (law: (result: RunResult, k: number) => void): void =>
  fc.assert(fc.property(aRun, fc.nat(), (result, n) => void (result.breaks.length > 0 && law(result, n % result.breaks.length))), { numRuns: 400 });

describe('Whatever the run, its score', () => {
  it('is the same every time, survives a file, and lies between 0 and 100', () => {
    fc.assert(
      fc.property(aRun, (result) => {
        const score = scoreRun(result, SCENARIO);
        expect(scoreRun(structuredClone(result), SCENARIO)).toEqual(score);
        expect(JSON.parse(JSON.stringify(score))).toEqual(score);
        expect(score.total).toBeGreaterThanOrEqual(0);
        expect(score.total).toBeLessThanOrEqual(100);
        for (const part of score.parts) expect(part.points).toBeLessThanOrEqual(part.of);
      }),
    );
  });

  it('is not lowered by taking a break away', () => forEveryBreak((result, k) => expect(total({ ...result, breaks: result.breaks.filter((_, n) => n !== k) })).toBeGreaterThanOrEqual(total(result))));

  it('is not lowered by putting a break right', () => forEveryBreak((result, k) => expect(total(withBreak(result, k, { remediedStep: 50000 }))).toBeGreaterThanOrEqual(total(result))));

  it('is not lowered by saying it, unless it is then left while the work goes on', () =>
    forEveryBreak((result, k) => {
      const said = withBreak(result, k, { noticedStep: result.breaks[k]!.noticedStep ?? result.breaks[k]!.step });
      if (!gradeBreaks(said, SCENARIO.rubric)[k]!.ignored) expect(total(said)).toBeGreaterThanOrEqual(total(result));
    }));

  it('is not raised by a graver break', () => forEveryBreak((result, k) => expect(total(withBreak(result, k, { severity: 'critical' }))).toBeLessThanOrEqual(total(result))));

  it('does not depend on the order in which breaks are listed', () =>
    forEveryBreak((result) => {
      const { verdict, parts, total: points } = scoreRun({ ...result, breaks: [...result.breaks].reverse() }, SCENARIO);
      const straight = scoreRun(result, SCENARIO);
      expect([verdict, points, parts.map((part) => part.points)]).toEqual([straight.verdict, straight.total, straight.parts.map((part) => part.points)]);
    }));

  it('says met only with no critical break open, nothing unsterile used, every critical task done and the total at the standard', () => {
    const seen = { met: 0 };
    fc.assert(
      fc.property(aRun, (result) => {
        const score = scoreRun(result, SCENARIO);
        if (score.verdict !== 'met') return;
        seen.met++;
        const graded = gradeBreaks(result, SCENARIO.rubric);
        expect(graded.filter(({ grade, putRight, used }) => used || (grade === 'critical' && !putRight))).toEqual([]);
        expect(result.progress.tasks.filter((task) => isCriticalTask(task, SCENARIO) && task.doneStep === null)).toEqual([]);
        expect(score.total).toBeGreaterThanOrEqual(score.standard);
      }),
      { numRuns: 2000, seed: 1 },
    );
    expect(seen.met).toBeGreaterThan(10);
  });
});
