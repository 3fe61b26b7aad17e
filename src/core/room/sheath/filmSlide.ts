import { dragAir } from './air.ts';
import { filmHold, frictionAt, tensionN, wetAreaM2 } from './bands.ts';
import { GEL, shearRate } from './gelRheology.ts';
import { faceAreaM2, type HeadShape } from './headShape.ts';
import type { SheathInside } from './inside.ts';

/** Film in the hand goes no faster than a hand that works with care (m/s): 0.1 to 0.4. */
const FASTEST_MPS = 0.4;

/** Gel left under film that is drawn over the probe, in metres: a tenth of the gap of creases (choice). */
const SLIDING_GAP_M = 1e-4;

/** A pull at the film along the probe. */
export interface FilmPull {
  /** Where, in metres from the face along probe and cord. */
  readonly alongM: number;
  /** How hard, in newtons, averaged over about 0.1 s. */
  readonly pullN: number;
  readonly toward: 'face' | 'cord';
  /** Force of the fingers that press the film on to the probe, on each flank, in newtons; 0 where film alone is pulled. */
  readonly gripN: number;
}

/**
 * Speed at which film slides over the probe under a pull (m/s): 0 up to what bands, gel and the fingers' own pressure (Coulomb, on both
 * flanks) hold. What is beyond shears the gel between film and probe at the rate that its stress gives, over the wet area or at least
 * the face's.
 */
export function slideSpeed(inside: SheathInside, head: HeadShape, { alongM, pullN, toward, gripN }: FilmPull): number {
  const beyond = pullN - filmHold(inside, head, alongM, toward) - 2 * gripN * frictionAt(alongM, inside, head);
  if (beyond <= 0) return 0;
  const stress = GEL.yieldPa + beyond / Math.max(faceAreaM2(head), wetAreaM2(inside, head));
  return Math.min(FASTEST_MPS, SLIDING_GAP_M * shearRate(stress));
}

/**
 * The film under a pull for `dt` seconds. Toward the face it bunches there, or before a tight band on the way, and brings the air back
 * with it, slowly; toward the cord it comes only until it is taut round the face.
 */
export function pullFilm(inside: SheathInside, head: HeadShape, pull: FilmPull, dt: number): SheathInside {
  const wanted = slideSpeed(inside, head, pull) * dt;
  const slide = pull.toward === 'face' ? wanted : -Math.min(wanted, inside.slackM);
  if (slide === 0) return inside;
  const stops = pull.toward === 'face' ? inside.bands.filter((band) => band.alongM < pull.alongM && tensionN(band, head) > 0) : [];
  const fromM = stops.reduce((nearest, { alongM }) => Math.max(nearest, alongM), 0);
  return dragAir({ ...inside, slackM: inside.slackM + slide }, head, slide, fromM, pull.alongM);
}
