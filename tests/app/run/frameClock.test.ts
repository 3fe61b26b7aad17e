import { describe, expect, it } from 'vitest';
import { FrameClock } from '../../../src/app/run/FrameClock.ts';

const STEP_MS = 1000 / 120;

describe('the clock of frames', () => {
  it('makes 120 steps of a second, whatever the frames', () => {
    for (const frames of [30, 60, 75, 144]) {
      const clock = new FrameClock(1);
      let steps = 0;
      for (let k = 0; k < frames; k++) steps += clock.take(1000 / frames);
      expect(Math.abs(steps - 120)).toBeLessThanOrEqual(1);
    }
  });

  it('stretches time on a slow machine instead of running after it', () => {
    const clock = new FrameClock(1);
    expect(clock.take(500)).toBe(6);
    expect(clock.take(0)).toBe(0);
  });

  it('slows down', () => {
    const clock = new FrameClock(4);
    let steps = 0;
    for (let k = 0; k < 60; k++) steps += clock.take(1000 / 60);
    expect(Math.abs(steps - 30)).toBeLessThanOrEqual(1);
  });

  it('knows how far the moment lies between two steps', () => {
    const clock = new FrameClock(1);
    clock.take(STEP_MS * 1.25);
    expect(clock.blend).toBeCloseTo(0.25, 6);
    clock.reset();
    expect(clock.blend).toBe(0);
  });

  it('never goes back', () => {
    const clock = new FrameClock(1);
    expect(clock.take(-50)).toBe(0);
    expect(clock.blend).toBe(0);
  });
});
