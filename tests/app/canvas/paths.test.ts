import { describe, expect, it } from 'vitest';
import { compose, scaling, shift, turning, applyTo } from '../../../src/app/canvas/pen/affine.ts';
import { limb, smooth } from '../../../src/app/canvas/pen/curves.ts';
import { CLOSE, CUBIC, LINE, MOVE, parsePath } from '../../../src/app/canvas/pen/pathData.ts';
import { runsOf } from '../../../src/app/canvas/strands/runs.ts';

describe('paths', () => {
  it('are read from text with absolute commands', () => {
    expect(parsePath('M-1 .5H3V-2C1 2 3 4 5 6Z')).toEqual({ ops: [MOVE, LINE, LINE, CUBIC, CLOSE], xy: [-1, 0.5, 3, 0.5, 3, -2, 1, 2, 3, 4, 5, 6] });
    expect(parsePath('M0 0 1 1 2 0').ops).toEqual([MOVE, LINE, LINE]);
  });

  it('go through their points where they are smooth', () => {
    const { xy } = smooth([[0, 0], [1, 2], [3, 1]]);
    expect(xy.slice(-2)).toEqual([3, 1]);
    expect(xy.slice(6, 8)).toEqual([1, 2]);
  });

  it('widen a centre line to a closed limb', () => {
    const { ops, xy } = limb([[0, 0, 1], [4, 0, 1], [8, 0, 1]]);
    expect(ops.at(-1)).toBe(CLOSE);
    const ys = xy.filter((_, i) => i % 2 === 1);
    expect(Math.max(...ys)).toBeCloseTo(1, 1);
    expect(Math.min(...ys)).toBeCloseTo(-1, 1);
  });
});

describe('frames of drawing', () => {
  it('nest: the inner one comes first', () => {
    const map = [shift(10, 0), turning(90), scaling(2)].reduce(compose);
    const [x, y] = applyTo(map, 1, 0);
    expect(x).toBeCloseTo(10);
    expect(y).toBeCloseTo(2);
  });
});

describe('runs of a strand', () => {
  it('join neighbours that are shown alike', () => {
    const runs = runsOf(['a', 'b', 'c', 'd'], (id) => (id === 'c' ? 'became' : 'sterile'));
    expect(runs).toEqual([{ mark: 'sterile', from: 0, to: 2 }, { mark: 'became', from: 2, to: 3 }, { mark: 'sterile', from: 3, to: 4 }]);
  });
});
