import { length } from '../../base/portableMath.ts';
import type { Rng } from '../../base/rng.ts';
import { secondsToSteps } from '../../base/time.ts';
import { minimumJerk } from '../patient.ts';

/** Mean speed of an unhurried reach (m/s), and the shortest time that any takes (s); common practice for work beside a field. */
const MEAN_MPS = 0.38;
const SHORTEST_S = 0.45;
/** How much duration and way differ from one reach to the next, as shares; people never move twice alike. */
const DURATION_SPREAD = 0.12;
const BEND = 0.06;
/** What clumsiness adds to the bend of a way, as a share of its length. */
const CLUMSY_BEND = 0.2;

/** A reach of the fingertips: from where, when, how long, and how far its middle lies off the straight line (metres, to its left). */
export interface ReachPath {
  readonly startX: number;
  readonly startY: number;
  readonly startStep: number;
  readonly steps: number;
  readonly bendM: number;
}

/** Plans a reach from one point to another, with the variation of a person of that skill (0 to 1). */
export function planReach(rng: Rng, skill: number, step: number, from: readonly [number, number], to: readonly [number, number]): ReachPath {
  const far = length(to[0] - from[0], to[1] - from[1]);
  const seconds = Math.max(SHORTEST_S, far / MEAN_MPS) * rng.between(1 - DURATION_SPREAD, 1 + DURATION_SPREAD);
  const bendM = far * (BEND + CLUMSY_BEND * (1 - skill)) * rng.between(-1, 1);
  return { startX: from[0], startY: from[1], startStep: step, steps: Math.max(1, secondsToSteps(seconds)), bendM };
}

/** Share of the time of a reach that is over, 0 to 1. */
export const shareOf = (path: ReachPath, step: number): number => Math.min(1, Math.max(0, (step - path.startStep) / path.steps));

/**
 * Where the fingertips are in a reach to (x, y), which may move meanwhile: the eye leads the hand all the way. Along the line the
 * minimum-jerk profile (Flash and Hogan 1985), off it a smooth bump that is flat at both ends.
 */
export function alongReach(path: ReachPath, step: number, x: number, y: number): readonly [number, number] {
  const t = shareOf(path, step);
  const done = minimumJerk(t);
  const dx = x - path.startX;
  const dy = y - path.startY;
  const l = Math.max(length(dx, dy), 1e-6);
  const off = (path.bendM * 16 * t * t * (1 - t) * (1 - t)) / l;
  return [path.startX + dx * done - dy * off, path.startY + dy * done + dx * off];
}
