import { PI } from '../../base/portableMath.ts';
import { ballRadiusM } from './ball.ts';
import { alongFromArc } from './fromFace.ts';
import { FLANK_GAP_M, gelLayer, NEEDED_LAYER_M } from './gelFlow.ts';
import { GEL } from './gelRheology.ts';
import { sectionAt, type HeadShape } from './headShape.ts';
import type { Bubble, SheathInside } from './inside.ts';

const M3_PER_ML = 1e-6;

/** Distance between probe and film at an arc coordinate, in metres: the layer of gel on the face, creases on the flanks. */
export function gapM(sM: number, inside: SheathInside, head: HeadShape): number {
  return alongFromArc(head, sM) > 0 ? FLANK_GAP_M : Math.max(NEEDED_LAYER_M, gelLayer(inside, head).layerM);
}

/**
 * Half of what a bubble covers of the outline, in metres. Geometry of a volume V in a gap t on a strip 2 d deep: a ball if it fits in the
 * gap, else a disc of radius √(V / πt), else a strip of length V / 2dt. The larger of neighbouring forms, so that none jumps.
 */
export function bubbleHalfM({ sM, ml }: Bubble, inside: SheathInside, head: HeadShape): number {
  const volume = ml * M3_PER_ML;
  const gap = gapM(sM, inside, head);
  const depth = sectionAt(head, alongFromArc(head, sM)).halfDepthM;
  if (volume <= (PI / 6) * gap * gap * gap) return ballRadiusM(volume);
  const disc = Math.max(gap / 2, Math.sqrt(volume / (PI * gap)));
  return Math.max(Math.min(depth, disc), volume / (4 * depth * gap));
}

/**
 * Pressure (Pa) that moves a bubble along its gap: 2 τy L / t over its length L, the balance of a plug of yield-stress fluid between
 * two walls (textbook statics); 0 where there is no gel to shear.
 */
export function movingPressurePa(bubble: Bubble, inside: SheathInside, head: HeadShape): number {
  if (inside.gelMl === 0) return 0;
  return (4 * GEL.yieldPa * bubbleHalfM(bubble, inside, head)) / gapM(bubble.sM, inside, head);
}
