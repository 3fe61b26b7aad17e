import { describe, expect, it } from 'vitest';
import { isFreeFor } from '../../../../src/core/room/assistant/isFreeFor.ts';

describe('An assistant is free for a request', () => {
  it.each([
    ['tieBack', 'waiting', true],
    ['tieBack', 'stopped', true],
    ['tieBack', 'tyingGown', false],
    ['takeCord', 'holdingCord', false],
    ['lower', 'bringingProbe', false],
    ['lower', 'overMouth', true],
    ['lower', 'lowering', false],
    ['letGo', 'overMouth', true],
    ['pullTail', 'supportingCord', true],
    ['pullTail', 'pullingTail', false],
    ['bringProbe', 'wipingFace', false],
  ] as const)('%s while %s: %s', (request, doing, free) => {
    expect(isFreeFor(request, doing)).toBe(free);
  });
});
