import { describe, expect, it } from 'vitest';
import { Run } from '../../../../src/core/run/run.ts';
import type { Operator } from '../../../support/operator.ts';
import { runOperator, type OperatorRun } from '../../../support/runOperator.ts';

/** A busy machine may need long for a room that settles and is then played (ms). */
const PATIENCE_MS = 300_000;
const ITEM = 'bandTwo';
const offered = (play: (op: Operator) => void): OperatorRun =>
  runOperator((op) => {
    op.palmsTo([['right', -0.27, 1.42], ['left', 0.27, 1.42]]).send({ type: 'ask', request: 'offerPacket' });
    for (let k = 0; k < 60 && doing(op) !== 'offeringItem'; k++) op.wait(0.2);
    expect(doing(op)).toBe('offeringItem');
    play(op);
  }, 'sheath-hurried');
const doing = (op: Operator): string => op.run.room.assistant.look().doing;
const index = (op: Operator): number => op.run.room.scene.things.findIndex(({ id }) => id === ITEM);
const isOut = (op: Operator): boolean => !op.run.room.packed[index(op)]!;

/** The right hand comes to the item from above, on its own side of it, and takes it away over the rail. */
function takeIt(op: Operator): Operator {
  const { x, y } = op.thing(ITEM);
  op.palmTo('right', -0.5, 1.42).turn('right', -70).fingersTo('right', x + 0.1, y + 0.1).take('right', ITEM, 0.1).wait(0.5);
  expect(op.holds('right')).toBe(ITEM);
  return op.fingersTo('right', x + 0.15, y + 0.1);
}

describe('An item offered in its opened packet', () => {
  it('is held still over the table, taken by a glove and carried off without a break', () => {
    const { op, result } = offered((op) => {
      expect(isOut(op)).toBe(true);
      const { x, y } = op.thing(ITEM);
      expect(y - op.run.room.scene.layout.kitTable.top).toBeCloseTo(0.35, 2);
      op.wait(1);
      expect(op.thing(ITEM).x).toBeCloseTo(x, 9);
      expect(op.thing(ITEM).y).toBeCloseTo(y, 9);
      takeIt(op);
      expect(doing(op)).toBe('leaving');
      op.palmTo('right', -0.5, 1.42).palmTo('right', -0.27, 1.42).wait(2);
    });
    expect(op.holds('right')).toBe(ITEM);
    expect(doing(op)).toBe('waiting');
    expect(result.breaks).toEqual([]);
  }, PATIENCE_MS);

  it.each([['at “let go”', (op: Operator) => op.send({ type: 'ask', request: 'letGo' }).wait(2)], ['when nobody takes it', (op: Operator) => op.wait(21)]])('falls on to the table %s', (_, then) => {
    const { result } = offered((op) => {
      const { x } = op.thing(ITEM);
      then(op);
      expect(doing(op)).not.toBe('offeringItem');
      expect(op.thing(ITEM).x).toBeCloseTo(x, 1);
      expect(op.thing(ITEM).y - op.run.room.scene.layout.kitTable.top).toBeLessThan(0.03);
      expect(op.run.room.touches.offField()[index(op)]).toBe(false);
    });
    expect(result.breaks).toEqual([]);
  }, PATIENCE_MS);

  it('costs the glove that meets the fingers behind it', () => {
    const { result } = offered((op) => {
      const { x, y } = op.thing(ITEM);
      op.palmTo('right', -0.5, 1.42).turn('right', -70).fingersTo('right', x + 0.1, y + 0.1).fingersTo('right', x - 0.08, y + 0.1, 0.2).fingersTo('right', x - 0.1, y, 0.1);
    });
    expect(result.breaks.map(({ rule }) => rule)).toEqual(['glove-on-bare-hand']);
  }, PATIENCE_MS);

  it('goes on bit for bit from a snapshot', () => {
    const { run } = offered(() => {});
    const saved = structuredClone(run.snapshot());
    const go = (one: Run): string => {
      for (let k = 0; k < 2600; k++) one.step([]);
      return one.hash();
    };
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(go(fresh)).toBe(go(run));
  }, PATIENCE_MS);
});
