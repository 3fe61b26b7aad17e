import type { StrandPicture } from '../../../core/room/picture.ts';
import type { Point } from '../pen/curves.ts';

/** Nodes of a strand in centimetres of the room. */
export function strandLine(strand: Pick<StrandPicture, 'x' | 'y'>): Point[] {
  return Array.from(strand.x, (x, i): Point => [x * 100, strand.y[i]! * 100]);
}
