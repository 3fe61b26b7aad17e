import { describe, expect, it } from 'vitest';
import type { TaskId } from '../../src/core/procedure/observation.ts';
import type { RunResult } from '../../src/core/run/result.ts';
import { Loading } from '../support/loading.ts';
import { LOAD_AND_WORK } from '../support/rooms.ts';
import { runOperator } from '../support/runOperator.ts';
import { WholeProcedure } from '../support/wholeProcedure.ts';

const SHEATH: readonly TaskId[] = ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown'];

const inOrder = ({ progress }: RunResult, tasks: readonly TaskId[]): void => {
  const seen = progress.tasks.filter(({ task }) => tasks.includes(task)).map(({ task, doneStep, outOfOrderAfter }) => [task, doneStep !== null, outOfOrderAfter]);
  expect(seen).toEqual(tasks.map((task) => [task, true, null]));
};

describe('Loading the probe without a break', () => {
  it('from the folded sheath to the probe on the field, every task in its order; then the cord is let go and hangs over the rail', () => {
    const { result } = runOperator((op) => void new Loading(op).all().ask('letGo', 5), 'sheath-short');
    expect(result.breaks).toEqual([]);
    inOrder(result, SHEATH);
  });

  it('a loose sheath, gathered before it is opened, with an assistant who brings the probe beside the mouth', () => {
    const { result } = runOperator((op) => {
      const loading = new Loading(op).fetch();
      op.use('right', 3.6);
      loading.open().aside().gel().bring().under().lower().takeProbe().letGo().drawUp().tail().bands().layDown();
    }, 'sheath-loose-clumsy');
    expect(result.breaks).toEqual([]);
    inOrder(result, SHEATH);
  });

  it('an assistant who lets go untold, once the probe is held; the second band comes out of its packet', () => {
    const { result } = runOperator((op) => {
      const loading = new Loading(op).fetch().open().aside().gel().bring().under().ask('lower', 4.3).takeProbe();
      op.wait(3);
      loading.drawUp().tail().band('bandOne', 0.03).ask('letGo', 1).ask('openPacket', 12);
      op.palmTo('left', 0.12, 1.18, 0.15).palmTo('right', -0.3, 1.38).palmTo('right', -0.65, 1.38).turn('right', -50).take('right', 'bandTwo');
      op.palmTo('right', -0.65, 1.38).palmTo('right', -0.3, 1.38).palmTo('right', -0.15, 1.25).turn('right', -10);
      loading.putBand(0.11).layDown();
    }, 'sheath-hurried');
    expect(result.breaks).toEqual([]);
    inOrder(result, SHEATH);
  });

  it('and straight on into the field: gel, view, park, anaesthetic, needle', () => {
    const { result } = runOperator((op) => {
      new Loading(op).all();
      new WholeProcedure(op).gelFromTable('gelTwo').view().park().anaesthetic().ready();
    }, LOAD_AND_WORK);
    expect(result.breaks).toEqual([]);
    inOrder(result, [...SHEATH, 'gel', 'view', 'park', 'anaesthetic', 'ready']);
  });

  it('lowering that is stopped half way and goes on', () => {
    const { result } = runOperator((op) => void new Loading(op).fetch().open().aside().gel().bring().under().ask('lower', 2).ask('stop', 2).ask('lower', 4.5).takeProbe().letGo(), 'sheath-short');
    expect(result.breaks).toEqual([]);
    inOrder(result, ['gelInside', 'probeTaken']);
  });
});

describe('Near misses in loading the probe', () => {
  it('the closed end of the sheath, 5 to 12 mm above the level for three seconds', () => {
    const { op, result } = runOperator((by) => {
      const loading = new Loading(by).fetch().open();
      const { x } = by.hand('left');
      for (let k = 0; k < 120 && loading.overLevel() > 0.012; k++) by.palmsTo([['right', 0.04, 1.33 - 0.001 * k], ['left', x, 1.34 - 0.001 * k]], 0.05);
      by.wait(3);
    }, 'sheath-short');
    const over = new Loading(op).overLevel();
    expect(over).toBeGreaterThan(0.005);
    expect(over).toBeLessThan(0.0121);
    expect(result.breaks).toEqual([]);
  });

  it('a glove 8 mm under the assistant’s arm', () => {
    let least = Infinity;
    const { result } = runOperator((op) => {
      new Loading(op).fetch().open().aside().bring();
      const seen = op.watch('glove.left', 'bareHand');
      op.palmTo('left', 0.3, 1.25).approach('left', 0, 1, () => op.near.gap('glove.left', 'bareHand'), 0.008).wait(1).palmTo('left', 0.28, 1.2);
      least = seen.least;
    }, 'sheath-short');
    expect(least).toBeLessThan(0.01);
    expect(result.breaks).toEqual([]);
  });

  it('a glove 8 mm under the face of the bare probe', () => {
    let least = Infinity;
    const { result } = runOperator((op) => {
      new Loading(op).fetch().open().aside().bring();
      op.turn('left', 60);
      const { x, y } = op.end('probe');
      const seen = op.watch('glove.left', 'bareProbe');
      op.fingersTo('left', x + 0.01, y - 0.07, 0.15).approach('left', 0, 1, () => op.near.gap('glove.left', 'bareProbe'), 0.008).wait(0.5).palmTo('left', 0.3, 1.2);
      least = seen.least;
    }, 'sheath-short');
    expect(least).toBeLessThan(0.01);
    expect(result.breaks).toEqual([]);
  });
});
