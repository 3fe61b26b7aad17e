import { describe, expect, it } from 'vitest';
import { easedOffset, PointerFollow } from '../../../src/app/input/followPointer.ts';

const ORIGIN = { x: 0, y: 0 };

describe('a hand that follows a pointer', () => {
  it('does not move while the pointer rests', () => {
    const follow = new PointerFollow(ORIGIN, { x: 0.5, y: 0.2 }, ORIGIN);
    expect(follow.moveTo(ORIGIN)).toEqual({ x: 0.5, y: 0.2 });
  });

  it('never moves farther than the pointer and half of it', () => {
    const follow = new PointerFollow(ORIGIN, { x: 0.5, y: 0 }, ORIGIN);
    const to = follow.moveTo({ x: -0.01, y: 0 });
    expect(0.5 - to.x).toBeCloseTo(0.015, 9);
  });

  it('comes under the pointer on the way, and then stays there', () => {
    const follow = new PointerFollow(ORIGIN, { x: 0.1, y: 0.1 }, ORIGIN);
    let pointer = ORIGIN;
    let hand = ORIGIN;
    for (let k = 0; k < 100; k++) {
      pointer = { x: pointer.x + (k % 2 === 0 ? 0.02 : -0.01), y: pointer.y };
      hand = follow.moveTo(pointer);
    }
    expect(hand).toEqual(pointer);
  });

  it('floats above a finger', () => {
    const rest = { x: 0, y: 0.07 };
    expect(easedOffset(ORIGIN, rest, 1)).toEqual(rest);
  });
});
