import { describe, expect, it } from 'vitest';
import { secondsToSteps } from '../../src/core/base/time.ts';
import type { RemedyId } from '../../src/core/commands/command.ts';
import { REMEDY_SECONDS } from '../../src/core/room/remedies.ts';
import type { Operator } from '../support/operator.ts';
import { QUICK_REMEDIES } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';

/** Says that sterility was broken and asks for a remedy. */
const answer = (op: Operator, remedy: RemedyId, thing?: string): Operator => op.send({ type: 'notice' }).send({ type: 'remedy.start', remedy, ...(thing ? { thing } : {}) });
/** Time that a remedy takes in this room, with a little to spare, s. */
const takes = (remedy: RemedyId): number => REMEDY_SECONDS[remedy] * QUICK_REMEDIES.policy.remedySeconds + 0.1;

/** The right glove meets the mask. */
const touchFace = (op: Operator): Operator => op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).palmTo('right', -0.27, 1.3);
/** The needle meets the margin, and is laid back on the table. */
function dragNeedle(op: Operator): void {
  op.palmTo('right', -0.3, 1.45).palmTo('right', -0.75, 1.45).turn('right', -30).take('right', 'needle').palmTo('right', -0.72, 1.45).palmTo('right', -0.565, 1.45);
  op.touch('right', 0, -1, () => op.near.gap('needle', 'margin.right')).palmTo('right', -0.6, 1.5);
}

describe('A remedy', () => {
  it('glove change: the break is answered when the time is over, the old glove keeps its history, the new one is clean', () => {
    const { run, result } = runOperator((op) => {
      answer(touchFace(op), 'changeGlove', 'right').wait(takes('changeGlove'));
      op.turn('right', -40).take('right', 'gel').palmTo('right', -0.2, 1.3);
    }, QUICK_REMEDIES);
    const [known, ...others] = result.breaks;
    const [done] = result.remedies;
    expect(others).toEqual([]);
    expect(known!.noticedStep).toBe(result.notices[0]!.step);
    expect(done).toMatchObject({ remedy: 'changeGlove', things: ['glove.right#1'] });
    expect(done!.endStep - done!.startStep).toBe(secondsToSteps(takes('changeGlove') - 0.1) - 1);
    expect([known!.remediedStep, known!.remedies]).toEqual([done!.endStep, ['changeGlove']]);
    expect(run.ledger.isSpoiled('glove.right#1:fingers')).toBe(true);
    expect(run.ledger.stateOf('glove.right#2:fingers')).toBe('sterile');
    expect(run.heldWords('right').broken).toBe(false);
  });

  it('gown and gloves: answers a spoiled glove and gives three new things', () => {
    const { run, result } = runOperator((op) => answer(touchFace(op), 'changeGownAndGloves').wait(takes('changeGownAndGloves')), QUICK_REMEDIES);
    expect(result.remedies.map(({ things }) => things)).toEqual([['gown#1', 'glove.right#1', 'glove.left#1']]);
    expect(result.breaks.map(({ remediedStep }) => remediedStep)).toEqual([result.remedies[0]!.endStep]);
    for (const id of ['gown#2:left.lowerSleeve', 'glove.left#2:palm', 'glove.right#2:fingers']) expect(run.ledger.stateOf(id)).toBe('sterile');
  });

  it('item: a new needle lies where the first one lay, and the first keeps its history', () => {
    const { op, run, result } = runOperator((op) => {
      dragNeedle(op);
      op.palmTo('right', -0.6, 1.5);
      answer(op, 'replaceItem', 'needle').wait(takes('replaceItem') + 0.5);
    }, QUICK_REMEDIES);
    expect(op.holds('right')).toBeNull();
    expect(Math.abs(op.thing('needle').x + 0.86)).toBeLessThan(0.01);
    expect(run.ledger.stateOf('needle#1:needle')).toBe('unsterile');
    expect(run.ledger.stateOf('needle#2:needle')).toBe('sterile');
    const end = result.remedies[0]!.endStep;
    expect(result.remedies[0]!.things).toEqual(['needle#1']);
    // The stretch of drape beside the margin that the needle met is spoiled still.
    expect(result.breaks.map(({ remedies, remediedStep }) => [remedies, remediedStep])).toEqual([[['replaceItem'], null]]);
    expect(end).toBeGreaterThan(0);
  });

  it('cover: answers the stretch of drape that is left', () => {
    const { result } = runOperator((op) => {
      dragNeedle(op);
      answer(op, 'replaceItem', 'needle').wait(takes('replaceItem') + 0.5);
      op.palmTo('right', -0.35, 1.5);
      answer(op, 'coverDrape', 'right').wait(takes('coverDrape'));
    }, QUICK_REMEDIES);
    expect(result.remedies.map(({ remedy, things }) => [remedy, things])).toEqual([['replaceItem', ['needle#1']], ['coverDrape', ['drape.right#1']]]);
    expect(result.breaks.map(({ remedies, remediedStep }) => [remedies, remediedStep])).toEqual([[['replaceItem', 'coverDrape'], result.remedies[1]!.endStep]]);
  });

  it('sheath: answers a probe that lay on the margin; glove and drape are answered by their own', () => {
    const { run, result } = runOperator((op) => {
      op.turn('left', -50).take('left', 'probe').palmTo('left', 0.3, 1.4).palmTo('left', 0.5, 1.45);
      op.touch('left', 0, -1, () => op.near.gap('sheath:probe', 'margin.left')).palmTo('left', 0.3, 1.4);
      op.palmTo('left', 0.2, 1.3).endTo('left', 0.25, 1.06).endTo('left', 0.25, 0.985, 0.08).release('left').palmTo('left', 0.27, 1.3);
      answer(op, 'newSheath').wait(takes('newSheath'));
    }, QUICK_REMEDIES);
    expect(result.remedies.map(({ remedy, things }) => [remedy, things])).toEqual([['newSheath', ['sheath#1']]]);
    expect(run.ledger.isSpoiled('sheath#1:probe')).toBe(true);
    expect(result.breaks[0]!.remedies).toEqual(['newSheath']);
    expect(result.breaks[0]!.remediedStep).toBeNull();
    expect(run.ledger.stateOf('sheath#2:probe')).toBe('sterile');
  });

  it('prepare and drape again: everything lies as at the start, with new skin and drapes', () => {
    const { op, run, result } = runOperator((op) => {
      op.turn('left', -50).palmTo('left', 0.13, 1.3).fingersTo('left', 0.07, 1.1, 0.1).grip('left').fingersTo('left', 0.09, 1.3, 0.05).wait(0.5).fingersTo('left', 0.06, 1.12, 0.1).release('left').palmTo('left', 0.27, 1.4).wait(0.5);
      answer(op, 'prepAndDrape').wait(takes('prepAndDrape'));
    }, QUICK_REMEDIES);
    expect(result.breaks.map(({ rule }) => rule)).toEqual(['drape-slid-away']);
    expect(result.remedies.map(({ things }) => things)).toEqual([['site#1', 'drape.right#1', 'drape.left#1']]);
    expect(result.breaks[0]!.remediedStep).toBe(result.remedies[0]!.endStep);
    expect(run.ledger.stateOf('site#2:13')).toBe('prepared');
    expect(op.near.gap('glove.left', 'drape.left')).toBeGreaterThan(0.1);
  });
});

