import { describe, expect, it } from 'vitest';
import { SHEATH_TASKS, type TaskReport } from '../../../src/core/procedure/observation.ts';
import type { ScoreLine, VerdictReason } from '../../../src/core/scoring/score.ts';
import { missingForScore, scoreOf, scoreRun } from '../../../src/core/scoring/scoreRun.ts';
import type { RunResult } from '../../../src/core/run/result.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { allTasks, broken, measured, PUT_RIGHT, runWith, SAID, scenarioWith, task } from './scoredRun.ts';

const SCENARIO = scenarioWith();
const points = (result: RunResult, scenario: Scenario = SCENARIO): number[] => scoreRun(result, scenario).parts.map((part) => part.points);
const failing = (result: RunResult, scenario: Scenario = SCENARIO): VerdictReason['id'][] => scoreRun(result, scenario).reasons.filter(({ holds }) => !holds).map(({ id }) => id);
const line = (result: RunResult, part: string, id: string): ScoreLine => scoreRun(result, SCENARIO).parts.find((one) => one.id === part)!.lines.find((one) => one.id === id)!;

describe('A score, worked out by hand', () => {
  it('of a run without fault is 55 + 30 + 10 + 5 and met', () => {
    expect(points(runWith())).toEqual([55, 30, 10, 5]);
    expect(scoreRun(runWith(), SCENARIO)).toMatchObject({ total: 100, standard: 90, verdict: 'met' });
  });

  it.each<[string, Partial<ReturnType<typeof broken>>, number, VerdictReason['id'][]]>([
    ['a major break, said and put right: 100 − 5', { ...SAID, ...PUT_RIGHT }, 95, []],
    ['a major break, put right without a word: 100 − 5 − 2', PUT_RIGHT, 93, []],
    ['a major break, neither: 100 − 20 − 2', {}, 78, ['majorBreaks', 'standard']],
    ['a critical break, said and put right: 100 − 6', { severity: 'critical', ...SAID, ...PUT_RIGHT }, 94, []],
    ['a critical break left open: all 55 of asepsis are gone', { severity: 'critical' }, 45, ['criticalBreaks', 'standard']],
    ['a minor break, neither: 100 − 3 − 2', { severity: 'minor' }, 95, []],
    // At 12.5 s it was said, five tasks were finished after that: one grade up, a major break left open.
    ['a minor break, said and then left while the work went on: 100 − 20', { severity: 'minor', ...SAID }, 80, ['majorBreaks', 'standard']],
    ['a minor break, said after the last task and left: 100 − 3', { severity: 'minor', noticedStep: 8000 }, 97, []],
    ['a critical break whose needle was used before it was put right: 100 − 6', { severity: 'critical', ...SAID, ...PUT_RIGHT, escalatedBy: ['unsterile-used-at-site'] }, 94, ['usedUnsterile']],
  ])('%s', (_, parts, total, against) => {
    const result = runWith({ breaks: [broken(parts)] });
    expect(scoreRun(result, SCENARIO)).toMatchObject({ total, verdict: against.length === 0 ? 'met' : 'notYet' });
    expect(failing(result)).toEqual(against);
  });

  it('counts no more than five points for any number of minor breaks, which never fail a run alone', () => {
    const breaks = [1, 2, 3, 4].map((number) => broken({ number, severity: 'minor' }));
    expect(scoreRun(runWith({ breaks }), SCENARIO)).toMatchObject({ total: 95, verdict: 'met' });
  });

  it('allows one major break that was put right, not two: 100 − 5 − 5 is at the standard and not met', () => {
    const breaks = [1, 2].map((number) => broken({ number, ...SAID, ...PUT_RIGHT }));
    expect(scoreRun(runWith({ breaks }), SCENARIO)).toMatchObject({ total: 90, verdict: 'notYet' });
    expect(failing(runWith({ breaks }))).toEqual(['majorBreaks']);
    expect(failing(runWith({ breaks }), scenarioWith({ fails: { majorsPutRight: 2 } }))).toEqual([]);
  });

  // Weights of the tasks: 2 critical × 6 + 4 others × 4 + steadiness 2 + sharps 2 = 32, for 30 points.
  it('takes 30 × 6/32 = 5.63 points for a critical task that was not done, and the run is not met whatever the total', () => {
    const tasks = allTasks().map((one) => (one.task === 'gel' ? task('gel', null) : one));
    expect(points(runWith({ tasks }))).toEqual([55, 24.38, 10, 5]);
    expect(scoreRun(runWith({ tasks }), SCENARIO)).toMatchObject({ total: 94.3, verdict: 'notYet' });
    expect(failing(runWith({ tasks }))).toEqual(['criticalTasks']);
  });

  it('takes half of 30 × 4/32 for a task out of order: 28.13', () => {
    const tasks = allTasks().map((one) => (one.task === 'anaesthetic' ? task('anaesthetic', 4000, 'park') : one));
    expect(points(runWith({ tasks }))[1]).toBe(28.13);
  });

  it('asks in full for a task that the rubric adds to the critical ones', () => {
    const tasks = allTasks().map((one) => (one.task === 'park' ? task('park', null) : one));
    expect(failing(runWith({ tasks }))).toEqual([]);
    expect(failing(runWith({ tasks }), scenarioWith({ alsoCritical: ['park'] }))).toContain('criticalTasks');
  });

  it('gives steadiness in proportion up to half of the time: at a quarter 30 × 2/32 × 0.5 are missing', () => {
    expect(points(runWith({ steadyShare: 0.25 }))[1]).toBe(29.06);
    expect(points(runWith({ steadyShare: 0.5 }))[1]).toBe(30);
  });

  it('takes 30 × 2/32 for a needle in the rubbish bin', () => {
    expect(points(runWith({ sharpsBinned: ['needle'] }))[1]).toBe(28.13);
    expect(line(runWith({ sharpsBinned: ['needle'] }), 'procedure', 'sharps').words).toContain('needle syringe');
  });

  it('of sheathing alone asks for no steady view and no sharps: 2 critical tasks of 6 and 4 of 4 weigh 28, one other left out costs 30 × 4/28', () => {
    const sheathed = SHEATH_TASKS.map((id, k) => ({ ...task(id, (k + 1) * 1200), critical: id === 'gelInside' || id === 'covered' }));
    const part = (tasks: readonly TaskReport[]) => scoreRun(runWith({ tasks, steadyShare: null }), scenarioWith()).parts.find(({ id }) => id === 'procedure')!;
    expect(part(sheathed).points).toBe(30);
    expect(part(sheathed).lines.map(({ id }) => id)).toEqual(SHEATH_TASKS.map((id) => `task.${id}`));
    expect(part(sheathed.map((one) => (one.task === 'airOut' ? task('airOut', null) : one))).points).toBeCloseTo(30 - (30 * 4) / 28, 2);
  });

  it('of sheathing counts a missing critical task whatever the total, and others where the rubric says so', () => {
    const sheathed = SHEATH_TASKS.map((id, k) => ({ ...task(id, (k + 1) * 1200), critical: id === 'gelInside' || id === 'covered' }));
    const without = (left: string) => runWith({ tasks: sheathed.map((one) => (one.task === left ? { ...one, doneStep: null } : one)), steadyShare: null });
    expect(scoreRun(runWith({ tasks: sheathed, steadyShare: null }), scenarioWith()).verdict).toBe('met');
    expect(scoreRun(without('gelInside'), scenarioWith({ standard: 0 })).verdict).toBe('notYet');
    expect(scoreRun(without('banded'), scenarioWith({ standard: 0 })).verdict).toBe('met');
    expect(scoreRun(without('banded'), scenarioWith({ standard: 0, alsoCritical: ['banded'] })).verdict).toBe('notYet');
  });

  it('shares 10 points of handling out as 3 clearance, 3 drift, 4 drops', () => {
    const near = measured({ clearance: [{ hand: 'left', thing: 'rail.left', metres: 0.005, step: 90 }, { hand: 'right', thing: 'bin', metres: 0, step: 99 }] });
    expect(line(runWith({ measured: near }), 'handling', 'clearance')).toMatchObject({ value: 0.5, unit: 'cm', points: 1, of: 3, events: [{ kind: 'clearance', step: 90, words: 'left hand 0.5 cm from the left bed rail' }] });
    expect(line(runWith({ driftM: { left: 0.005, right: 0 } }), 'handling', 'drift')).toMatchObject({ value: 0.5, points: 2.25, of: 3 });
    const dropped = measured({ drops: [{ thing: 'gel', step: 700 }] });
    expect(line(runWith({ measured: dropped }), 'handling', 'drops')).toMatchObject({ value: 1, points: 2, of: 4, events: [{ step: 700, number: 1, words: 'gel packet fell off the field' }] });
  });

  it('tells smoothness without points, unless the rubric gives it some', () => {
    const hand = { movements: 3, median: -9, roughest: [{ step: 5, value: -11 }] };
    const result = runWith({ measured: measured({ smoothness: { left: hand, right: hand } }) });
    expect(line(result, 'handling', 'smoothness.left')).toMatchObject({ value: -9, points: null, of: null });
    // Half way from −10.5 to −7.5, the only thing that counts.
    expect(points(result, scenarioWith({ handling: { clearance: 0, drift: 0, drops: 0, smoothness: 1 } }))[2]).toBe(5);
  });

  it('takes time in proportion up to half as much again, and does not count remedies as working time', () => {
    expect(points(runWith({ steps: 450 * 120 }))[3]).toBe(2.5);
    const remedies = [{ remedy: 'prepAndDrape', startStep: 6000, endStep: 6000 + 90 * 120, things: [] }] as const;
    expect(points(runWith({ steps: 450 * 120, remedies }))[3]).toBe(5);
    expect(scoreRun(runWith({ steps: 450 * 120 }), SCENARIO).verdict).toBe('met');
    expect(failing(runWith({ steps: 450 * 120 }), scenarioWith({ fails: { overTime: true } }))).toEqual(['time']);
  });

  it('gives nothing for a run in which nothing was done, and a third of the rest for one task of six', () => {
    const none = allTasks().map((one) => task(one.task, null));
    expect(points(runWith({ tasks: none, steadyShare: null }))).toEqual([0, 0, 0, 0]);
    const one = none.map((open) => (open.task === 'view' ? task('view', 900) : open));
    // (1/6) / 0.5 = 1/3 of 55, 10 and 5.
    expect(points(runWith({ tasks: one, steadyShare: null }))).toEqual([18.33, 3.75, 3.33, 1.67]);
    expect(line(runWith({ tasks: one, steadyShare: null }), 'asepsis', 'worked')).toMatchObject({ value: 33, unit: '%', events: [{ kind: 'task', step: 900 }] });
    expect(scoreRun(runWith(), SCENARIO).parts.flatMap(({ lines }) => lines.map(({ id }) => id))).not.toContain('worked');
  });

  it('scales other weights to 100: 20 of 20 for asepsis and 15 of 20 for the work are 87.5', () => {
    const scenario = scenarioWith({ points: { asepsis: 20, procedure: 20, handling: 0, time: 0 }, tasks: { critical: 1, other: 1, steadiness: 2, sharps: 0 }, standard: 87.5 });
    expect(scoreRun(runWith({ steadyShare: 0 }), scenario)).toMatchObject({ total: 87.5, verdict: 'met' });
  });

  it('never rounds a total up to the standard: 55 + 24.96 + 10 + 0 is 89.9', () => {
    // (30 − 5.04): steadiness counts 5.04/30 of the part.
    const scenario = scenarioWith({ tasks: { critical: 0, other: 24.96 / 4, steadiness: 5.04, sharps: 0 } });
    const result = runWith({ steadyShare: 0, steps: 600 * 120 });
    expect(scoreRun(result, scenario)).toMatchObject({ total: 89.9, verdict: 'notYet' });
  });
});

