import { describe, expect, it } from 'vitest';
import { alternatives } from '../../../src/core/debrief/alternatives.ts';
import { suggestion } from '../../../src/core/debrief/suggestion.ts';
import { whatIf } from '../../../src/core/debrief/whatIf.ts';
import type { Change } from '../../../src/core/debrief/whatIfTypes.ts';
import type { RunLog } from '../../../src/core/debrief/runLog.ts';
import { FIELD_TASKS } from '../../../src/core/procedure/observation.ts';
import { scoreOf } from '../../../src/core/scoring/scoreRun.ts';
import type { Log } from '../ledger/log.ts';
import { log } from '../ledger/log.ts';
import { logged } from './runLogs.ts';

/*
 *   railR ──1──▶ right palm ──2──▶ gel ──3──▶ drape 1            steps 0, 100, 200
 *                     └──4──▶ syringe ──5──▶ site                steps 300, 301
 */
const story = (): Log =>
  log().tap('gloveR#1:palm', 'railR:all').wait(99).tap('gloveR#1:palm', 'gel#1:all').wait(99).tap('gel#1:all', 'drape#1:1').wait(99).tap('gloveR#1:palm', 'syringe#1:barrel').tap('syringe#1:barrel', 'site#1:all').wait(50);

const ids = (list: readonly { readonly surface: string }[]): string[] => list.map(({ surface }) => surface).sort();

describe('What if', () => {
  const run = logged(story());
  const glove = (step: number): Change => ({ kind: 'remedy', remedy: 'changeGlove', things: ['gloveR#1'], step });

  it('nothing were otherwise: it is the run', () => {
    const outcome = whatIf(run, { kind: 'nothing' });
    expect(outcome.result).toEqual(run.result);
    expect([outcome.spared, outcome.newlySpoiled, outcome.reach]).toEqual([[], [], 'site']);
    expect(ids(outcome.stillSpoiled)).toEqual(['drape#1:1', 'gel#1:all', 'gloveR#1:palm', 'site#1:all', 'syringe#1:barrel']);
  });

  it('one touch had not been: what came by it alone is spared, and the reach is less', () => {
    const outcome = whatIf(run, { kind: 'undoTouch', touch: 4 });
    expect(ids(outcome.spared)).toEqual(['site#1:all', 'syringe#1:barrel']);
    expect(ids(outcome.stillSpoiled)).toEqual(['drape#1:1', 'gel#1:all', 'gloveR#1:palm']);
    expect([outcome.reach, outcome.breaks[0]!.severity]).toEqual(['field', 'major']);
  });

  it('the break had not been: all of it is spared', () => {
    const outcome = whatIf(run, { kind: 'undoBreak', number: 1 });
    expect([outcome.breaks, outcome.stillSpoiled, outcome.reach]).toEqual([[], [], 'none']);
    expect(outcome.spared.length).toBe(5);
    expect(outcome.result.breaks).toEqual([]);
  });

  it('the glove had been changed: nothing before it is otherwise, what follows is, and the remedy stands in the result', () => {
    const outcome = whatIf(run, glove(250));
    expect(ids(outcome.spared)).toEqual(['site#1:all', 'syringe#1:barrel']);
    expect(outcome.result.remedies).toEqual([{ remedy: 'changeGlove', things: ['gloveR#1'], startStep: 250, endStep: 250 }]);
    expect(outcome.breaks[0]!.spread).toEqual(run.result.breaks[0]!.spread.slice(0, 3));
    expect(ids(whatIf(run, glove(400)).spared)).toEqual([]);
  });

  it('a fresh glove is soiled where the old one had been already: that is no gain, and no loss of another', () => {
    const again = logged(log().tap('gloveR#1:palm', 'railR:all').wait(400).tap('gloveR#1:palm', 'pole:all'));
    const outcome = whatIf(again, glove(100));
    expect([ids(outcome.spared), ids(outcome.stillSpoiled), ids(outcome.newlySpoiled)]).toEqual([[], ['gloveR#1:palm'], []]);
    expect(outcome.breaks.map(({ rule }) => rule)).toEqual(['glove-on-rail', 'glove-on-pole']);
  });

  it('names what would be lost instead', () => {
    // A packet that had fallen counts as unsterile and loses nothing on the rail; the fresh one does.
    const fallen = logged(log().enter('gel#1:all', 'offField').wait(10).leave('gel#1:all', 'offField').wait(300).tap('gel#1:all', 'railR:all'));
    expect(fallen.result.breaks).toEqual([]);
    const outcome = whatIf(fallen, { kind: 'remedy', remedy: 'replaceItem', things: ['gel#1'], step: 20 });
    expect([ids(outcome.newlySpoiled), ids(outcome.spared)]).toEqual([['gel#1:all'], []]);
    expect(outcome.result.words['gel#1~:all']).toBe('gel#1:all');
  });

  it('a packet that had fallen had been replaced in time: the new one is handed on to the field, not laid on the floor', () => {
    const fallen = log().enter('gel#1:all', 'offField').touch('gel#1:all', 'floor:all').wait(100).part('gel#1:all', 'floor:all').leave('gel#1:all', 'offField').tap('gel#1:all', 'gloveR#1:palm').wait(5);
    const taken = logged(fallen);
    expect(taken.result.breaks.map(({ rule }) => rule)).toEqual(['fallen-item-taken-back']);
    const outcome = whatIf(taken, { kind: 'remedy', remedy: 'replaceItem', things: ['gel#1'], step: 50 });
    expect([outcome.breaks, ids(outcome.spared)]).toEqual([[], ['gel#1:all', 'gloveR#1:palm']]);
    expect(alternatives(taken, 1)[0]).toMatchObject({ change: { remedy: 'replaceItem', step: 99 }, sentence: 'Nothing loses its sterility.' });
  });

  it('notices attach to what is then there to be noticed', () => {
    const noticed = logged(log().tap('gloveR#1:palm', 'railR:all').wait(300).tap('gloveL#1:palm', 'pole:all').wait(10).notice());
    expect(noticed.result.notices).toEqual([{ step: 312, breaks: [1, 2] }]);
    const outcome = whatIf(noticed, { kind: 'undoBreak', number: 1 });
    expect(outcome.result.notices).toEqual([{ step: 312, breaks: [1] }]);
    expect(outcome.breaks.map(({ rule, noticedStep }) => [rule, noticedStep])).toEqual([['glove-on-pole', 312]]);
    expect(whatIf(logged(log().tap('gloveR#1:palm', 'railR:all').notice()), { kind: 'undoTouch', touch: 1 }).result.notices, 'a false report').toEqual([{ step: 1, breaks: [] }]);
  });

  it('the verdict follows from that result', () => {
    const procedure = { ...run.result.progress, tasks: FIELD_TASKS.map((task) => ({ task, critical: true, doneStep: 10, outOfOrderAfter: null, progress: 1 })), current: 'finished' as const };
    const still = { movements: 1, median: -6.6, roughest: [] };
    const measured = { driftStep: { left: null, right: null }, drops: [], smoothness: { left: still, right: still }, clearance: [] };
    const whole: RunLog = { ...run, result: { ...run.result, progress: procedure, handling: { ...run.result.handling, measured } } };
    const verdict = (change: Change): string | undefined => whatIf(whole, change).score?.verdict;
    expect([verdict({ kind: 'nothing' }), verdict({ kind: 'undoBreak', number: 1 })]).toEqual(['notYet', 'met']);
    expect(whatIf(whole, glove(50)).score).toEqual(scoreOf(whatIf(whole, glove(50)).result, whole.scenario));
    expect(whatIf(run, { kind: 'nothing' }).score, 'an old result lacks what is weighed').toBeNull();
  });

  it('asks for no break that is not there', () => {
    expect(() => whatIf(run, { kind: 'undoBreak', number: 2 })).toThrow('break 2 in the log');
  });
});

