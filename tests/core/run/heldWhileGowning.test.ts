import { expect, it } from 'vitest';
import { TALL } from '../../support/gownRooms.ts';
import { GownWork } from '../../support/gownWork.ts';
import { runOperator } from '../../support/runOperator.ts';

it('bare hands and what they hold of a gown are told in words, also where no sheath is loaded', () => {
  const { run } = runOperator((op) => void new GownWork(op).lift().fallOpen(), TALL);
  expect(run.heldWords('right')).toEqual({ what: 'the shoulder of the gown', state: 'bare', broken: false });
  expect(run.heldWords('left')).toEqual({ what: 'empty', state: 'bare', broken: false });
});