describe('The numbers of asepsis', () => {
  const breaks = [
    broken({ number: 1, step: 1200, noticedStep: 1800, remediedStep: 4800, remedies: ['changeGlove'], reach: 'device' }),
    broken({ number: 2, step: 12000, rule: 'cord-on-field', surface: 'drape.left#1:3', noticedStep: 12240 }),
    broken({ number: 3, step: 24000, rule: 'drape-slid-away', surface: 'site#1:4', against: null }),
  ];
  const result = runWith({ breaks, steps: 72000, notices: [{ step: 1800, breaks: [1] }, { step: 12240, breaks: [2] }, { step: 30000, breaks: [] }] });

  it('give the rate with its exact interval: 3 in ten minutes are 0.619 to 8.767 (tables of the Poisson distribution)', () => {
    expect(line(result, 'asepsis', 'rate')).toMatchObject({ value: 3, interval: [0.62, 8.77] });
  });

  it('tell how many were said and put right, and how long that took in the middle with the others as still waiting', () => {
    expect(line(result, 'asepsis', 'said')).toMatchObject({ value: 2, unit: 'of 3' });
    // 5 s, 2 s and never: two of three were said by 5 s.
    expect(line(result, 'asepsis', 'timeToSay').value).toBe(5);
    // 30 s, never and never: no middle.
    expect(line(result, 'asepsis', 'timeToPutRight').value).toBeNull();
    expect(line(result, 'asepsis', 'putRight')).toMatchObject({ value: 1, unit: 'of 3' });
    expect(line(result, 'asepsis', 'falseReports')).toMatchObject({ value: 1, points: null, events: [{ kind: 'notice', step: 30000, number: 3 }] });
  });

  it('say how far they got and where they were made, each with the breaks behind it', () => {
    const numbers = (id: string) => line(result, 'asepsis', id).events.map(({ number }) => number);
    expect([numbers('reached'), numbers('where.hands'), numbers('where.cord'), numbers('where.drape'), numbers('breaks')]).toEqual([[1], [1], [2], [3], [1, 2, 3]]);
  });

  it('tell which came within ten seconds of an interruption, and of which', () => {
    const cues = [{ step: 11000, kind: 'cough', words: 'The patient coughs.' }, { step: 24001, kind: 'itch', words: 'Your nose itches.' }];
    expect(line({ ...result, cues }, 'asepsis', 'afterCue')).toMatchObject({ value: 1, unit: 'of 3', events: [{ kind: 'cue', step: 11000, number: 1, words: 'The patient coughs.' }, { kind: 'break', number: 2 }] });
  });

  it('name a break of a rule that this rule book does not have by its surface', () => {
    const strange = runWith({ breaks: [broken({ rule: 'of-another-book', surface: 'glove' })], words: { glove: 'left glove' } });
    expect(line(strange, 'asepsis', 'breaks').events[0]!.words).toBe('left glove (of-another-book): major, not said, left open');
  });
});

describe('A result from before handling was measured', () => {
  const old = runWith({ measured: null });

  it('has no score, and says what it lacks', () => {
    expect(missingForScore(old, SCENARIO)).toEqual(['the clearance that the hands kept', 'when things were dropped']);
    expect(scoreOf(old, SCENARIO)).toBeNull();
  });

  it('is scored where the rubric weighs nothing that it lacks', () => {
    expect(scoreOf(old, scenarioWith({ handling: { clearance: 0, drops: 0 } }))?.total).toBe(100);
    expect(scoreOf(old, scenarioWith({ points: { handling: 0 } }))?.total).toBe(100);
  });
});
