import { describe, expect, it } from 'vitest';
import { blendShapes } from '../../../src/app/canvas/hand/blendShapes.ts';
import { placeHand } from '../../../src/app/canvas/hand/placeHand.ts';
import { FINGERS, HAND_SHAPES } from '../../../src/app/canvas/hand/poses.ts';
import { applyTo } from '../../../src/app/canvas/pen/affine.ts';
import { HAND } from '../../../src/core/room/handShape.ts';

const shapes = Object.values(HAND_SHAPES);

describe('hands as data', () => {
  it('have the same points in every pose, so that each blends into each', () => {
    for (const shape of shapes) {
      expect(shape.palm.ops).toEqual(HAND_SHAPES.open.palm.ops);
      for (const finger of FINGERS) expect(shape.fingers[finger]).toHaveLength(4);
      expect(new Set(shape.order.map(([finger]) => finger)).size).toBe(FINGERS.length);
    }
  });

  it('blend from one pose to the other without a jump', () => {
    const { open, pinch } = HAND_SHAPES;
    expect(blendShapes(open, pinch, 0)).toBe(open);
    expect(blendShapes(open, pinch, 1)).toBe(pinch);
    const half = blendShapes(open, pinch, 0.5);
    expect(half.fingers.index[3]![0]).toBeCloseTo((open.fingers.index[3]![0] + pinch.fingers.index[3]![0]) / 2);
    expect(half.palm.xy[7]).toBeCloseTo((open.palm.xy[7]! + pinch.palm.xy[7]!) / 2);
  });

  it('hold things where the fingertips of the room hold them', () => {
    for (const side of ['left', 'right'] as const) {
      for (const { grip } of shapes) {
        const [c, s] = [side === 'left' ? -0.8 : 0.8, 0.6];
        const [x, y] = applyTo(placeHand({ x: 0.1, y: 1.2, c, s, side, gripAlong: HAND.gripU }, grip, 0.19), ...grip);
        expect(x).toBeCloseTo(0.1 + c * HAND.gripU, 9);
        expect(y).toBeCloseTo(1.2 + s * HAND.gripU, 9);
      }
    }
  });

  it('are mirror images: the thumb is up on both sides', () => {
    const thumb = HAND_SHAPES.open.fingers.thumb[3]!;
    const right = applyTo(placeHand({ x: 0, y: 0, c: 1, s: 0, side: 'right', gripAlong: HAND.gripU }, [170, 0], 0.19), thumb[0], thumb[1]);
    const left = applyTo(placeHand({ x: 0, y: 0, c: -1, s: 0, side: 'left', gripAlong: HAND.gripU }, [170, 0], 0.19), thumb[0], thumb[1]);
    expect(right[1]).toBeGreaterThan(0);
    expect(left[0]).toBeCloseTo(-right[0], 9);
    expect(left[1]).toBeCloseTo(right[1], 9);
  });
});
