import { describe, expect, it } from 'vitest';
import { HandTargets } from '../../../src/app/input/HandTargets.ts';

const start = { left: { x: 0.25, y: 1.25, angleDeg: -20 }, right: { x: -0.25, y: 1.25, angleDeg: -20.4 } };

describe('targets of the hands', () => {
  it('say nothing while nothing changed', () => {
    const targets = new HandTargets(start);
    expect([0, 1, 2, 3].flatMap((step) => targets.commandsFor(step))).toEqual([]);
  });

  it('send whole millimetres, on even steps only', () => {
    const targets = new HandTargets(start);
    targets.moveTo('right', -0.2004, 1.3006);
    expect(targets.commandsFor(1)).toEqual([]);
    expect(targets.commandsFor(2)).toEqual([{ type: 'hand.move', hand: 'right', xMm: -200, yMm: 1301 }]);
    expect(targets.commandsFor(4)).toEqual([]);
  });

  it('do not send a movement of less than a millimetre', () => {
    const targets = new HandTargets(start);
    targets.moveTo('left', start.left.x + 0.0003, start.left.y);
    expect(targets.commandsFor(0)).toEqual([]);
  });

  it('gather small turns until they make a degree', () => {
    const targets = new HandTargets(start);
    targets.turnBy('left', 0.4);
    expect(targets.commandsFor(0)).toEqual([]);
    targets.turnBy('left', 0.4);
    expect(targets.commandsFor(2)).toEqual([{ type: 'hand.turn', hand: 'left', angleDeg: -19 }]);
  });

  it('stay within what a recording may hold', () => {
    const targets = new HandTargets(start);
    targets.moveTo('left', 99, -99);
    targets.turnBy('left', 999);
    expect(targets.commandsFor(0)).toEqual([
      { type: 'hand.move', hand: 'left', xMm: 2200, yMm: 50 },
      { type: 'hand.turn', hand: 'left', angleDeg: 120 },
    ]);
  });
});
