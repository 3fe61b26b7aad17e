import { describe, expect, it } from 'vitest';
import type { Score, VerdictReason } from '../../src/core/scoring/score.ts';
import { scoreRun } from '../../src/core/scoring/scoreRun.ts';
import { QUICK_REMEDIES } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';
import { WholeProcedure } from '../support/wholeProcedure.ts';

const failing = ({ reasons }: Score): VerdictReason[] => reasons.filter(({ holds }) => !holds);

describe('The score of a real run', () => {
  it('is not yet with a glove from the rail that came to the site, whatever else was done; the break stands behind it', () => {
    const { run, result } = runOperator((op) => {
      op.palmTo('left', 0.4, 1.55).turn('left', -80).palmTo('left', 0.54, 1.6);
      op.touch('left', 0, -1, () => op.near.gap('glove.left', 'rail.left')).palmTo('left', 0.45, 1.6).palmTo('left', 0.3, 1.4);
      new WholeProcedure(op).all();
      op.finish();
    }, 'high-rails-short-sheath');
    const score = scoreRun(result, run.scenario);
    expect(result.progress.current).toBe('finished');
    expect(score.verdict).toBe('notYet');
    expect(failing(score).map(({ id }) => id)).toEqual(['criticalBreaks', 'usedUnsterile', 'standard']);
    expect(failing(score)[0]!.events).toMatchObject([{ kind: 'break', number: 1, step: result.breaks[0]!.step }]);
    // All 55 of asepsis and the 3 of clearance are gone, the rest is there.
    expect(score.parts.map(({ points }) => points)).toEqual([0, 30, 7, 5]);
  }, 300_000);

  it('is met with a glove that met the mask, said at once and changed before anything was touched', () => {
    const { run, result } = runOperator((op) => {
      op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).palmTo('right', -0.27, 1.3);
      op.send({ type: 'notice' }).send({ type: 'remedy.start', remedy: 'changeGlove', thing: 'right' }).wait(5);
      new WholeProcedure(op).all();
      op.finish();
    }, QUICK_REMEDIES);
    const score = scoreRun(result, run.scenario);
    expect(result.breaks).toMatchObject([{ severity: 'major', remedies: ['changeGlove'] }]);
    expect(failing(score)).toEqual([]);
    // 55 − 5 for a major break put right, 10 − 3 for the touch itself.
    expect([score.total, score.parts.map(({ points }) => points)]).toEqual([92, [50, 30, 7, 5]]);
  }, 300_000);

  it('counts what fell, but not what was thrown away', () => {
    const { result } = runOperator((op) => {
      op.palmTo('left', 0.27, 1.5).turn('right', -40).take('right', 'gel').palmTo('right', -0.3, 1.5).palmTo('right', -0.61, 1.5).release('right').wait(1.5);
    });
    expect(result.handling.dropped).toEqual(['gel']);
    expect(result.handling.measured!.drops).toMatchObject([{ thing: 'gel' }]);
  });
});
