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

  it('go on from where a hand is that came along with the body, without a command of their own', () => {
    const hands = restingHands((side) => ({ x: side === 'left' ? 0.9 : -0.25, y: 1.3 }));
    hands.take(200);
    expect(hands.targetOf('left')).toMatchObject({ x: 0.9, y: 1.3 });
    expect(hands.targetOf('right')).toMatchObject({ x: -0.25, y: 1.25 });
    expect(hands.take(202)).toEqual([]);
    hands.moveBy('left', -0.1, 0);
    expect(hands.take(204)).toEqual([{ type: 'hand.move', hand: 'left', xMm: 800, yMm: 1300 }]);
  });

  it('keep leading a hand that lags behind', () => {
    const hands = restingHands(() => ({ x: 0.25, y: 1.25 }));
    hands.take(200);
    hands.moveTo('left', 0.9, 1.3);
    hands.take(202);
    hands.moveBy('left', 0.1, 0);
    expect(hands.take(204)).toEqual([{ type: 'hand.move', hand: 'left', xMm: 1000, yMm: 1300 }]);
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
