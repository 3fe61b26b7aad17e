import { ballRadiusM } from './ball.ts';
import { CLINGING_M, GEL_WEIGHT, plugSpeed } from './gelRheology.ts';
import { faceAreaM2, girthM, sectionAt, type HeadShape } from './headShape.ts';
import type { SheathInside } from './inside.ts';

const M3_PER_ML = 1e-6;
/** Gap (m) between face and film that must be filled for sound to pass everywhere: creases of the film and the curve of the lens. */
export const NEEDED_LAYER_M = 0.001;
/** Distance (m) that creases keep the drawn film from the flanks. */
export const FLANK_GAP_M = 0.001;
/** Height (m) up the flanks beyond which gel comes under a band behind the head and on to the handle: there is too much of it. */
const CREEP_LIMIT_M = 0.03;
/** A lump this near to the closed end has arrived (m). */
const ARRIVED_M = 0.005;

/**
 * Squeezes gel into the pocket.
 * @param ml volume in millilitres, positive
 * @param toEndM how far from the closed end the nozzle is, in metres
 */
export function squeezeGelIn(inside: SheathInside, ml: number, toEndM: number): SheathInside {
  return collect({ ...inside, lumps: [...inside.lumps, { toEndM, ml }] });
}

/**
 * Gel runs down a pocket that hangs, as the middle of a flow between two films, for `dt` seconds. A lump is as thick as a ball of its
 * volume; one too small to shear by its own weight stays where it is and must be stroked down.
 * @param down cosine of the angle between the pocket, mouth to closed end, and the vertical; negative when the end is up
 */
export function runGel(inside: SheathInside, down: number, dt: number): SheathInside {
  if (inside.lumps.length === 0 || down <= 0) return inside;
  return collect({ ...inside, lumps: inside.lumps.map((lump) => ({ ...lump, toEndM: lump.toEndM - plugSpeed(ballRadiusM(lump.ml * M3_PER_ML), GEL_WEIGHT * down) * dt })) });
}

/** Gel that is on its way down such a pocket (mL): lumps that stay where they are do not count. */
export const runningMl = ({ lumps }: SheathInside, down: number): number =>
  lumps.reduce((sum, { ml }) => sum + (down > 0 && plugSpeed(ballRadiusM(ml * M3_PER_ML), GEL_WEIGHT * down) > 0 ? ml : 0), 0);

/** Fingers close the pocket at `fromM` from its closed end and draw along it to `toM`: lumps in their way go with them. */
export function strokeGel(inside: SheathInside, fromM: number, toM: number): SheathInside {
  const [low, high] = [Math.min(fromM, toM), Math.max(fromM, toM)];
  return collect({ ...inside, lumps: inside.lumps.map((lump) => (lump.toEndM >= low && lump.toEndM <= high ? { ...lump, toEndM: toM } : lump)) });
}

/** Lumps that have arrived join the gel at the end. */
function collect(inside: SheathInside): SheathInside {
  const arrived = inside.lumps.filter(({ toEndM }) => toEndM <= ARRIVED_M);
  if (arrived.length === 0) return inside;
  return { ...inside, gelMl: arrived.reduce((sum, { ml }) => sum + ml, inside.gelMl), lumps: inside.lumps.filter(({ toEndM }) => toEndM > ARRIVED_M) };
}

/** How gel lies once the face is in. */
export interface GelLayer {
  /** Thickness between face and film if spread evenly, at most what clings, in metres: volume over area. */
  readonly layerM: number;
  /** Part of the face that the gel can wet, 0 to 1. */
  readonly wetted: number;
  /** How far gel has crept up the flanks from the face, in metres. */
  readonly creepM: number;
  readonly amount: 'tooLittle' | 'right' | 'tooMuch';
}

/**
 * The layer between face and film: it grows with the volume to what clings to a wall; the rest creeps up round the flanks. 'right' is
 * 0.6 to 6 mL for the usual probe; guides of the trade say 3 to 5 mL (looked up in one vendor's).
 */
export function gelLayer({ gelMl }: Pick<SheathInside, 'gelMl'>, head: HeadShape): GelLayer {
  const area = faceAreaM2(head);
  const volume = gelMl * M3_PER_ML;
  const layerM = Math.min(CLINGING_M, volume / area);
  const wetted = Math.min(1, volume / (area * NEEDED_LAYER_M));
  const creepM = Math.max(0, volume - area * CLINGING_M) / (girthM(sectionAt(head, 0)) * FLANK_GAP_M);
  return { layerM, wetted, creepM, amount: wetted < 1 ? 'tooLittle' : creepM > CREEP_LIMIT_M ? 'tooMuch' : 'right' };
}
