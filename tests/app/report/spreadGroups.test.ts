import { describe, expect, it } from 'vitest';
import { groupWords, spreadGroups } from '../../../src/app/parts/spreadGroups.ts';

const entry = (surface: string, step: number, from: string | null) => ({ surface, step, from, depth: 0, touch: null });

describe('links of a chain', () => {
  it('are one where parts of a thing were reached together by the same way', () => {
    const groups = spreadGroups({
      spread: [entry('glove.left#1:fingers', 0, null), entry('glove.left#1:palm', 30, null), entry('probe#1:sheath', 40, 'glove.left#1:palm'), entry('glove.left#1:cuff', 500, null)],
    });
    expect(groups.map(({ surfaces, from }) => [surfaces.length, from])).toEqual([
      [2, null],
      [1, 'glove.left#1:palm'],
      [1, null],
    ]);
  });

  it('name the thing once', () => {
    const words = (id: string): string => `left glove, ${id}`;
    expect(groupWords(['cuff'], words)).toBe('left glove, cuff');
    expect(groupWords(['cuff', 'palm', 'fingers'], words)).toBe('left glove: cuff, palm and fingers');
    expect(groupWords(['a', 'b', 'c', 'd', 'e'], words)).toBe('left glove: a, b, c and 2 more');
  });
});
