import { describe, expect, it } from 'vitest';
import { isBehindOperator } from '../../../src/app/canvas/art/assistantAtWork.ts';
import type { Frame } from '../../../src/app/canvas/frame.ts';
import { paintHolds } from '../../../src/app/canvas/holds/paintHolds.ts';
import { holdLabels } from '../../../src/app/canvas/labels/holdLabels.ts';
import { Lens } from '../../../src/app/canvas/lens.ts';
import { Pen } from '../../../src/app/canvas/pen/pen.ts';
import type { HoldAct, NextHold } from '../../../src/core/procedure/nextHold.ts';
import type { PlacedHold } from '../../../src/core/room/placedHold.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';

const placed = (act: HoldAct, place: NextHold['place'], at: readonly [number, number], to: readonly [number, number] | null = null): PlacedHold => ({ hold: { hand: null, act, place, of: null, thing: null }, at, to });

interface Arc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly whole: boolean;
}

/** What is drawn of the holds on a screen with 1000 pixels for each metre, the room's origin in its upper left corner. */
function drawn(...holds: PlacedHold[]): { arcs: Arc[]; lines: number } {
  const arcs: Arc[] = [];
  let lines = 0;
  const arc = (x: number, y: number, radius: number, from: number, to: number): void => void arcs.push({ x, y, radius, whole: to - from > 6 });
  const idle = (): void => {};
  const ctx = { arc, lineTo: () => void lines++, save: idle, restore: idle, scale: idle, beginPath: idle, moveTo: idle, stroke: idle, fill: idle } as unknown as CanvasRenderingContext2D;
  const camera = new Lens({ toScreen: [1000, 0, 0, -1000, 0, 0], widthPx: 1000, heightPx: 1000 });
  paintHolds({ holds, camera, pen: Pen.over(ctx, camera.toScreen, 1) } as unknown as Frame);
  return { arcs, lines };
}

describe('The marks of the next holds', () => {
  it('are two arcs round a dot where a hand grips, in white and then in ink', () => {
    const { arcs } = drawn(placed('grip', 'gownNeck', [0.1, -0.2]));
    expect(arcs.every(({ x, y }) => x === 100 && y === 200)).toBe(true);
    expect(arcs.map(({ whole }) => whole)).toEqual([false, false, true, false, false, true]);
  });

  it('are a ring where a hand goes, and a grip there as well when the other hand grips there', () => {
    const ring = drawn(placed('bring', 'fingertips', [0.1, -0.2]));
    expect(ring.arcs.map(({ whole }) => whole)).toEqual([true, true]);
    const both = drawn(placed('bring', 'fingertips', [0.1, -0.2]), placed('grip', 'fingertips', [0.1, -0.2]));
    expect(both.arcs).toHaveLength(2 + 6);
    // Two signs of one kind at one place are one.
    expect(drawn(placed('stay', 'together', [0.1, -0.2]), placed('stay', 'together', [0.1, -0.2]))).toEqual(ring);
  });

  it('have dots and an end where the hold goes along a way, and none where that is hardly one', () => {
    const way = drawn(placed('push', 'upSleeve', [0.1, -0.3], [0.1, -0.1]));
    const dots = way.arcs.filter(({ radius }) => radius < 5);
    expect(dots.length).toBeGreaterThan(20);
    expect(dots.every(({ x, y }) => x === 100 && y > 100 && y < 300)).toBe(true);
    expect(way.lines).toBe(4);
    expect(drawn(placed('push', 'upSleeve', [0.1, -0.3], [0.1, -0.29])).lines).toBe(0);
  });

  it('are named once each', () => {
    const names = holdLabels([placed('stay', 'together', [0, 1]), placed('stay', 'together', [0.2, 1]), placed('grip', 'gownNeck', [0, 0])]).map(({ words, x }) => [words, x]);
    expect(names).toEqual([['wait here', 0], ['inner neck', 0]]);
  });
});

describe('The assistant at the gown', () => {
  const isBehind = (operatorX: number, assistantX: number, gown: unknown = {}, waits = false): boolean =>
    isBehindOperator({ assistant: { torsoX: assistantX, waits }, gown, torsoX: operatorX, scenario: { room: { rails: { xM: 0.49 } } } } as unknown as RoomPicture);

  it.each([
    ['ties from behind', isBehind(-1.26, -0.96), true],
    ['passes behind on the way to the gown table', isBehind(-1.26, -1.3), true],
    ['pulls a glove off, or takes the card, from beside', isBehind(-1.26, -0.5), false],
    ['is before the operator at the bed, where the bed is before both', isBehind(0, 0.3), false],
    ['stands at its place', isBehind(-1.26, -1.1, {}, true), false],
    ['helps where no gown is put on', isBehind(-1.26, -1.1, null), false],
  ])('%s', (_, found, expected) => {
    expect(found).toBe(expected);
  });
});
