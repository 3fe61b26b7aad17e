import { cos, sin } from '../../base/portableMath.ts';
import { settleBubbles } from './air.ts';
import { bubbleHalfM } from './bubble.ts';
import { NEEDED_LAYER_M } from './gelFlow.ts';
import { faceAreaM2, footprint, type HeadShape } from './headShape.ts';
import type { SheathInside } from './inside.ts';

/** Steepest entry that counts as one with the face (radians, 60 degrees): beyond it a flank goes in first. */
const STEEPEST = 1.0471975511965976;

/**
 * Room between face and film when the face has come down on the closed end, in millilitres.
 *
 * The film lies across the pocket and the lower edge of the face rests on it, so under a face tilted by θ there is a wedge besides the
 * gap that creases leave. With the face as a rectangle of its width w and its area A the wedge is A (w / 2) tan θ, by plane geometry.
 * @param tilt angle between the axes of probe and pocket in radians
 */
export function roomUnderFaceMl(head: HeadShape, tilt: number): number {
  return faceAreaM2(head) * (NEEDED_LAYER_M + 0.5 * widthM(head) * tangent(tilt)) * 1e6;
}

/**
 * The face goes down into the gel, and whatever of the room under it gel does not fill is air: too little gel, or an entry so tilted
 * that the gel does not reach the raised edge. The gel is pushed to the lower edge, fully so once the edges differ by more than the
 * gap of creases, and lies in the middle under an upright face; the film then closes round the edges with the air inside them.
 * @param tilt as for `roomUnderFaceMl`; positive if the edge at positive arc coordinates is the raised one
 */
export function takeAirIn(inside: SheathInside, head: HeadShape, tilt: number): SheathInside {
  const air = roomUnderFaceMl(head, tilt) - inside.gelMl;
  if (air <= 0) return inside;
  const lean = Math.min(1, (widthM(head) * tangent(tilt)) / NEEDED_LAYER_M) * (tilt < 0 ? -1 : 1);
  const edges = ([-1, 1] as const).map((flank) => ({ flank, ml: 0.5 * air * (1 + flank * lean) })).filter(({ ml }) => ml > 0);
  const [, edgeM] = footprint(head);
  const caught = edges.map(({ flank, ml }) => {
    const off = Math.max(0, edgeM - bubbleHalfM({ sM: 0, ml }, inside, head));
    return { ml, sM: flank < 0 ? 0 - off : off };
  });
  return settleBubbles({ ...inside, bubbles: [...inside.bubbles, ...caught] }, head);
}

function widthM(head: HeadShape): number {
  const [from, to] = footprint(head);
  return to - from;
}

function tangent(tilt: number): number {
  const angle = Math.min(STEEPEST, Math.abs(tilt));
  return sin(angle) / cos(angle);
}
