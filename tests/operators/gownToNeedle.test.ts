import { describe, expect, it } from 'vitest';
import { chainRows, reachWords } from '../../src/app/report/reportFacts.ts';
import { scoreRun } from '../../src/core/scoring/scoreRun.ts';
import { alone } from '../support/breakRun.ts';
import { expectBreaks } from '../support/expectBreaks.ts';
import { ROOMY } from '../support/gownRooms.ts';
import { GownToNeedle } from '../support/gownToNeedle.ts';
import { runOperator } from '../support/runOperator.ts';
import { WholeProcedure } from '../support/wholeProcedure.ts';

/** 40,000 steps; a busy machine may need long for them (ms). */
const PATIENCE_MS = 600_000;

/** In the order in which the report lists them. */
const TASKS = [
  'opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited',
  'gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown',
  'gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish',
];

describe('From the gown to the needle in one run', () => {
  it('a careful operator puts on gown and gloves, loads the probe and works the field without a break', () => {
    const { run, result } = runOperator((op) => void new GownToNeedle(op).all().op.finish(), ROOMY);
    expect(result.breaks).toEqual([]);
    expect(result.progress.current).toBe('finished');
    expect(result.progress.tasks.map(({ task, doneStep, outOfOrderAfter }) => [task, doneStep !== null, outOfOrderAfter])).toEqual(TASKS.map((task) => [task, true, null]));
    expect(result.cues.map(({ kind }) => kind)).toEqual(['itch']);
    expect([result.handling.dropped, result.handling.measured!.drops, result.progress.sharpsBinned]).toEqual([[], [], []]);
    // Hands and sheath are those of this run: put on, worn and filled in it.
    for (const side of ['left', 'right'] as const) expect(run.ledger.stateOf(`glove.${side}#1:fingers`)).toBe('sterile');
    expect(run.ledger.stateOf('sheath#1:probe')).toBe('sterile');
    const score = scoreRun(result, run.scenario);
    expect([score.verdict, score.reasons.filter(({ holds }) => !holds)]).toEqual(['met', []]);
    // Sleeves pass the face at less than a hand's breadth, which costs something of handling.
    expect(score.parts.filter(({ id }) => id !== 'handling').map(({ id, points, of }) => [id, points === of])).toEqual([['asepsis', true], ['procedure', true], ['time', true]]);
  }, PATIENCE_MS);

  it('one finger on the assistant’s half of the card, at the end of gowning, goes by glove, sheath, table and gel to the site', () => {
    const { result } = runOperator((op) => {
      const work = new GownToNeedle(op);
      work.gown.gowned().glove('right').glove('left').card(0.03).waitTogether(ROOMY.tasks.waitS + 1);
      work.toBed().sheathe().layDown();
      new WholeProcedure(op).gelFromTable('gelTwo').op.finish();
    }, ROOMY);
    expectBreaks(result, [
      {
        rule: 'glove-on-card-end', surface: 'glove.right#1:fingers', against: 'tieCard#1:far', severity: 'critical', escalatedBy: ['unsterile-used-at-site'],
        spread: ['0 glove.right#1:fingers', '1 sheath#1:end', '2 kitTable', '3 gelTwo#1:body', '3 anaesthetic#1:body', '3 needle#1:body', '4 site#1:{10..16}'],
      },
    ]);
    // What the report tells of it: the card is the root of what happened two stations later.
    expect(chainRows(result.breaks[0]!, result.words).map(({ surface, how }) => `${surface} ${how}`)).toEqual([
      'right glove, fingers met assistant’s part of the tie card',
      'folds at the open end of the sheath touched right glove, fingers',
      'kit table touched folds at the open end of the sheath',
      'gel packet touched kit table',
      'anaesthetic syringe touched kit table',
      'needle syringe touched kit table',
      'site touched gel packet',
    ]);
    expect(reachWords(result.breaks[0]!)).toBe('it reached the site');
    expect(scoreRun(result, ROOMY).reasons.find(({ id }) => id === 'usedUnsterile')!.holds).toBe(false);
  }, PATIENCE_MS);

  it('a knit cuff that a short glove left bare stays so at the bed, and spoils nothing while it touches nothing', () => {
    const { run, result } = runOperator((op) => {
      const work = new GownToNeedle(op);
      work.gown.gowned().fetchGlove('right').lay('right').draw('right', 0.045).push('right').glove('left').card().waitTogether(ROOMY.tasks.waitS + 1);
      work.toBed().loading.fetch().open();
    }, ROOMY);
    expectBreaks(result, [alone('cuff-shows', 'gown#1:right.knitCuff', null)]);
    const { slots, upper } = run.room.surfaces;
    expect([upper[slots.hand.right.cuff], upper[slots.hand.left.cuff]]).toEqual(['gown#1:right.knitCuff', 'glove.left#1:cuff']);
    expect(run.ledger.stateOf('gown#1:right.knitCuff')).toBe('unsterile');
    // The second glove is not on as long as a cuff shows, and the hint goes on saying so.
    expect([run.progress.current, run.progress.hint]).toEqual(['secondGlove', 'Draw the cuff of the right glove over the whole knit cuff: grip its edge with the left hand.']);
  }, PATIENCE_MS);
});
