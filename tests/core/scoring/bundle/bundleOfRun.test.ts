import { describe, expect, it } from 'vitest';
import type { RunResult } from '../../../../src/core/run/result.ts';
import { bundleOfRun } from '../../../../src/core/scoring/bundle/bundleOfRun.ts';
import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../../src/core/scenario/schema.ts';
import { resultWith, taskDone } from '../resultWith.ts';

const scenario = (before: ScenarioSource['before'] = {}): Scenario => scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'b', title: 'Bundle', summary: 'For tests.', seed: 1, station: 'field', before });
const remedy = (remedy: RunResult['remedies'][number]['remedy'], endStep: number, ...things: string[]): RunResult['remedies'][number] => ({ remedy, startStep: endStep - 10, endStep, things });
const fromRun = (result: RunResult, of: Scenario): string[] => bundleOfRun(result, of).attempts.at(-1)!.origins.filter(({ from }) => from === 'run').map(({ input }) => input);

describe('The bundle of a run', () => {
  it('is met by what a perfect operator left, and says that all of it comes from the start', () => {
    const { attempts } = bundleOfRun(resultWith({ tasks: [taskDone('anaesthetic', 500)] }), scenario());
    expect(attempts).toHaveLength(1);
    expect(attempts[0]).toMatchObject({ preparedStep: 0, punctureStep: 500, bundle: { met: true } });
    expect(attempts[0]!.origins.map(({ from }) => from)).toEqual(Array(11).fill('start'));
  });

  it('takes what an author says was missing', () => {
    const { attempts } = bundleOfRun(resultWith({}), scenario({ antiseptics: ['povidoneIodine'], cap: 'no' }));
    expect(attempts[0]!.bundle.elements.filter(({ met }) => !met).map(({ id }) => id)).toEqual(['skinPrep', 'barriers']);
    expect(attempts[0]!.punctureStep).toBeNull();
  });

  it('is dry when the skin was prepared again before the puncture', () => {
    const wet = scenario({ dry: 'no' });
    expect(bundleOfRun(resultWith({ tasks: [taskDone('anaesthetic', 500)] }), wet).attempts.map(({ bundle }) => bundle.met)).toEqual([false]);
    const again = resultWith({ remedies: [remedy('prepAndDrape', 400, 'site#1')], tasks: [taskDone('anaesthetic', 500)] });
    const { attempts } = bundleOfRun(again, wet);
    expect(attempts.map(({ preparedStep, bundle }) => [preparedStep, bundle.met])).toEqual([[400, true]]);
    expect(fromRun(again, wet)).toEqual(['dry']);
  });

  // Each attempt that needs a new skin preparation is its own event; what was punctured wet is not made good by a later one.
  it('counts a preparation after a puncture as an attempt of its own and leaves the first as it was', () => {
    const result = resultWith({ remedies: [remedy('prepAndDrape', 900, 'site#1')], tasks: [taskDone('anaesthetic', 500), taskDone('ready', 1500)] });
    expect(bundleOfRun(result, scenario({ dry: 'no' })).attempts.map(({ punctureStep, bundle }) => [punctureStep, bundle.met])).toEqual([[500, false], [1500, true]]);
  });

  it('shows the state at the end even where it was not punctured again', () => {
    const result = resultWith({ remedies: [remedy('prepAndDrape', 900, 'site#1')], tasks: [taskDone('anaesthetic', 500)] });
    expect(bundleOfRun(result, scenario()).attempts.map(({ punctureStep }) => punctureStep)).toEqual([500, null]);
  });

  it('counts gloves and gown that were put on in the run, both gloves or none', () => {
    const bare = scenario({ gloves: 'no', gown: 'unknown' });
    const one = resultWith({ remedies: [remedy('changeGlove', 100, 'glove.left#1')] });
    const both = resultWith({ remedies: [remedy('changeGlove', 100, 'glove.left#1'), remedy('changeGlove', 200, 'glove.right#1')] });
    const twice = resultWith({ remedies: [remedy('changeGlove', 100, 'glove.left#1'), remedy('changeGlove', 200, 'glove.left#2')] });
    const gown = resultWith({ remedies: [remedy('changeGownAndGloves', 100, 'gown#1', 'glove.right#1', 'glove.left#1')] });
    expect(fromRun(one, bare)).toEqual([]);
    expect(fromRun(twice, bare)).toEqual([]);
    expect(fromRun(both, bare)).toEqual(['gloves']);
    expect(fromRun(gown, bare).sort()).toEqual(['gloves', 'gown']);
    expect(bundleOfRun(both, bare).attempts[0]!.bundle.met).toBe(false);
    expect(bundleOfRun(gown, bare).attempts[0]!.bundle.met).toBe(true);
  });

  it('takes gown and gloves of a run that begins with gowning from what was done there', () => {
    const gowning: Scenario = { ...scenario(), station: 'gown' };
    const on = [taskDone('armsIn', 100), taskDone('tied', 200), taskDone('firstGlove', 300), taskDone('secondGlove', 400)];
    const judged = (tasks: RunResult['progress']['tasks']): unknown => {
      const { inputs, bundle } = bundleOfRun(resultWith({ tasks: [...tasks] }), gowning).attempts.at(-1)!;
      return [inputs.gown, inputs.gloves, bundle.met];
    };
    expect(judged(on)).toEqual(['yes', 'yes', true]);
    expect(judged(on.filter(({ task }) => task !== 'tied'))).toEqual(['no', 'yes', false]);
    expect(judged(on.filter(({ task }) => task !== 'secondGlove'))).toEqual(['yes', 'no', false]);
    expect(judged([...on, taskDone('anaesthetic', 350)])).toEqual(['yes', 'no', false]);
    expect(fromRun(resultWith({ tasks: on }), gowning).sort()).toEqual(['gloves', 'gown']);
  });

  it('does not count what came after the puncture', () => {
    const result = resultWith({ remedies: [remedy('changeGownAndGloves', 800, 'gown#1', 'glove.right#1', 'glove.left#1')], tasks: [taskDone('anaesthetic', 500)] });
    expect(fromRun(result, scenario({ gloves: 'no' }))).toEqual([]);
    expect(bundleOfRun(result, scenario({ gloves: 'no' })).attempts[0]!.bundle.met).toBe(false);
  });

  it('names what it reads into the rule and what it does not measure', () => {
    const { interpretations, notMeasured } = bundleOfRun(resultWith({}), scenario());
    expect(interpretations).toHaveLength(5);
    expect(notMeasured.length).toBeGreaterThanOrEqual(9);
    for (const sentence of interpretations) expect(sentence).toMatch(/^[A-Z].*\.$/);
  });
});
