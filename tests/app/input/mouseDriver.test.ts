import { beforeEach, describe, expect, it } from 'vitest';
import type { HandsControl } from '../../../src/app/input/HandsControl.ts';
import { MouseDriver } from '../../../src/app/input/MouseDriver.ts';
import { asElement, FakeElement } from '../support/FakeElement.ts';
import { restingHands } from '../support/hands.ts';

/** One pixel is a millimetre; the origin is the upper left corner, one metre above the floor. */
const toRoom = (x: number, y: number) => ({ x: x / 1000, y: 2 - y / 1000 });
const mouse = (x: number, y: number, more: Record<string, unknown> = {}) => ({ pointerType: 'mouse', pointerId: 1, clientX: x, clientY: y, movementX: 0, movementY: 0, button: 0, ...more });

describe('the mouse', () => {
  let hands: HandsControl;
  let room: FakeElement;
  let zoomed: number[];
  beforeEach(() => {
    hands = restingHands();
    room = new FakeElement();
    zoomed = [];
    const view = { toRoom, handAt: (side: 'left' | 'right') => hands.targetOf(side), inRealTime: () => true, zoom: (factor: number) => zoomed.push(factor), pan: () => undefined };
    new MouseDriver(hands, view).attach(asElement(room), new AbortController().signal);
  });

  it('leads the active hand by its movement, without a jump', () => {
    room.send('pointermove', mouse(500, 500));
    expect(hands.targetOf('right')).toMatchObject({ x: -0.25, y: 1.25 });
    room.send('pointermove', mouse(510, 500, { movementX: 10 }));
    expect(hands.targetOf('right').x).toBeGreaterThan(-0.25 + 0.009);
    expect(hands.targetOf('left')).toMatchObject({ x: 0.25, y: 1.25 });
  });

  it('leaves the hand where it was when it is flicked away', () => {
    room.send('pointermove', mouse(500, 500));
    for (let k = 1; k <= 12; k++) room.send('pointermove', mouse(500 + 40 * k, 500, { movementX: 40, timeStamp: 8 * k }));
    expect(hands.targetOf('right').x).toBeCloseTo(-0.25, 6);
    for (let k = 1; k <= 20; k++) room.send('pointermove', mouse(980 + 2 * k, 500, { movementX: 2, timeStamp: 200 + 16 * k }));
    expect(hands.targetOf('right').x).toBeGreaterThan(-0.25 + 0.02);
    expect(hands.targetOf('right').x).toBeLessThan(-0.25 + 0.06);
  });

  it('starts anew where it comes back into the room', () => {
    room.send('pointermove', mouse(500, 500));
    room.send('pointerleave', mouse(0, 0));
    room.send('pointermove', mouse(100, 900, { movementX: 400 }));
    expect(hands.targetOf('right')).toMatchObject({ x: -0.25, y: 1.25 });
  });

  it('changes hands by a press on the other hand, without a grip', () => {
    room.send('pointerdown', mouse(250, 750));
    room.send('pointerup', mouse(250, 750, { timeStamp: 80 }));
    expect(hands.active).toBe('left');
    expect(hands.take(0)).toEqual([]);
  });

  it('grips by a click and uses by the right button', () => {
    room.send('pointerdown', mouse(500, 500));
    room.send('pointerup', mouse(500, 500, { timeStamp: 80 }));
    room.send('pointerdown', mouse(500, 500, { button: 2 }));
    room.send('pointerup', mouse(500, 500, { button: 2 }));
    expect(hands.take(0)).toEqual([
      { type: 'hand.grip', hand: 'right' },
      { type: 'hand.use', hand: 'right', on: true },
      { type: 'hand.use', hand: 'right', on: false },
    ]);
  });

  it('turns the wrist by the wheel, and zooms with Ctrl', () => {
    room.send('wheel', { deltaY: -100, deltaMode: 0 });
    expect(hands.take(0)).toEqual([{ type: 'hand.turn', hand: 'right', angleDeg: -14 }]);
    room.send('wheel', { deltaY: -100, deltaMode: 0, ctrlKey: true });
    expect(zoomed[0]).toBeGreaterThan(1);
  });

  it('takes over from the keys only when it is really moved', () => {
    hands.led('keyboard');
    room.send('pointermove', mouse(500, 500, { movementX: 2 }));
    expect(hands.mode.context.leader).toBe('keyboard');
    room.send('pointermove', mouse(510, 500, { movementX: 10 }));
    expect(hands.mode.context.leader).toBe('mouse');
  });
});
