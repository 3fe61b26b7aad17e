import { describe, expect, it } from 'vitest';
import { DRAWING_ORDER, FIELD_LAYERS, MOVING_LAYERS, STILL_GROUPS } from '../../../src/app/canvas/drawingOrder.ts';

const place = (name: (typeof DRAWING_ORDER)[number]): number => DRAWING_ORDER.indexOf(name);

describe('the drawing order', () => {
  it('is that of the room: the cord over the sleeves and under the hands', () => {
    const back = ['wall', 'pole', 'operatorBody', 'bed', 'patient', 'drapeFar', 'rails', 'drapeEdge', 'sleeves', 'neckband', 'cord', 'hands', 'labels'] as const;
    expect(back.map(place)).toEqual(back.map(place).sort((a, b) => a - b));
  });

  it('puts probe and cord into the opened sheath, hands before it, and its fold over the fingers', () => {
    const back = ['sleeves', 'pocketFar', 'hangingProbe', 'cord', 'pocketNear', 'assistantArms', 'hands', 'foldOverFingers', 'labels'] as const;
    expect(back.map(place)).toEqual(back.map(place).sort((a, b) => a - b));
  });

  it('is kept by the groups: kept layers come first, and together they are all layers once', () => {
    const grouped = [...Object.values(STILL_GROUPS).flat(), ...FIELD_LAYERS, ...MOVING_LAYERS];
    expect(grouped).toEqual([...DRAWING_ORDER]);
  });
});
