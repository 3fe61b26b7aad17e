import { describe, expect, it } from 'vitest';
import { stepsToSeconds } from '../../src/core/base/time.ts';
import { scoreRun } from '../../src/core/scoring/scoreRun.ts';
import { runOperator, type ShippedRoom } from '../support/runOperator.ts';
import { WholeProcedure } from '../support/wholeProcedure.ts';

/** Rooms as shipped, with the time at which the last of their cues is over (s). */
const ROOMS: readonly (readonly [ShippedRoom, number])[] = [
  ['quiet-room', 242],
  ['high-rails-short-sheath', 95],
  ['restless-patient-head-down', 235],
];

/** A procedure is some 16,000 to 28,000 steps; a busy machine may need long for them (ms). */
const PATIENCE_MS = 600_000;

describe('A careful operator', () => {
  it.each(ROOMS)('does the whole procedure in %s without a break, through every cue', (room, untilS) => {
    const { run, result } = runOperator((op) => {
      new WholeProcedure(op).all();
      op.wait(Math.max(0, untilS - stepsToSeconds(op.run.stepCount))).finish();
    }, room);
    expect(result.breaks).toEqual([]);
    expect(result.progress.current).toBe('finished');
    expect(result.progress.tasks.map(({ task, outOfOrderAfter }) => [task, outOfOrderAfter])).toEqual(result.progress.tasks.map(({ task }) => [task, null]));
    expect(result.progress.sharpsBinned).toEqual([]);
    expect(result.cues.map(({ kind }) => kind)).toEqual(run.scenario.cues.map(({ kind }) => kind));
    expect(result.handling.dropped).toEqual([]);
    expect(result.handling.measured!.drops).toEqual([]);
    const score = scoreRun(result, run.scenario);
    expect([score.verdict, score.reasons.filter(({ holds }) => !holds)]).toEqual(['met', []]);
    expect(score.parts.map(({ id, points, of }) => [id, points === of])).toEqual([['asepsis', true], ['procedure', true], ['handling', true], ['time', true]]);
  }, PATIENCE_MS);
});

