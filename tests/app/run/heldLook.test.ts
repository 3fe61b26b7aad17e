import { describe, expect, it } from 'vitest';
import { heldLook } from '../../../src/app/run/heldLook.ts';
import type { ItemPicture, ProbeDress, RoomPicture } from '../../../src/core/room/picture.ts';

const thing = (kind: ItemPicture['kind'], given: Partial<ItemPicture> = {}): ItemPicture => ({ id: kind, kind, x: 0, y: 0, c: 1, s: 0, surfaces: [], heldBy: 'left', gone: false, used: 0, dress: null, ...given });
const look = (item: ItemPicture): string => heldLook({ hands: { left: { pose: 'pinch', holds: item.id }, right: { pose: 'open', holds: null } }, items: [item] } as unknown as RoomPicture, 'left');
const dressed = (dress: Partial<ProbeDress> = {}): string => look(thing('probe', { dress: { bands: [], bubbles: [], torn: false, ...dress } }));

describe('What the drawing on a hand’s card depends on', () => {
  it('stays while the thing only moves', () => expect(look(thing('probe', { x: 1, c: 0, s: 1 }))).toBe(look(thing('probe'))));

  it('changes with film, bands, air, a tear and what has been used', () => {
    const looks = [
      look(thing('probe')), dressed(), dressed({ bands: [0.03] }), dressed({ bands: [0.03, 0.11] }), dressed({ torn: true }),
      dressed({ bubbles: [{ at: 0, lengthM: 0.01 }] }), dressed({ bubbles: [{ at: 0.01, lengthM: 0.01 }] }), dressed({ bubbles: [{ at: 0, lengthM: 0.02 }] }),
      look(thing('gelPacket')), look(thing('gelPacket', { used: 0.5 })),
    ];
    expect(new Set(looks).size).toBe(looks.length);
  });
});
