import { describe, expect, it } from 'vitest';
import { SIDES } from '../../src/core/base/side.ts';
import { playAll } from '../support/breakRun.ts';
import { BY_HAND_AT_BED, ROOMY } from '../support/gownRooms.ts';
import { GownWork } from '../support/gownWork.ts';
import { runOperator } from '../support/runOperator.ts';
import { GLOVE_CHANGE_RUNS } from './runs/gloveChange.ts';

/** Different ways to do it right, with the gloves that are on in the end. */
const CLEAN: readonly (readonly [string, (work: GownWork) => unknown, Readonly<Record<'left' | 'right', string>>])[] = [
  ['of the right hand', (work) => work.dressed().changeGlove('right').openGlove('right'), { right: 'glove.right#2', left: 'glove.left#1' }],
  ['of the left hand', (work) => work.dressed().changeGlove('left').openGlove('left'), { right: 'glove.right#1', left: 'glove.left#2' }],
  ['of one hand after the other', (work) => work.dressed().changeGlove('right').openGlove('right').changeGlove('left').openGlove('left'), { right: 'glove.right#2', left: 'glove.left#2' }],
  ['of the same hand twice', (work) => work.dressed().changeGlove('left').openGlove('left').changeGlove('left').openGlove('left'), { right: 'glove.right#1', left: 'glove.left#3' }],
  [
    'of both bare hands, the first cuff drawn over by the second glove',
    (work) => work.dressed().changeGlove('right').changeGlove('left').hangGlove('right').slipIntoGlove('right').openGlove('left').coverCuff('right'),
    { right: 'glove.right#2', left: 'glove.left#2' },
  ],
];

describe('A glove changed by hand', () => {
  it.each(CLEAN)('%s breaks nothing', (_, play, gloves) => {
    const { result, run } = runOperator((op) => {
      const work = new GownWork(op);
      play(work);
      work.waitTogether(op.run.scenario.tasks.waitS + 1);
    }, ROOMY);
    expect(result.breaks).toEqual([]);
    for (const side of SIDES) {
      expect(run.room.surfaces.upper[run.room.surfaces.slots.hand[side].fingers]).toBe(`${gloves[side]}:fingers`);
      expect(run.ledger.stateOf(`${gloves[side]}:fingers`)).toBe('sterile');
      expect(run.room.gown!.observe(0, false).overlapM[side]).toBeGreaterThanOrEqual(ROOMY.gown.knitM);
    }
    expect(result.progress.tasks.slice(0, 7).every(({ doneStep }) => doneStep !== null)).toBe(true);
  });
});

it('A glove changed by hand at the bed, where the operator was gowned from the start, breaks nothing', () => {
  const { result, run } = runOperator((op) => GownWork.changedAtBed(op, 'right', (work) => work.openGlove('right')), BY_HAND_AT_BED);
  expect(result.breaks).toEqual([]);
  expect(run.room.gown!.observe(0, false).gloves).toEqual({ left: 'on', right: 'on' });
  expect(run.room.surfaces.upper[run.room.surfaces.slots.hand.right.fingers]).toBe('glove.right#2:fingers');
  expect(run.progress.current).toBe('gel');
});

describe('Open gloving and changing a glove', () => playAll(GLOVE_CHANGE_RUNS));
