import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SHEATH_TASKS, type Progress, type LoadingObservation, type SheathTaskId } from '../../../../src/core/procedure/observation.ts';
import { SheathProcedure } from '../../../../src/core/procedure/sheath/SheathProcedure.ts';
import { sheathScenario } from './SheathDriver.ts';
import { along, expectGoesOn, faultIf, holdsThrough, streamOf, type Check } from '../streams.ts';

/** A short time on the field, so that random work completes something. */
const SCENARIO = sheathScenario({ tasks: { parkedS: 1 } });

/** Any scene at all, shown for some steps; one sheath throughout, so that work gets somewhere. */
const stretch = fc.record({
  steps: fc.integer({ min: 1, max: 250 }),
  sheath: fc.constantFrom('on' as const, 'on' as const, 'on' as const, 'open' as const, 'held' as const),
  gathered: fc.constantFrom(0, 0.5, 1),
  gelMl: fc.constantFrom(1, 4, 5, 9),
  otherGelMl: fc.constantFrom(0, 9),
  probe: fc.record({ withAssistant: fc.boolean(), stopped: fc.constant(null), overMouth: fc.boolean(), inside: fc.boolean(), heldThrough: fc.constantFrom(null, null, 'left' as const, 'right' as const), lyingOnField: fc.boolean() }),
  coveredM: fc.constantFrom(0, 0.5, 0.9),
  coverableM: fc.constant(1.09),
  endHeld: fc.boolean(),
  faceSpoiled: fc.constantFrom(0, 0.05, 0.2, 0.4, 1),
  bands: fc.record({ head: fc.boolean(), cord: fc.boolean() }),
  torn: fc.constant(false),
  cordHeld: fc.constant(false),
  packed: fc.constant([]),
  used: fc.constant([]),
  gelComingMl: fc.constantFrom(0, 0, 3, 6),
  dropped: fc.subarray(['gel', 'bandOne', 'sheathRoll', 'probe']),
});
const work = fc.array(stretch, { maxLength: 14 });
type Work = typeof work extends fc.Arbitrary<infer T> ? T : never;

const report = (progress: Progress, task: SheathTaskId) => progress.tasks.find((one) => one.task === task)!;
const isDone = (progress: Progress, task: SheathTaskId): boolean => report(progress, task).doneStep !== null;

const RUNS = { numRuns: 300, seed: 12 };
const judged = (stretches: Work, check: Check<LoadingObservation>): string | null => along(new SheathProcedure(SCENARIO), streamOf(stretches), check);
const holdsAlways = (check: Check<LoadingObservation>): void => holdsThrough(work, (stretches) => judged(stretches, check), RUNS);

/** What must come before a task, said once more in other words: the chain, with three in the middle that go in any order. */
const STAGE: Readonly<Record<SheathTaskId, number>> = { gelInside: 0, probeTaken: 1, covered: 2, airOut: 2, banded: 2, laidDown: 3 };

describe('Whatever the hands do', () => {
  it('a done task keeps its step and its order, but for air and laying down', () => {
    holdsAlways((before, after) => {
      const kept = before.tasks.filter((old) => old.doneStep !== null && old.task !== 'airOut' && old.task !== 'laidDown');
      const changed = kept.find((old) => JSON.stringify(report(after, old.task as SheathTaskId)) !== JSON.stringify(old));
      return faultIf(changed !== undefined, `${changed?.task} changed`);
    });
  });

  it('air is taken back only by a spoiled face and before the probe is laid down', () => {
    holdsAlways((before, after, seen) => {
      if (!isDone(before, 'airOut') || isDone(after, 'airOut')) return null;
      return faultIf(seen.faceSpoiled <= 0.3, 'taken back for nothing') ?? faultIf(isDone(before, 'laidDown'), 'taken back after laying down');
    });
  });

  it('laying down is taken back only by a probe that nobody holds and that does not lie', () => {
    holdsAlways((before, after, { probe }) => faultIf(isDone(before, 'laidDown') && !isDone(after, 'laidDown') && (probe.heldThrough !== null || probe.withAssistant || probe.lyingOnField), 'taken back for nothing'));
  });

  it('a task is done in the present step, out of order exactly if something of an earlier stage was open', () => {
    holdsAlways((before, after, seen) => {
      for (const one of after.tasks) {
        const task = one.task as SheathTaskId;
        if (one.doneStep === null || isDone(before, task)) continue;
        const missing = SHEATH_TASKS.find((other) => STAGE[other] < STAGE[task] && !isDone(after, other)) ?? null;
        if (one.doneStep !== seen.step || one.outOfOrderAfter !== missing) return `${task} recorded ${one.doneStep}, ${one.outOfOrderAfter}; missing ${missing}`;
      }
      return null;
    });
  });

  it('progress lies between 0 and 1 and is 1 when done, and the current task is the first open one', () => {
    holdsAlways((_, after) => {
      const odd = after.tasks.find((one) => !(one.progress >= 0 && one.progress <= 1) || (one.doneStep !== null && one.progress !== 1));
      const first = after.tasks.find((one) => one.doneStep === null)?.task ?? 'finished';
      return faultIf(odd !== undefined, `${odd?.task} is at ${odd?.progress}`) ?? faultIf(after.current !== first, `current is ${after.current}`);
    });
  });

  it('the probe is never taken while the assistant has it, and nothing that needs the sheath on the probe comes without', () => {
    holdsAlways((before, after, { probe, sheath }) => {
      const came = (task: SheathTaskId): boolean => !isDone(before, task) && isDone(after, task);
      if (came('probeTaken') && (probe.withAssistant || probe.heldThrough === null || !probe.inside)) return 'taken from the assistant';
      return faultIf(sheath !== 'on' && (['covered', 'airOut', 'banded', 'laidDown'] as const).some(came), 'done without the sheath');
    });
  });

  it('all of this is judged on work that gets somewhere', () => {
    const met = { probeTaken: 0, covered: 0, airOut: 0, banded: 0, laidDown: 0, airBack: 0, slid: 0, outOfOrder: 0 };
    for (const stretches of fc.sample(work, RUNS)) {
      judged(stretches, (before, after) => {
        for (const task of ['probeTaken', 'covered', 'airOut', 'banded', 'laidDown'] as const) if (!isDone(before, task) && isDone(after, task)) met[task]++;
        if (isDone(before, 'airOut') && !isDone(after, 'airOut')) met.airBack++;
        if (isDone(before, 'laidDown') && !isDone(after, 'laidDown')) met.slid++;
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
      fc.property(work, fc.nat(), (stretches, cut) => expectGoesOn<LoadingObservation>(() => new SheathProcedure(SCENARIO), streamOf(stretches), cut)),
      RUNS,
    );
  });
});
