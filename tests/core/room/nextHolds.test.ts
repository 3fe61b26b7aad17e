import { describe, expect, it } from 'vitest';
import { placeHolds } from '../../../src/core/room/placedHold.ts';
import { ComparedOperator } from '../../support/comparedOperator.ts';
import { Loading } from '../../support/loading.ts';
import { freshRun } from '../../support/runOperator.ts';
import { WholeProcedure } from '../../support/wholeProcedure.ts';

/** How near to the marked place a hand does what is told there (m). */
const NEAR_M = 0.05;

describe('The next hold', () => {
  it('of sheathing is where a careful operator then grips and squeezes', () => {
    const op = new ComparedOperator(freshRun('sheath-short'));
    const work = new Loading(op).toProbe().letGo();
    // The hand that opened the mouth holds the open end now, and goes on with it along the cord.
    const [end] = op.told;
    expect(end!.hold).toMatchObject({ act: 'draw', place: 'openEnd' });
    expect(Math.hypot(end!.at[0] - op.tips('right')[0], end!.at[1] - op.tips('right')[1])).toBeLessThan(NEAR_M);
    work.drawUp().tail();
    expect(op.told.map(({ hold }) => hold.place)).toEqual(['lying']);
    work.bands().layDown();
    expect(op.met.filter(({ off }) => !(off < NEAR_M))).toEqual([]);
    expect(op.met.map(({ what }) => what)).toEqual(['lying', 'mouthEdge', 'lying', 'mouth', 'probeInside', 'lying', 'behindHead', 'lying', 'alongHandle']);
  });

  it('on the field is where a careful operator then grips and squeezes', () => {
    const op = new ComparedOperator(freshRun('quiet-room'));
    new WholeProcedure(op).all();
    expect(op.met.filter(({ off }) => !(off < NEAR_M))).toEqual([]);
    expect(op.met.map(({ what }) => what)).toEqual(['lying', 'site', 'lying', 'lying', 'site', 'lying,lying', 'lying', 'lying']);
    expect(op.told).toEqual([]);
  });

  it('leads a thing in hand to its place, and no longer to where it lay', () => {
    const run = freshRun('quiet-room');
    const op = new ComparedOperator(run);
    expect(op.told.map(({ hold }) => hold.place)).toEqual(['lying']);
    const { x, y } = op.thing('gel');
    expect(op.told[0]!.at).toEqual([x, y]);
    op.palmTo('left', 0.27, 1.45).turn('right', -40).take('right', 'gel');
    expect(op.told.map(({ hold }) => hold.place)).toEqual(['site']);
    expect(placeHolds({ ...run.picture(), skinX: new Float64Array(0) }, run.nextHolds)).toEqual([]);
  });
});
