import { expect, it } from 'vitest';
import { SIDES } from '../../../src/core/base/side.ts';
import { TALL } from '../../support/gownRooms.ts';
import { GownWork } from '../../support/gownWork.ts';
import { runOperator } from '../../support/runOperator.ts';

it('bare hands and what they hold of a gown are told in words, also where no sheath is loaded', () => {
  const { run } = runOperator((op) => void new GownWork(op).lift().fallOpen(), TALL);
  expect(run.heldWords('right')).toEqual({ what: 'the gown by its neck', state: 'bare', broken: false });
  expect(run.heldWords('left')).toEqual({ what: 'empty', state: 'bare', broken: false });
  const both = runOperator((op) => void new GownWork(op).lift().fallOpen().takeShoulder(), TALL).run;
  for (const side of SIDES) expect(both.heldWords(side).what).toBe('the shoulder of the gown');
});
