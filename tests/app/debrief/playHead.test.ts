import { describe, expect, it } from 'vitest';
import { PlayHead, SPEEDS } from '../../../src/app/debrief/PlayHead.ts';

describe('The instant that is shown', () => {
  it.each(SPEEDS)('moves at %d times the time of the room', (speed) => {
    const head = new PlayHead(12_000);
    head.setSpeed(speed);
    head.toggle();
    for (let k = 0; k < 10; k++) head.advance(100);
    expect(head.step).toBeCloseTo(120 * speed, 9);
  });

  it('waits for what cannot be played yet, and stops at the end', () => {
    const head = new PlayHead(240, 60);
    head.toggle();
    for (let k = 0; k < 10; k++) head.advance(100);
    expect(head.step).toBe(60);
    expect(head.playing).toBe(true);
    head.setPlayable(1000);
    expect(head.playable).toBe(240);
    for (let k = 0; k < 20; k++) head.advance(100);
    expect(head.step).toBe(240);
    expect(head.playing).toBe(false);
    head.toggle();
    expect(head.step).toBe(0);
  });

  it('keeps a wish for an instant that is not there yet, and stays within the run', () => {
    const head = new PlayHead(1000, 100);
    head.goTo(600);
    expect([head.step, head.waiting]).toEqual([600, true]);
    head.toggle();
    head.advance(1000);
    expect(head.step).toBe(600);
    head.setPlayable(600);
    expect(head.waiting).toBe(false);
    head.goBy(-100);
    expect(head.step).toBe(0);
    head.goTo(5000);
    expect(head.step).toBe(1000);
  });

  it('takes the time while the page was hidden for no time of the run', () => {
    const head = new PlayHead(100_000);
    head.toggle();
    head.advance(60_000);
    expect(head.step).toBeCloseTo(30, 9);
  });

  it('tells who listens, once for each change', () => {
    const head = new PlayHead(1000);
    let told = 0;
    const stop = head.subscribe(() => told++);
    head.goTo(5);
    head.goTo(5);
    head.setSpeed(2);
    head.changeSpeed(-1);
    expect([told, head.speed]).toEqual([3, 1]);
    stop();
    head.goTo(7);
    expect(told).toBe(3);
  });
});
