import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { StateHash } from '../../../../src/core/base/hash.ts';
import { FieldProcedure } from '../../../../src/core/procedure/field/FieldProcedure.ts';
import type { FieldObservation, Progress, TaskId } from '../../../../src/core/procedure/observation.ts';
import { scenarioWith } from './FieldDriver.ts';

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

/** The stretches of work step by step. */
function streamOf(stretches: Work): FieldObservation[] {
  let step = 0;
  return stretches.flatMap(({ steps, ...scene }) => Array.from({ length: steps }, () => ({ ...scene, step: step++ })));
}

const hashOf = (procedure: FieldProcedure): string => {
  const hash = new StateHash();
  procedure.hashInto(hash);
  return hash.digest();
};
const report = (progress: Progress, task: TaskId) => progress.tasks.find((one) => one.task === task)!;

/** What a step did wrong, in words, or null. */
type Check = (before: Progress, after: Progress, seen: FieldObservation) => string | null;

/** Shows the stream and judges the progress before and after every step; the first fault found. */
function along(stream: readonly FieldObservation[], check: Check): string | null {
  const procedure = new FieldProcedure(SCENARIO);
  let before = procedure.progress;
  for (const seen of stream) {
    procedure.observe(seen);
    const after = procedure.progress;
    const fault = check(before, after, seen);
    if (fault !== null) return `step ${seen.step}: ${fault}`;
    before = after;
  }
  return null;
}

const RUNS = { numRuns: 150, seed: 11 };
const holdsAlways = (check: Check): void => fc.assert(fc.property(work, (stretches) => void expect(along(streamOf(stretches), check)).toBeNull()), RUNS);

const isDone = (progress: Progress, task: TaskId): boolean => report(progress, task).doneStep !== null;
const faultIf = (wrong: boolean, fault: string): string | null => (wrong ? fault : null);

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
      along(streamOf(stretches), (before, after) => {
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
      fc.property(work, fc.nat(), (stretches, cut) => {
        const stream = streamOf(stretches);
        const at = stream.length === 0 ? 0 : cut % stream.length;
        const first = new FieldProcedure(SCENARIO);
        stream.slice(0, at).forEach((seen) => first.observe(seen));
        const snapshot = first.snapshot();
        const text = JSON.stringify(snapshot);
        const second = new FieldProcedure(SCENARIO);
        second.restore(JSON.parse(text));
        expect(hashOf(second)).toBe(hashOf(first));
        for (const seen of stream.slice(at)) {
          first.observe(seen);
          second.observe(seen);
        }
        expect(second.progress).toEqual(first.progress);
        expect(hashOf(second)).toBe(hashOf(first));
        expect(JSON.stringify(snapshot)).toBe(text);
      }),
      RUNS,
    );
  });

  it('takes a procedure back to before', () => {
    const procedure = new FieldProcedure(SCENARIO);
    const start = procedure.snapshot();
    const hash = hashOf(procedure);
    procedure.observe({ step: 0, gelOnSite: 1, probe: { heldBy: 'left', atSite: true, speed: 0, coupled: true, lyingOnField: false }, needle: { heldBy: null, tipToSite: 1, speed: 0 }, anaesthetic: 0, rubbishLeft: [], binned: [], sharpsBinned: [], dropped: [] });
    expect(hashOf(procedure)).not.toBe(hash);
    procedure.restore(start);
    expect(hashOf(procedure)).toBe(hash);
    expect(procedure.progress.tasks.every((one) => one.doneStep === null)).toBe(true);
  });

  it('of two procedures that differ in one counted step differs in its hash', () => {
    const shown = (steps: number): string => {
      const procedure = new FieldProcedure(SCENARIO);
      for (let step = 0; step < 10; step++) procedure.observe({ step, gelOnSite: 0, probe: { heldBy: 'left', atSite: true, speed: step < steps ? 0 : 1, coupled: true, lyingOnField: false }, needle: { heldBy: null, tipToSite: 1, speed: 0 }, anaesthetic: 0, rubbishLeft: ['gel'], binned: [], sharpsBinned: [], dropped: [] });
      return hashOf(procedure);
    };
    expect(shown(5)).not.toBe(shown(6));
  });
});
