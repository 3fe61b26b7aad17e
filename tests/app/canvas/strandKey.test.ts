import { describe, expect, it } from 'vitest';
import type { Frame } from '../../../src/app/canvas/frame.ts';
import { strandKey } from '../../../src/app/canvas/strands/keptStrands.ts';
import type { StrandPicture, SurfaceMark } from '../../../src/core/room/picture.ts';

const strand: StrandPicture = { id: 'cord', x: Float64Array.of(0, 1), y: Float64Array.of(0, 0), surfaces: ['a'], glued: [] };

const frameWith = (mark: SurfaceMark): Frame =>
  ({ camera: { toScreen: [1, 0, 0, -1, 0, 0], pxPerM: 1 }, pen: { density: 1 }, shown: true, markOf: () => mark, picture: { marks: new Map([['a', mark]]) } }) as unknown as Frame;

describe('The kept picture of a strand', () => {
  it('is another one when only the marks of a strand at rest change', () => {
    const clean = frameWith('sterile');
    expect(strandKey(strand, clean)).toBe(strandKey(strand, clean));
    expect(strandKey(strand, frameWith('became'))).not.toBe(strandKey(strand, clean));
  });
});
