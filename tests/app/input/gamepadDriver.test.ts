import { beforeEach, describe, expect, it } from 'vitest';
import { GamepadDriver } from '../../../src/app/input/GamepadDriver.ts';
import type { HandsControl } from '../../../src/app/input/HandsControl.ts';
import type { PageOrder } from '../../../src/app/input/KeyboardDriver.ts';
import { restingHands } from '../support/hands.ts';

describe('a pad', () => {
  let hands: HandsControl;
  let orders: PageOrder[];
  let axes: number[];
  let pressed: Set<number>;
  let driver: GamepadDriver;
  beforeEach(() => {
    hands = restingHands();
    orders = [];
    axes = [0, 0, 0, 0];
    pressed = new Set();
    const pad = () => ({ connected: true, axes, buttons: Array.from({ length: 17 }, (_, k) => ({ pressed: pressed.has(k), value: 0 })) }) as unknown as Gamepad;
    driver = new GamepadDriver(hands, (order) => orders.push(order), () => [null, pad()]);
  });

  it('leads the hand on its side of the screen', () => {
    axes = [1, 0, 0, -1];
    driver.tick(0.1);
    expect(hands.targetOf('right').x).toBeCloseTo(-0.25 + 0.055, 6);
    expect(hands.targetOf('left').y).toBeCloseTo(1.25 + 0.055, 6);
  });

  it('does not drift when the sticks rest a little off the middle', () => {
    axes = [0.1, -0.1, 0.05, 0.12];
    driver.tick(1);
    expect(hands.take(0)).toEqual([]);
    expect(hands.mode.context.leader).toBe('mouse');
  });

  it('closes once for each pull of the trigger', () => {
    pressed.add(6);
    driver.tick(0.01);
    driver.tick(0.01);
    expect(hands.take(0)).toEqual([{ type: 'hand.grip', hand: 'right' }]);
  });

  it('turns the wrist while a bumper is held', () => {
    pressed.add(5);
    axes = [0, 0, 0, -1];
    driver.tick(0.1);
    expect(hands.take(0)).toEqual([{ type: 'hand.turn', hand: 'left', angleDeg: -13 }]);
  });

  it('says that sterility was broken', () => {
    pressed.add(1);
    driver.tick(0.01);
    expect(orders).toEqual([{ kind: 'notice' }]);
  });
});
