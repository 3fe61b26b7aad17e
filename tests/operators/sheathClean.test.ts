import { describe, expect, it } from 'vitest';
import { Loading } from '../support/loading.ts';
import { runOperator } from '../support/runOperator.ts';

describe('Loading the probe without a break', () => {
  it('from the folded sheath to the probe on the field, every task in its order', () => {
    const { result } = runOperator((op) => void new Loading(op).all(), 'sheath-short');
    expect(result.breaks).toEqual([]);
    expect(result.progress.tasks.map(({ task, doneStep, outOfOrderAfter }) => [task, doneStep !== null, outOfOrderAfter])).toEqual(
      ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown'].map((task) => [task, true, null]),
    );
  });
});