describe('A remedy waits', () => {
  it('while a hand that it concerns is full, and runs once it is empty', () => {
    const { run, result } = runOperator((op) => {
      op.turn('right', -40).take('right', 'gel').palmTo('right', -0.3, 1.3);
      answer(op, 'changeGownAndGloves').wait(takes('changeGownAndGloves'));
      expect(op.run.remedy).toMatchObject({ phase: 'waitingForHands', progress: 0 });
      op.endTo('right', -0.3, 1.0).release('right').palmTo('right', -0.3, 1.3).wait(takes('changeGownAndGloves'));
    }, QUICK_REMEDIES);
    expect(run.remedy).toBeNull();
    expect(result.remedies.map(({ remedy }) => remedy)).toEqual(['changeGownAndGloves']);
  });

  it('while a hand is low over the field, and can be called off', () => {
    const { run, result } = runOperator((op) => {
      op.palmTo('right', -0.3, 1.02);
      answer(op, 'changeGlove', 'right').wait(takes('changeGlove'));
      expect(op.run.remedy).toMatchObject({ phase: 'waitingForHands', progress: 0 });
      op.send({ type: 'remedy.cancel' }).wait(0.1).palmTo('right', -0.27, 1.3).wait(takes('changeGlove'));
    }, QUICK_REMEDIES);
    expect(run.remedy).toBeNull();
    expect(result.remedies).toEqual([]);
    expect(run.ledger.surfaces.some(({ thing }) => thing === 'glove.right#2')).toBe(false);
  });

  it('for still hands: time stands while they move', () => {
    const { result } = runOperator((op) => {
      answer(op, 'changeGlove', 'right').wait(0.5).palmTo('right', -0.2, 1.4, 0.1).palmTo('right', -0.3, 1.3, 0.1).wait(takes('changeGlove'));
    }, QUICK_REMEDIES);
    const [done] = result.remedies;
    expect(done!.endStep - done!.startStep).toBeGreaterThan(secondsToSteps(takes('changeGlove') + 1));
  });
});
