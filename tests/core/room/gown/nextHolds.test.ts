import { describe, expect, it } from 'vitest';
import type { Side } from '../../../../src/core/base/side.ts';
import { ComparedOperator, type Met } from '../../../support/comparedOperator.ts';
import { CRAMPED, ROOMY, TALL } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { freshRun } from '../../../support/runOperator.ts';

/** How near to the marked place a hand does what is told there (m). */
const NEAR_M = 0.05;

function play(room: typeof ROOMY, script: (work: GownWork) => unknown): readonly Met[] {
  const op = new ComparedOperator(freshRun(room));
  script(new GownWork(op));
  return op.met;
}

const ROOMS: readonly (readonly [string, typeof ROOMY])[] = [['with room to spare', ROOMY], ['by a small operator at a high table', CRAMPED], ['by a tall operator', TALL]];

describe('The next hold of gowning', () => {
  it.each(ROOMS)('is where a careful operator then grips, squeezes or lets go: %s', (_, room) => {
    const met = play(room, (work) => work.gowned().glove('right').glove('left').card());
    expect(met.filter(({ off }) => !(off < NEAR_M))).toEqual([]);
    expect(new Set(met.map(({ what }) => what))).toEqual(
      new Set(['gownNeck', 'clearOfTable', 'gownShoulder', 'sleeve', 'cuffFromInside', 'gloveCuff', 'fingertips', 'gloveEdge', 'drawn', 'cardHalf']),
    );
  });

  it('leads each palm along the ways that it then goes, and to where it waits', () => {
    const op = new ComparedOperator(freshRun(ROOMY));
    const least = new Map<string, number>();
    const near = (what: string, [x, y]: readonly [number, number], side: Side): void => {
      const { x: px, y: py } = op.hand(side);
      least.set(what, Math.min(least.get(what) ?? Infinity, Math.hypot(px - x, py - y)));
    };
    op.watchLeast(() => {
      for (const { hold, at, to } of op.told) {
        if (hold.act !== 'push' && hold.act !== 'stay') continue;
        if (hold.hand) near(`${hold.place} of ${hold.hand}`, at, hold.hand);
        if (hold.hand && to) near(`end of ${hold.place} of ${hold.hand}`, to, hold.hand);
      }
      return 0;
    });
    new GownWork(op).all();
    expect([...least.keys()]).toHaveLength(10);
    expect([...least].filter(([, metres]) => !(metres < NEAR_M))).toEqual([]);
    // Gowned and gloved: what comes next belongs to the next station.
    expect(op.told.map(({ hold }) => hold.thing)).toEqual(['sheathRoll']);
  });

  it('is none while there is nothing for a hand to do, and none for a gown that fell', () => {
    const op = new ComparedOperator(freshRun(ROOMY));
    const work = new GownWork(op);
    work.lift().fallOpen();
    expect(op.told.map(({ hold }) => [hold.place, hold.hand])).toEqual([['gownShoulder', 'left']]);
    op.release('right');
    expect(work.gown.state).toBe('dropped');
    expect(op.told).toEqual([]);
  });

  it('leads a bare hand into the glove that hangs for it, and to the cuff that is still to be drawn over', () => {
    const op = new ComparedOperator(freshRun(ROOMY));
    const work = new GownWork(op);
    work.dressed().changeGlove('right');
    expect(op.told.map(({ hold }) => [hold.act, hold.place, hold.hand])).toEqual([['grip', 'gloveCuff', 'left']]);
    work.hangGlove('right');
    expect(op.told.map(({ hold }) => [hold.act, hold.place, hold.hand])).toEqual([['push', 'gloveMouth', 'right']]);
    // Nothing but the way that is told.
    const { at, to } = op.told[0]!;
    op.turn('right', -90).fingersTo('right', at[0], at[1] + 0.08).fingersTo('right', ...to!, 0.2).release('left');
    expect(work.gown.dress.arms.right.glove).toBe('on');
    expect(op.told.map(({ hold }) => [hold.act, hold.place, hold.hand])).toEqual([['draw', 'gloveEdge', 'left']]);
    work.coverCuff('right').waitTogether(op.run.scenario.tasks.waitS + 1);
    expect(op.told.map(({ hold }) => hold.thing)).toEqual(['sheathRoll']);
    expect(op.run.result().breaks).toEqual([]);
  });

  it('is the cuff again while a glove is drawn over too short', () => {
    const op = new ComparedOperator(freshRun(ROOMY));
    const work = new GownWork(op);
    work.gowned().fetchGlove('right').lay('right').draw('right', 0.045);
    expect(work.gown.dress.arms.right.glove).toBe('over');
    expect(op.told.map(({ hold }) => [hold.act, hold.place, hold.hand])).toEqual([['draw', 'gloveEdge', 'left']]);
    // Where the edge lies now: the hand finds it there.
    op.fingersTo('left', ...op.told[0]!.at).grip('left');
    expect(op.holds('left')).toBe('gloveCuff');
    expect(op.run.progress.hint).toContain('over the whole knit cuff');
  });
});
