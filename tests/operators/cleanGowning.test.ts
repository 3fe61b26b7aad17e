import { describe, expect, it } from 'vitest';
import { CRAMPED, ROOMY, TALL } from '../support/gownRooms.ts';
import { GownWork } from '../support/gownWork.ts';
import { runOperator } from '../support/runOperator.ts';

/** Different ways to do it right. */
const CLEAN: readonly (readonly [string, typeof ROOMY, (work: GownWork) => unknown])[] = [
  ['with room to spare, right glove first', ROOMY, (work) => work.all()],
  ['left glove first', ROOMY, (work) => work.gowned().glove('left').glove('right').card().waitTogether(11)],
  ['with pauses, hands together', ROOMY, (work) => work.gowned().waitTogether(3).glove('right').waitTogether(5).glove('left').card().waitTogether(11)],
  ['by a small operator beside pole and high table', CRAMPED, (work) => work.all()],
  ['by a tall operator in a short gown, who holds the cuffs', TALL, (work) => work.all()],
  ['and a closed hand passes before the other arm without resting under it', ROOMY, (work) => work.all().passUnderArm()],
  ['and the itch is answered by the assistant', ROOMY, (work) => {
    work.dressed().waitTogether(9);
    return work.op.send({ type: 'ask', request: 'wipeFace' }).wait(8);
  }],
];

describe('Gowning and gloving as it is taught', () => {
  it.each(CLEAN)('%s, breaks nothing and is complete', (_, room, play) => {
    const { result, run } = runOperator((op) => void play(new GownWork(op)), room);
    expect(result.breaks).toEqual([]);
    const tasks = result.progress.tasks.slice(0, 7);
    expect(tasks.map(({ task, doneStep, outOfOrderAfter }) => [task, doneStep !== null, outOfOrderAfter])).toEqual(
      ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited'].map((task) => [task, true, null]),
    );
    // The next station, where there is one, begins with exactly these surfaces on the hands.
    if (room.followedBy.length > 0) expect(run.progress.current).toBe('gelInside');
    for (const side of ['left', 'right'] as const) {
      expect(run.room.surfaces.upper[run.room.surfaces.slots.hand[side].fingers]).toBe(`glove.${side}#1:fingers`);
      expect(run.ledger.stateOf(`glove.${side}#1:fingers`)).toBe('sterile');
    }
    for (const side of ['left', 'right'] as const) expect(run.room.gown!.observe(0, false).overlapM[side]).toBeGreaterThanOrEqual(room.gown.knitM);
  });
});
