import { length } from '../../base/portableMath.ts';
import type { HeadShape } from './headShape.ts';

/**
 * Arc coordinate on the positive flank (m) of the place at that distance from the face along the axis of probe and cord (m, at least
 * 0): half the face, the edges of the flank as far as they go, and the cord.
 */
export function arcFromAlong({ knots, lengthM }: HeadShape, alongM: number): number {
  let arc = knots[0]!.halfWidthM;
  for (let k = 1; k < knots.length; k++) {
    const [a, b] = [knots[k - 1]!, knots[k]!];
    const part = Math.min(1, (alongM - a.alongM) / (b.alongM - a.alongM));
    if (part <= 0) return arc;
    arc += part * edgeM(a, b);
  }
  return arc + Math.max(0, alongM - lengthM);
}

/** Distance from the face along the axis (m) of a place given by its arc coordinate on either flank (m); 0 on the face. */
export function alongFromArc({ knots, lengthM }: HeadShape, sM: number): number {
  let left = Math.abs(sM) - knots[0]!.halfWidthM;
  if (left <= 0) return 0;
  for (let k = 1; k < knots.length; k++) {
    const [a, b] = [knots[k - 1]!, knots[k]!];
    const edge = edgeM(a, b);
    if (left <= edge) return a.alongM + ((b.alongM - a.alongM) * left) / edge;
    left -= edge;
  }
  return lengthM + left;
}

type End = HeadShape['knots'][number];
const edgeM = (a: End, b: End): number => length(b.alongM - a.alongM, b.halfWidthM - a.halfWidthM);
