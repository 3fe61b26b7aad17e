import { describe, expect, it } from 'vitest';
import { scoreRun } from '../../src/core/scoring/scoreRun.ts';
import { ROOMY } from '../support/gownRooms.ts';
import { GownToNeedle } from '../support/gownToNeedle.ts';
import { runOperator } from '../support/runOperator.ts';

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
});
