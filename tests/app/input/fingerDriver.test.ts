import { beforeEach, describe, expect, it } from 'vitest';
import { FingerDriver } from '../../../src/app/input/FingerDriver.ts';
import type { HandsControl } from '../../../src/app/input/HandsControl.ts';
import { asElement, FakeElement } from '../support/FakeElement.ts';
import { restingHands } from '../support/hands.ts';

const toRoom = (x: number, y: number) => ({ x: x / 1000, y: 2 - y / 1000 });
const finger = (id: number, x: number, y: number, timeStamp = 0) => ({ pointerType: 'touch', pointerId: id, clientX: x, clientY: y, timeStamp });

describe('fingers', () => {
  let hands: HandsControl;
  let room: FakeElement;
  beforeEach(() => {
    hands = restingHands();
    room = new FakeElement();
    const view = { toRoom, handAt: (side: 'left' | 'right') => hands.targetOf(side), inRealTime: () => true, zoom: () => undefined, pan: () => undefined };
    new FingerDriver(hands, view).attach(asElement(room), new AbortController().signal);
  });

  it('lead both hands at once', () => {
    room.send('pointerdown', finger(1, -250, 750));
    room.send('pointerdown', finger(2, 250, 750));
    for (let k = 1; k <= 40; k++) {
      room.send('pointermove', finger(1, -250 + 10 * k, 750));
      room.send('pointermove', finger(2, 250, 750 - 10 * k));
    }
    expect(hands.targetOf('right').x).toBeCloseTo(0.15, 6);
    expect(hands.targetOf('right').y).toBeCloseTo(1.25 + 0.072, 6);
    expect(hands.targetOf('left').x).toBeCloseTo(0.25, 6);
    expect(hands.targetOf('left').y).toBeCloseTo(1.65 + 0.072, 6);
  });

  it('change the grip by a short tap on a hand', () => {
    room.send('pointerdown', finger(1, 260, 760));
    room.send('pointerup', finger(1, 260, 760, 120));
    expect(hands.take(0)).toEqual([{ type: 'hand.grip', hand: 'left' }]);
  });

  it.each([['right', 40], ['right', 72], ['left', 0]] as const)('lead the %s hand from %i mm below it, though the other is low and near', (side, below) => {
    hands.moveTo('right', -0.02, 1.4);
    hands.moveTo('left', 0.03, 1.34);
    const { x, y } = hands.targetOf(side);
    const other = { ...hands.targetOf(side === 'right' ? 'left' : 'right') };
    room.send('pointerdown', finger(1, 1000 * x, 2000 - 1000 * y + below));
    for (let k = 1; k <= 10; k++) room.send('pointermove', finger(1, 1000 * x - 5 * k, 2000 - 1000 * y + below));
    expect(hands.targetOf(side).x).toBeLessThan(x - 0.03);
    expect(hands.targetOf(side === 'right' ? 'left' : 'right')).toEqual(other);
  });

  it('do nothing by a tap far from both hands', () => {
    room.send('pointerdown', finger(1, 0, 1800));
    room.send('pointerup', finger(1, 0, 1800, 120));
    expect(hands.take(0)).toEqual([]);
  });

  it('do not change the grip when the system takes the finger away', () => {
    room.send('pointerdown', finger(1, 260, 760));
    room.send('pointercancel', finger(1, 260, 760, 60));
    expect(hands.take(0)).toEqual([]);
    expect(hands.mode.context.fingers).toEqual({});
  });
});
