import { describe, expect, it } from 'vitest';
import type { Side } from '../../../../src/core/base/side.ts';
import type { Command } from '../../../../src/core/commands/command.ts';
import type { HoldAct } from '../../../../src/core/procedure/nextHold.ts';
import { fingertips } from '../../../../src/core/room/fingertips.ts';
import { placeHolds, type PlacedHold } from '../../../../src/core/room/placedHold.ts';
import { CRAMPED, ROOMY, TALL } from '../../../support/gownRooms.ts';
import { GownWork } from '../../../support/gownWork.ts';
import { Operator } from '../../../support/operator.ts';
import { freshRun } from '../../../support/runOperator.ts';

/** How near to the marked place a hand does what is told there (m). */
const NEAR_M = 0.05;

interface Met {
  readonly what: string;
  readonly hand: Side;
  /** From the place of the hold to the fingertips (m); Infinity when none was told for that hand. */
  readonly off: number;
}

/** An operator whose every grip, squeeze and release is compared with the holds that were told just before. */
class ComparedOperator extends Operator {
  readonly met: Met[] = [];
  /** Where the way ends along which a glove's cuff is being drawn. */
  private drawTo: readonly [number, number] | null = null;

  override send(command: Command): this {
    if (command.type === 'hand.grip') this.compare(command.hand, ['grip', 'draw']);
    if (command.type === 'hand.use' && command.on) this.compare(command.hand, ['squeeze']);
    if (command.type === 'hand.release' && this.holds(command.hand) === 'gloveCuff') {
      const [x, y] = fingertips(this.run.room.scene, command.hand);
      this.met.push({ what: 'drawn', hand: command.hand, off: Math.hypot(this.drawTo![0] - x, this.drawTo![1] - y) });
    }
    return super.send(command);
  }

  get told(): readonly PlacedHold[] {
    return placeHolds(this.run.picture(), this.run.nextHolds);
  }

  /** Least distance from the told places of these acts to the fingertips. */
  private compare(hand: Side, acts: readonly HoldAct[]): void {
    const told = this.told.filter(({ hold }) => acts.includes(hold.act) && (hold.hand === null || hold.hand === hand));
    const [x, y] = fingertips(this.run.room.scene, hand);
    this.drawTo = told.find(({ hold }) => hold.act === 'draw')?.to ?? this.drawTo;
    const off = told.map(({ at }) => Math.hypot(at[0] - x, at[1] - y));
    this.met.push({ what: told.map(({ hold }) => hold.place).join() || `${acts.join()} untold`, hand, off: Math.min(Infinity, ...off) });
  }
}

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
    expect(op.told).toEqual([]);
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
