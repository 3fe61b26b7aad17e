import { describe, expect, it } from 'vitest';
import { stepAt, ticksOf, windowAround, xOf } from '../../../src/app/debrief/timeline/timeScale.ts';
import { instantText } from '../../../src/app/debrief/timeText.ts';

describe('The time axis', () => {
  const scale = { from: 0, to: 91_200, left: 132, right: 1132 };

  it('takes steps to pixels and back', () => {
    expect(xOf(scale, 0)).toBe(132);
    expect(xOf(scale, 91_200)).toBe(1132);
    expect(stepAt(scale, xOf(scale, 12_345))).toBeCloseTo(12_345, 6);
  });

  it('has ticks at round times with room for their words', () => {
    const ticks = ticksOf(scale);
    expect(ticks.map(({ seconds }) => seconds)).toEqual([0, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600, 660, 720]);
    expect(ticksOf({ ...scale, from: 1200, to: 1320 }).map(({ seconds }) => seconds)).toEqual([10, 10.1, 10.2, 10.3, 10.4, 10.5, 10.6, 10.7, 10.8, 10.9, 11].map((s) => expect.closeTo(s, 6)));
  });

  it('shows the whole run, or a stretch that goes on with the instant', () => {
    expect(windowAround(500, 91_200, null, null)).toEqual({ from: 0, to: 91_200 });
    expect(windowAround(500, 1000, 60, null)).toEqual({ from: 0, to: 1000 });
    const first = windowAround(40_000, 91_200, 20, null);
    expect(first).toEqual({ from: 38_800, to: 41_200 });
    expect(windowAround(40_900, 91_200, 20, first)).toEqual(first);
    expect(windowAround(41_150, 91_200, 20, first)).toEqual({ from: 39_950, to: 42_350 });
    expect(windowAround(91_200, 91_200, 20, first)).toEqual({ from: 88_800, to: 91_200 });
    expect(windowAround(0, 91_200, 20, first)).toEqual({ from: 0, to: 2400 });
  });
});

describe('Instants', () => {
  it.each([[0, '00:00.0'], [12, '00:00.1'], [11, '00:00.0'], [51_156, '07:06.3'], [-4, '00:00.0']])('%d steps are %s', (step, words) => {
    expect(instantText(step)).toBe(words);
  });
});
