import type { RunResult } from '../../run/result.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { INTERPRETATIONS, NOT_MEASURED } from './bundleNotes.ts';
import { insertionBundle, type BundleInputs, type InsertionBundle } from './bundle.ts';

/** Where an input comes from: the scenario's start (`before`), or something that was done in the run. */
export interface InputOrigin {
  readonly input: keyof BundleInputs;
  readonly from: 'start' | 'run';
  /** What in the run set it; absent when it comes from the start. */
  readonly why?: string;
}

/** One attempt: every puncture that needed a skin preparation of its own is judged by itself. */
export interface BundleAttempt {
  /** Step of the preparation that it rests on; 0 for that of the start. */
  readonly preparedStep: number;
  /** Step at which the skin was first punctured under this preparation, or null when it was not. */
  readonly punctureStep: number | null;
  readonly inputs: BundleInputs;
  readonly origins: readonly InputOrigin[];
  readonly bundle: InsertionBundle;
}

/** The insertion bundle of a run. */
export interface BundleOfRun {
  /** In order of time; the last one is the state at the end of the run, and always there. */
  readonly attempts: readonly BundleAttempt[];
  /** What is read into the published rule, and what it leaves out; sentences to show beside it. */
  readonly interpretations: readonly string[];
  readonly notMeasured: readonly string[];
}

/** The insertion bundle from what the scenario says was done before and what the run itself changed. */
export function bundleOfRun(result: RunResult, scenario: Scenario): BundleOfRun {
  const preparations = [0, ...result.remedies.filter(({ remedy }) => remedy === 'prepAndDrape').map(({ endStep }) => endStep)];
  const attempts = preparations
    .map((preparedStep, k) => attempt(result, scenario, preparedStep, preparations[k + 1] ?? result.steps + 1))
    .filter(({ punctureStep }, k) => punctureStep !== null || k === preparations.length - 1);
  return { attempts, interpretations: INTERPRETATIONS, notMeasured: NOT_MEASURED };
}

/** Work at the site at which a needle goes through the skin; the trainer knows only when it was done. */
const PUNCTURES = ['anaesthetic', 'ready'] as const;

function attempt(result: RunResult, scenario: Scenario, preparedStep: number, until: number): BundleAttempt {
  const steps = result.progress.tasks
    .filter(({ task, doneStep }) => PUNCTURES.some((one) => one === task) && doneStep !== null && doneStep >= preparedStep && doneStep < until)
    .map(({ doneStep }) => doneStep!);
  const punctureStep = steps.length === 0 ? null : Math.min(...steps);
  const by = punctureStep ?? until;
  const changes = changesBefore(result, preparedStep, by);
  const dressed = scenario.station === 'gown' ? dressing(result, by) : [];
  const inputs: BundleInputs = {
    ...scenario.before,
    ...Object.fromEntries(dressed.map(({ input, done }) => [input, done ? 'yes' : 'no'])),
    ...Object.fromEntries(changes.map(({ input }) => [input, 'yes'])),
  };
  const origins = (Object.keys(scenario.before) as (keyof BundleInputs)[]).map((input): InputOrigin => [...changes, ...dressed].find((change) => change.input === input) ?? { input, from: 'start' });
  return { preparedStep, punctureStep, inputs, origins, bundle: insertionBundle(inputs) };
}

type TaskDone = RunResult['progress']['tasks'][number];

/** Gown and gloves of a run that begins with putting them on: worn when the steps that put them on were done in time, whatever was assumed. */
function dressing(result: RunResult, step: number): readonly (InputOrigin & { readonly done: boolean })[] {
  const isDone = (task: TaskDone['task']): boolean => result.progress.tasks.some((one) => one.task === task && one.doneStep !== null && one.doneStep <= step);
  return [
    { input: 'gown', from: 'run', why: 'The gown was to be put on in the run.', done: isDone('armsIn') && isDone('tied') },
    { input: 'gloves', from: 'run', why: 'The gloves were to be put on in the run.', done: isDone('firstGlove') && isDone('secondGlove') },
  ];
}

/** What the run set to yes before the puncture. */
function changesBefore(result: RunResult, preparedStep: number, step: number): readonly InputOrigin[] {
  const done = result.remedies.filter(({ endStep }) => endStep <= step);
  const gowned = done.some(({ remedy }) => remedy === 'changeGownAndGloves');
  const changed = new Set(done.filter(({ remedy }) => remedy === 'changeGlove').flatMap(({ things }) => things.map((thing) => thing.split('#')[0])));
  const changes: InputOrigin[] = [];
  if (preparedStep > 0) changes.push({ input: 'dry', from: 'run', why: 'The skin was prepared again in the run, which includes its drying.' });
  if (gowned) changes.push({ input: 'gown', from: 'run', why: 'A new sterile gown was put on in the run.' });
  if (gowned || changed.size === 2) changes.push({ input: 'gloves', from: 'run', why: 'New sterile gloves were put on in the run, on both hands.' });
  return changes;
}
