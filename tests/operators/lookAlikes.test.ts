import { describe, expect, it } from 'vitest';
import { noticingOfRun } from '../../src/core/scoring/noticing/noticingOfRun.ts';
import type { NoticingOfRun } from '../../src/core/scoring/noticing/noticing.ts';
import type { Operator } from '../support/operator.ts';
import { runOperator, shippedScenario } from '../support/runOperator.ts';
import { WholeProcedure } from '../support/wholeProcedure.ts';

const DRILL = 'harmless-or-not';
/** After the third look-alike and its window, and after the last, s. */
const THREE_SEEN_S = 90;
const ALL_SEEN_S = 192;
/** For a run of three minutes on a busy machine, ms. */
const LONG_MS = 300_000;

const outcomes = ({ trials }: NoticingOfRun): string[] => trials.map(({ outcome }) => outcome);
const noticing = (script: (op: Operator) => void): { readonly noticed: NoticingOfRun; readonly breaks: readonly string[]; readonly driftM: number } => {
  const { result } = runOperator((op) => {
    script(op);
    op.finish();
  }, DRILL);
  return { noticed: noticingOfRun(result, shippedScenario(DRILL)), breaks: result.breaks.map(({ rule }) => rule), driftM: Math.max(result.handling.driftM.left, result.handling.driftM.right) };
};
/** Says that sterility was broken so many seconds into the run. */
const sayAt = (op: Operator, seconds: number): void => void op.wait(seconds - op.run.stepCount / 120).send({ type: 'notice' }).wait(0.1);
const touchFace = (op: Operator): Operator => op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).palmTo('right', -0.27, 1.3);

describe('The look-alikes of the drill in noticing', () => {
  it('break nothing while the whole procedure is done with care, and are all left alone', () => {
    const { noticed, breaks, driftM } = noticing((op) => {
      new WholeProcedure(op).gel().view().park().anaesthetic().ready().rubbish();
      op.wait(ALL_SEEN_S - op.run.stepCount / 120);
    });
    expect(breaks).toEqual([]);
    expect(driftM).toBeLessThan(shippedScenario(DRILL).policy.driftTowardSiteM);
    expect(outcomes(noticed)).toEqual(Array(6).fill('leftAlone'));
    expect(noticed.discrimination).toBeNull();
  }, LONG_MS);

  it('can be taken for breaks: each report is a false alarm on the one before it', () => {
    const { noticed, breaks } = noticing((op) => {
      for (const s of [17, 55, 70]) sayAt(op, s);
      op.wait(THREE_SEEN_S - op.run.stepCount / 120);
    });
    expect(breaks).toEqual([]);
    expect(outcomes(noticed)).toEqual(['falseAlarm', 'falseAlarm', 'leftAlone']);
    expect(noticed.falseReports).toHaveLength(3);
  });

  it('do not count while a glove that met the mask is unsaid; said, it is told from the others', () => {
    const { noticed, breaks } = noticing((op) => {
      touchFace(op.wait(40));
      sayAt(op, 57);
      op.wait(THREE_SEEN_S - op.run.stepCount / 120);
    });
    expect(breaks).toEqual(['hand-on-face']);
    expect(outcomes(noticed)).toEqual(['leftAlone', 'droppedForBreak', 'leftAlone']);
    expect(noticed.sensitivity).toMatchObject({ count: 1, of: 1 });
    expect(noticed.discrimination).toMatchObject({ breaks: 1, trials: 2, hitRate: 0.75 });
    expect(noticed.discrimination!.dPrime).toBeGreaterThan(1);
  });
});
