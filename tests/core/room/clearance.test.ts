import { describe, expect, it } from 'vitest';
import { SIDES, type Side } from '../../../src/core/base/side.ts';
import { CLEARANCE_EVERY_STEPS, CLEARANCE_FAR_M } from '../../../src/core/room/clearance.ts';
import type { ClearanceThing } from '../../../src/core/room/clearanceThings.ts';
import type { Run } from '../../../src/core/run/run.ts';
import { ROOMY } from '../../support/gownRooms.ts';
import { Operator } from '../../support/operator.ts';
import { freshRun, runOperator } from '../../support/runOperator.ts';
import { WholeProcedure } from '../../support/wholeProcedure.ts';

/** By what the other measure knows each thing, and whether sleeves and what a hand holds can meet it. */
const LIKE: Readonly<Partial<Record<ClearanceThing, { readonly names: readonly string[]; readonly sleeve: boolean; readonly held: boolean }>>> = {
  'rail.left': { names: ['rail.left'], sleeve: true, held: true },
  'rail.right': { names: ['rail.right'], sleeve: true, held: true },
  'edge.left': { names: ['margin.left'], sleeve: true, held: true },
  'edge.right': { names: ['margin.right'], sleeve: true, held: true },
  pole: { names: ['pole'], sleeve: true, held: true },
  machine: { names: ['machine'], sleeve: true, held: true },
  tableEdge: { names: ['tableEdge'], sleeve: true, held: true },
  bin: { names: ['bin'], sleeve: true, held: true },
  face: { names: ['face'], sleeve: false, held: true },
};

/** Gap as it is measured outline by outline, far ones as infinite. */
function expected(op: Operator, side: Side, thing: ClearanceThing): number {
  const { names, sleeve, held } = LIKE[thing]!;
  if (op.run.room.hands[side].tucked) return Infinity;
  const { hold } = op.run.room.hands[side];
  const kept = [`glove.${side}`, ...(sleeve ? [`sleeve.${side}`] : []), ...(held && hold?.kind === 'thing' ? [idOf(op.run, hold.thing)] : [])];
  const gap = Math.max(0, Math.min(...kept.flatMap((own) => names.map((name) => op.near.gap(own, name)))));
  return gap < CLEARANCE_FAR_M ? gap : Infinity;
}

/** The probe is known by its sheath. */
const idOf = (run: Run, thing: number): string => (thing === 0 ? 'sheath:probe' : run.room.scene.things[thing]!.id);

/** Compares every reading while the operator works; gives how many were near. */
function compareAll(op: Operator): { near: number } {
  const seen = { near: 0 };
  op.watchLeast(() => {
    if ((op.run.stepCount - 1) % (CLEARANCE_EVERY_STEPS * 5) !== 0) return 0;
    const read = op.run.room.clearances();
    for (const side of SIDES) {
      for (const thing of Object.keys(LIKE) as ClearanceThing[]) {
        expect([op.run.stepCount, side, thing, read[side][thing]]).toEqual([op.run.stepCount, side, thing, expected(op, side, thing)]);
        if (read[side][thing] < Infinity) seen.near++;
      }
    }
    return 0;
  });
  return seen;
}

describe('Clearance', () => {
  it.each(['quiet-room', 'high-rails-short-sheath'] as const)('in %s is what the outlines say, with full and with empty hands', (room) => {
    let seen = { near: 0 };
    runOperator((op) => {
      op.wait(1 / 120);
      seen = compareAll(op);
      new WholeProcedure(op).gel();
    }, room);
    expect(seen.near).toBeGreaterThan(100);
  }, 120_000);

  it('keeps the smallest gap with its step', () => {
    const { run } = runOperator((op) => {
      op.palmTo('left', 0.25, 1.45).palmTo('right', 0.3, 1.5);
      op.approach('right', 1, 0, () => op.near.gap('glove.right', 'pole'), 0.01).palmTo('right', 0.2, 1.5);
    });
    const least = run.result().handling.measured!.clearance.find(({ hand, thing }) => hand === 'right' && thing === 'pole')!;
    expect(least.metres).toBeGreaterThan(0.008);
    expect(least.metres).toBeLessThan(0.011);
    expect(least.step % CLEARANCE_EVERY_STEPS).toBe(0);
  });

  it('is none of a bare hand, which has nothing to keep: the face may be touched before the gown', () => {
    const { op, run } = runOperator((by) => void by.turn('right', 60).palmTo('right', ROOMY.gown.standXM - 0.08, 1.58), ROOMY);
    expect(op.near.gap('skin.right', 'face')).toBeLessThan(0.01);
    expect(run.result().handling.measured!.clearance).toEqual([]);
    expect(run.breaks).toEqual([]);
  });

  it('goes on from a snapshot as if nothing had been between', () => {
    const script = (op: Operator): unknown => op.palmTo('left', 0.38, 1.5).palmTo('left', 0.2, 1.4);
    const run = freshRun('high-rails-short-sheath');
    new Operator(run).palmTo('left', 0.3, 1.45);
    const saved = structuredClone(run.snapshot());
    script(new Operator(run));
    const straight = structuredClone([run.result(), run.room.clearances(), run.snapshot()]);
    run.restore(saved);
    script(new Operator(run));
    expect([run.result(), run.room.clearances(), run.snapshot()]).toEqual(straight);
  });
});
