import { describe, expect, it } from 'vitest';
import { restingHands } from '../support/hands.ts';

describe('controls of the hands', () => {
  it('queue a grip once, and its release', () => {
    const hands = restingHands();
    hands.setGrip('right', true);
    hands.setGrip('right', true);
    hands.setGrip('right', false);
    expect(hands.take(0)).toEqual([
      { type: 'hand.grip', hand: 'right' },
      { type: 'hand.release', hand: 'right' },
    ]);
    expect(hands.take(1)).toEqual([]);
  });

  it('put the movement before the grip of the same step', () => {
    const hands = restingHands();
    hands.flipGrip('left');
    hands.moveTo('left', 0.3, 1.2);
    expect(hands.take(0).map(({ type }) => type)).toEqual(['hand.move', 'hand.grip']);
  });

  it('open a hand that closed on nothing after a moment, and say so', () => {
    const hands = restingHands();
    hands.setGrip('right', true);
    hands.take(0);
    const nothing = { left: false, right: false };
    expect(hands.settleGrips(nothing, 1)).toEqual([]);
    expect(hands.settleGrips(nothing, 25)).toEqual([{ side: 'right', held: false }]);
    expect(hands.take(26)).toEqual([{ type: 'hand.release', hand: 'right' }]);
    expect(hands.isClosed('right')).toBe(false);
  });

  it('tell a lost hold from an empty grip', () => {
    const hands = restingHands();
    hands.setGrip('right', true);
    hands.settleGrips({ left: false, right: true }, 1);
    hands.settleGrips({ left: false, right: false }, 100);
    expect(hands.settleGrips({ left: false, right: false }, 130)).toEqual([{ side: 'right', held: true }]);
  });

  it('let nothing through during a pause but the end of a use', () => {
    const hands = restingHands();
    hands.use('right', true);
    hands.mode.send({ type: 'pause' });
    hands.moveTo('right', 0, 1);
    hands.turnBy('right', 40);
    hands.setGrip('right', true);
    hands.use('left', true);
    hands.use('right', false);
    expect(hands.take(0)).toEqual([
      { type: 'hand.use', hand: 'right', on: true },
      { type: 'hand.use', hand: 'right', on: false },
    ]);
  });

  it('turn both hands the same way round on the screen', () => {
    const hands = restingHands();
    hands.rotateBy('right', 10);
    hands.rotateBy('left', 10);
    expect(hands.take(0)).toEqual([
      { type: 'hand.turn', hand: 'right', angleDeg: -10 },
      { type: 'hand.turn', hand: 'left', angleDeg: -30 },
    ]);
  });
});