describe('Alternatives of a break', () => {
  it('are the fitting remedies once its touch was over, and that it had not been, each told', () => {
    const told = alternatives(logged(story()), 1).map(({ title, sentence }) => `${title} | ${sentence}`);
    expect(told).toEqual([
      'GloveR#1:palm changed by 00:00. | The gel#1:all, the drape#1:1 and 2 more things stay sterile. Reach: no further.',
      'The gloveR#1:palm kept clear of the railR:all at 00:00. | Nothing loses its sterility.',
    ]);
  });
});

describe('The suggestion', () => {
  it('is the first remedy on the way from the root that keeps device and site clean, told for the last moment for it', () => {
    const found = suggestion(logged(story()))!;
    expect(found.change).toEqual({ kind: 'remedy', remedy: 'changeGlove', things: ['gloveR#1'], step: 299 });
    expect([found.fromStep, found.byStep, found.outcome.reach]).toEqual([0, 299, 'field']);
    expect(found.title).toBe('GloveR#1:palm changed by 00:02.');
  });

  it('is a later one where the first comes too late', () => {
    // The glove takes the syringe while it still leans on the rail: a fresh glove is lost there as well.
    const held = logged(log().touch('gloveR#1:palm', 'railR:all').wait(5).tap('gloveR#1:palm', 'syringe#1:barrel').wait(50).tap('syringe#1:barrel', 'site#1:all').wait(50));
    expect(suggestion(held)!.change).toMatchObject({ remedy: 'replaceItem', things: ['syringe#1'], step: 55 });
  });

  it('is none where nothing got there, or where one remedy is not enough', () => {
    expect(suggestion(logged(log().tap('gloveR#1:palm', 'railR:all').tap('gloveR#1:palm', 'drape#1:1')))).toBeNull();
    const twice = log().tap('gloveR#1:palm', 'railR:all').wait(99).tap('gloveR#1:palm', 'site#1:all').tap('gloveL#1:palm', 'pole:all').wait(99).tap('gloveL#1:palm', 'probe#1:head');
    expect(suggestion(logged(twice))).toBeNull();
    expect(suggestion(logged(log().tap('site#1:all', 'face:all')))).toBeNull();
  });
});
