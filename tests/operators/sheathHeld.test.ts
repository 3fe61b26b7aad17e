import { describe, expect, it } from 'vitest';
import { Loading } from '../support/loading.ts';
import { runOperator } from '../support/runOperator.ts';

describe('What the hands are said to hold while the probe is loaded', () => {
  it('is sterile from the folded sheath to the probe in it, though the inside of the sheath is not', () => {
    const said: string[][] = [];
    runOperator((op) => {
      const loading = new Loading(op);
      const say = (): unknown => said.push((['right', 'left'] as const).flatMap((side) => { const { what, state } = op.run.heldWords(side); return [what, state]; }));
      loading.fetch();
      say();
      loading.open();
      say();
      loading.aside().gel().bring().under().lower().takeProbe();
      say();
    }, 'sheath-short');
    expect(said).toEqual([
      ['the folded sheath', 'sterile', 'empty', 'sterile'],
      ['the mouth of the sheath', 'sterile', 'the mouth of the sheath', 'sterile'],
      ['the open end of the sheath', 'sterile', 'probe in its sheath', 'sterile'],
    ]);
  });
});
