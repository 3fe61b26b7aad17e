import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { HandsControl } from '../../../src/app/input/HandsControl.ts';
import { KeyboardDriver, type PageOrder } from '../../../src/app/input/KeyboardDriver.ts';
import { keyMeaning } from '../../../src/app/input/keyMap.ts';
import { asElement, FakeElement } from '../support/FakeElement.ts';
import { restingHands } from '../support/hands.ts';

const LETTERS = [...'QWERASDFYUIOHJKL'].map((letter) => `Key${letter}`);

describe('keys', () => {
  let hands: HandsControl;
  let room: FakeElement;
  let keyboard: KeyboardDriver;
  let orders: PageOrder[];
  const press = (code: string, more: Record<string, unknown> = {}) => room.send('keydown', { code, key: '', ...more });
  beforeEach(() => {
    vi.stubGlobal('window', new FakeElement());
    hands = restingHands();
    room = new FakeElement();
    orders = [];
    keyboard = new KeyboardDriver(hands, (order) => orders.push(order));
    keyboard.attach(asElement(room), new AbortController().signal);
  });

  it('have one meaning each in the two clusters', () => {
    const meanings = LETTERS.map((code) => JSON.stringify(keyMeaning(code, '')));
    expect(new Set(meanings).size).toBe(LETTERS.length);
    expect(meanings).not.toContain('null');
  });

  it('move each hand by its own cluster, both at once', () => {
    press('KeyD');
    press('KeyJ');
    for (let k = 0; k < 60; k++) keyboard.tick(1 / 60);
    expect(hands.targetOf('right').x).toBeGreaterThan(-0.25 + 0.2);
    expect(hands.targetOf('left').x).toBeLessThan(0.25 - 0.2);
    expect(hands.mode.context.leader).toBe('keyboard');
  });

  it('begin slowly, so that a tap moves a few millimetres', () => {
    press('KeyW');
    for (let k = 0; k < 4; k++) keyboard.tick(1 / 60);
    room.send('keyup', { code: 'KeyW' });
    keyboard.tick(1);
    const moved = hands.targetOf('right').y - 1.25;
    expect(moved).toBeGreaterThan(0.002);
    expect(moved).toBeLessThan(0.006);
  });

  it('stay slow with Shift', () => {
    press('KeyW', { shiftKey: true });
    for (let k = 0; k < 60; k++) keyboard.tick(1 / 60);
    expect(hands.targetOf('right').y - 1.25).toBeCloseTo(0.03, 3);
  });

  it('let the left cluster serve the active hand while the mouse leads', () => {
    hands.choose('left');
    press('KeyR');
    expect(hands.take(0)).toEqual([{ type: 'hand.grip', hand: 'left' }]);
    hands.led('keyboard');
    press('KeyF');
    expect(hands.take(0)).toEqual([{ type: 'hand.use', hand: 'right', on: true }]);
  });

  it('end a use when the key comes up or the room loses the focus', () => {
    press('KeyH');
    room.send('blur');
    expect(hands.take(0).map((command) => command.type === 'hand.use' && command.on)).toEqual([true, false]);
  });

  it('change hands by Tab and leave Shift with Tab to the page', () => {
    press('Tab');
    expect(hands.active).toBe('left');
    press('Tab', { shiftKey: true });
    expect(hands.active).toBe('left');
  });

  it('hand the rest to the page, once for each press', () => {
    press('KeyB');
    press('KeyB', { repeat: true });
    press('Digit2');
    press('Digit8');
    press('Slash', { key: '?' });
    expect(orders).toEqual([{ kind: 'notice' }, { kind: 'remedy', remedy: 'changeGlove', digit: 2 }, { kind: 'ask', request: 'wipeFace' }, { kind: 'help' }]);
  });

  it('leave combinations to the browser', () => {
    press('KeyR', { ctrlKey: true });
    press('KeyD', { metaKey: true });
    expect(hands.take(0)).toEqual([]);
  });
});
