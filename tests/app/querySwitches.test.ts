import { describe, expect, it } from 'vitest';
import { readQuerySwitches } from '../../src/app/querySwitches.ts';

describe('switches in the address', () => {
  it('are all off by themselves', () => {
    expect(readQuerySwitches('')).toEqual({ test: false, renderer: null, scenario: null, seed: null });
  });

  it('are read', () => {
    expect(readQuerySwitches('?test&renderer=canvas&scenario=quiet-room&seed=7')).toEqual({ test: true, renderer: 'canvas', scenario: 'quiet-room', seed: 7 });
  });

  it('that make no sense are ignored', () => {
    for (const search of ['?renderer=paper&scenario=../x&seed=-1', '?seed=1.5', '?seed=9999999999', '?seed=abc']) {
      expect(readQuerySwitches(search)).toEqual({ test: false, renderer: null, scenario: null, seed: null });
    }
  });
});
