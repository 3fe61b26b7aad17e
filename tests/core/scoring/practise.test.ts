import { describe, expect, it } from 'vitest';
import type { RunResult } from '../../../src/core/run/result.ts';
import { exerciseLink, type Offer, practiseNext } from '../../../src/core/scoring/practise.ts';
import { scoreRun } from '../../../src/core/scoring/scoreRun.ts';
import { shippedScenarios } from '../scenario/shipped.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { SKILLS } from '../../../src/core/scenario/rubric.ts';
import { allTasks, broken, measured, PUT_RIGHT, runWith, SAID, scenarioWith, task } from './scoredRun.ts';

const offer = (id: string, ...trains: Offer['trains']): Offer => ({ id, title: id, station: 'field', minutes: 5, trains });
const OFFERS = [offer('rails', 'hands', 'cord'), offer('calm', 'order', 'steadiness'), offer('cloth', 'drape', 'interruptions'), offer('drill', 'recovery')];
const PLAYED = { scenarioId: 'calm', station: 'field', seed: 7 } as const;
const next = (result: RunResult, offers: readonly Offer[] = OFFERS) => practiseNext(scoreRun(result, scenarioWith()), PLAYED, offers);
const ids = (result: RunResult) => next(result).map(({ scenarioId }) => scenarioId);

describe('What to practise next', () => {
  it('is more of the same, with another seed, after a run without fault', () => {
    const [exercise, ...more] = next(runWith());
    expect(more).toEqual([]);
    expect(exercise).toMatchObject({ scenarioId: 'calm', station: 'field', minutes: 5, why: expect.stringMatching(/^Met\. /) });
    expect(exercise!.seed).not.toBe(7);
  });

  it.each<[string, RunResult, string[]]>([
    ['a glove on a rail, said and put right', runWith({ breaks: [broken({ ...SAID, ...PUT_RIGHT })] }), ['rails']],
    ['a glove on a rail that nobody said', runWith({ breaks: [broken()] }), ['rails', 'drill']],
    ['a cord on the field, said and left', runWith({ breaks: [broken({ rule: 'cord-on-field', noticedStep: 9000 })] }), ['rails', 'drill']],
    ['a hand on the face after an itch, put right', runWith({ cues: [{ step: 1000, kind: 'itch', words: 'Your nose itches.' }], breaks: [broken({ ...SAID, ...PUT_RIGHT })] }), ['rails', 'cloth']],
    ['a drape that slid to the site', runWith({ breaks: [broken({ rule: 'drape-slid-toward-site', surface: 'site#1:3', ...SAID, ...PUT_RIGHT })] }), ['cloth']],
    ['a task left out', runWith({ tasks: allTasks().map((one) => (one.task === 'park' ? task('park', null) : one)) }), ['calm']],
    ['a restless probe', runWith({ steadyShare: 0.2 }), ['calm']],
    ['a near miss', runWith({ measured: measured({ clearance: [{ hand: 'left', thing: 'pole', metres: 0.001, step: 1 }] }) }), ['rails']],
    ['nothing done', runWith({ tasks: allTasks().map((one) => task(one.task, null)), steadyShare: null }), ['calm']],
  ])('answers %s', (_, result, expected) => expect(ids(result)).toEqual(expected));

  it('is three things at most, the gravest first, and no scenario twice', () => {
    const breaks = [broken({ number: 1 }), broken({ number: 2, rule: 'drape-slid-away', surface: 'drape.left#1:1' })];
    const result = runWith({ breaks, steadyShare: 0.1, steps: 600 * 120 });
    expect(ids(result)).toEqual(['rails', 'drill', 'cloth']);
  });

  it('is the same for the same run, and other seeds for another seed', () => {
    const result = runWith({ breaks: [broken()] });
    const score = scoreRun(result, scenarioWith());
    expect(next(result)).toEqual(next(result));
    const seeds = (seed: number) => practiseNext(score, { ...PLAYED, seed }, OFFERS).map((one) => one.seed);
    expect(new Set([...seeds(1), ...seeds(2), 1, 2]).size).toBe(6);
  });

  it('takes what there is when nothing trains the skill, and gives nothing when there is nothing', () => {
    expect(next(runWith({ breaks: [broken()] }), [offer('calm')]).map(({ scenarioId }) => scenarioId)).toEqual(['calm']);
    expect(next(runWith(), [])).toEqual([]);
  });

  it('comes from the station that was played, if that has something for the skill', () => {
    const loading: Offer = { ...offer('loading', 'order'), station: 'sheath' };
    const leftOut = runWith({ tasks: allTasks().map((one) => (one.task === 'park' ? task('park', null) : one)) });
    const at = (station: 'sheath' | 'field'): string[] => practiseNext(scoreRun(leftOut, scenarioWith()), { scenarioId: 'other', station, seed: 7 }, [loading, ...OFFERS]).map(({ scenarioId }) => scenarioId);
    expect([at('field'), at('sheath')]).toEqual([['calm'], ['loading']]);
    const restless = practiseNext(scoreRun(runWith({ steadyShare: 0.2 }), scenarioWith()), { scenarioId: 'loading', station: 'sheath', seed: 7 }, [loading, ...OFFERS]);
    expect(restless).toMatchObject([{ scenarioId: 'calm', station: 'field' }]);
  });

  it('comes as a link that the page understands', () => {
    expect(exerciseLink({ ...next(runWith())[0]!, seed: 42 })).toBe('?scenario=calm&seed=42');
  });

  it('can answer every skill with a scenario that is shipped', () => {
    const trained = Object.values(shippedScenarios()).flatMap((text) => {
      const read = parseScenario(text);
      return read.ok ? read.value.trains : [];
    });
    for (const skill of SKILLS) expect(trained).toContain(skill);
  });
});
