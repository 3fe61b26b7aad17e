import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FieldProcedure } from '../../../../src/core/procedure/field/FieldProcedure.ts';
import type { FieldObservation, Progress, TaskId } from '../../../../src/core/procedure/observation.ts';
import { scenarioWith } from './FieldDriver.ts';
import { along, expectGoesOn, faultIf, holdsThrough, streamOf, type Check } from '../streams.ts';

/** Short holds, so that random work completes something. */
const SCENARIO = scenarioWith({ 'tasks.steadyViewS': 1, 'tasks.parkedS': 1, 'tasks.readyS': 0.5 });

const share = fc.constantFrom(0, 0.3, 0.5, 0.8, 1);
const hand = fc.constantFrom(null, 'left' as const, 'right' as const);
const ids = fc.subarray(['gel', 'gauze', 'probe']);

/** Any scene at all, shown for some steps. */
const stretch = fc.record({
  steps: fc.integer({ min: 1, max: 200 }),
  gelOnSite: share,
  probe: fc.record({ heldBy: hand, atSite: fc.boolean(), speed: fc.constantFrom(0, 0.01, 0.02, 0.5), coupled: fc.boolean(), lyingOnField: fc.boolean() }),
  needle: fc.record({ heldBy: hand, tipToSite: fc.constantFrom(0, 0.02, 0.04, Infinity), speed: fc.constantFrom(0, 1) }),
  anaesthetic: share,
  rubbishLeft: fc.subarray(['gel', 'gauze']),
  binned: ids,
  sharpsBinned: fc.subarray(['needle']),
  dropped: ids,
});
const work = fc.array(stretch, { maxLength: 12 });
type Work = typeof work extends fc.Arbitrary<infer T> ? T : never;

const report = (progress: Progress, task: TaskId) => progress.tasks.find((one) => one.task === task)!;

const RUNS = { numRuns: 150, seed: 11 };
const judged = (stretches: Work, check: Check<FieldObservation>): string | null => along(new FieldProcedure(SCENARIO), streamOf(stretches), check);
const holdsAlways = (check: Check<FieldObservation>): void => holdsThrough(work, (stretches) => judged(stretches, check), RUNS);

const isDone = (progress: Progress, task: TaskId): boolean => report(progress, task).doneStep !== null;

describe('Whatever the hands do', () => {
  it('a done task keeps its step and its order, but for parking and rubbish', () => {
    holdsAlways((before, after) => {
      const kept = before.tasks.filter((old) => old.doneStep !== null && old.task !== 'park' && old.task !== 'rubbish');
      const changed = kept.find((old) => JSON.stringify(report(after, old.task)) !== JSON.stringify(old));
      return faultIf(changed !== undefined, `${changed?.task} changed`);
    });
  });

  it('parking is undone only by a probe that nobody holds and that does not lie still, or by the first view; never after readiness', () => {
    holdsAlways((before, after, seen) => {
      if (!isDone(before, 'park') || isDone(after, 'park')) return null;
      const slid = seen.probe.heldBy === null && !seen.probe.lyingOnField && (seen.probe.speed > 0.01 || seen.dropped.includes('probe'));
      const firstView = !isDone(before, 'view') && isDone(after, 'view');
      return faultIf(!slid && !firstView, 'undone for nothing') ?? faultIf(isDone(before, 'ready'), 'undone after readiness');
    });
  });

  it('rubbish is done exactly while nothing is left', () => {
    holdsAlways((_, after, seen) => faultIf(isDone(after, 'rubbish') !== (seen.rubbishLeft.length === 0), 'rubbish misjudged'));
  });

  it('a task is done in the present step, out of order exactly if something before it was open', () => {
    holdsAlways((before, after, seen) => {
      for (const one of after.tasks) {
        if (one.doneStep === null || isDone(before, one.task)) continue;
        const earlier = one.task === 'rubbish' ? [] : after.tasks.slice(0, after.tasks.indexOf(one));
        const missing = earlier.find((other) => other.doneStep === null)?.task ?? null;
        if (one.doneStep !== seen.step || one.outOfOrderAfter !== missing) return `${one.task} recorded ${one.doneStep}, ${one.outOfOrderAfter}; missing ${missing}`;
      }
      return null;
    });
  });

  it('progress lies between 0 and 1 and is 1 when done, and the current task is the first open one', () => {
    holdsAlways((_, after) => {
      const odd = after.tasks.find((one) => !(one.progress >= 0 && one.progress <= 1) || (one.doneStep !== null && one.progress !== 1));
      const first = after.tasks.find((one) => one.doneStep === null)?.task ?? 'finished';
      const steady = after.steadyShare ?? 0;
      return faultIf(odd !== undefined, `${odd?.task} is at ${odd?.progress}`) ?? faultIf(after.current !== first, `current is ${after.current}`) ?? faultIf(!(steady >= 0 && steady <= 1), `steady ${steady}`);
    });
  });

  it('readiness never comes without both at the site in different hands', () => {
    holdsAlways((before, after, { probe, needle }) => {
      if (isDone(before, 'ready') || !isDone(after, 'ready')) return null;
      const both = probe.heldBy !== null && needle.heldBy !== null && probe.heldBy !== needle.heldBy && probe.atSite && needle.tipToSite <= 0.03;
      return faultIf(!both, 'ready without both');
    });
  });

  it('all of this is judged on work that gets somewhere', () => {
    const met = { view: 0, park: 0, ready: 0, slid: 0, outOfOrder: 0 };
    for (const stretches of fc.sample(work, RUNS)) {
      judged(stretches, (before, after) => {
        for (const task of ['view', 'park', 'ready'] as const) if (!isDone(before, task) && isDone(after, task)) met[task]++;
        if (isDone(before, 'park') && !isDone(after, 'park')) met.slid++;
        if (after.tasks.some((one) => one.outOfOrderAfter !== null)) met.outOfOrder++;
        return null;
      });
    }
    for (const [what, times] of Object.entries(met)) expect(times, what).toBeGreaterThan(2);
  });
});

describe('A snapshot', () => {
  it('goes on exactly as the original, also through JSON, and does not change with it', () => {
    fc.assert(
      fc.property(work, fc.nat(), (stretches, cut) => expectGoesOn<FieldObservation>(() => new FieldProcedure(SCENARIO), streamOf(stretches), cut)),
      RUNS,
    );
  });
});
