import { length } from '../../base/portableMath.ts';
import { SIDES } from '../../base/side.ts';
import type { Scene } from '../scene.ts';

/** Where a hand holds the cord: outside the edge of the bed and below it (m). */
const OUTSIDE_M = 0.22;
const BELOW_EDGE_M = 0.12;
/** Stretch of hanging cord that a skilled hand takes, measured from the edge, and how near to a glove it will not take it (m). */
const FROM_EDGE_M = 0.1;
const FROM_GLOVE_M = 0.2;
/** How slack is given: the hand goes so much higher for each metre that it goes toward the field. */
const RISE = 0.4;

/** Side of the bed over which the cord leaves: 1 at the right of the screen. */
export const cordWay = ({ scenario }: Scene): 1 | -1 => (scenario.room.machine.outletXM >= 0 ? 1 : -1);

export const crestOf = (scene: Scene): { readonly x: number; readonly y: number } => scene.layout.crest[cordWay(scene) > 0 ? 'left' : 'right'];

/** Where the held cord is taken, with so much slack given back (m). */
export function holdPoint(scene: Scene, slackM: number): readonly [number, number] {
  const { x, y } = crestOf(scene);
  return [x + cordWay(scene) * (OUTSIDE_M - slackM), y - BELOW_EDGE_M + slackM * RISE];
}

/** Node of the hanging cord to take hold of: outside the edge, free, and clear of the operator's hands. */
export function hangingNode(scene: Scene): number {
  const { world, cord } = scene;
  const way = cordWay(scene);
  const edge = crestOf(scene).x;
  const first = world.strandStart(cord);
  const last = first + world.strandSize(cord) - 3;
  let node = last + 2;
  while (node > first && way * (world.x[node - 1]! - edge) > FROM_EDGE_M) node--;
  while (node < last && (world.holderOf(node) >= 0 || nearGlove(scene, node))) node++;
  return Math.min(node, last);
}

function nearGlove({ world, hands }: Scene, node: number): boolean {
  return SIDES.some((side) => length(world.bodyX[hands[side]]! - world.x[node]!, world.bodyY[hands[side]]! - world.y[node]!) < FROM_GLOVE_M);
}

/**
 * The detour of a clumsy reach: over the edge of the bed instead of round it, the farther in and the lower the clumsier; null where the
 * reach keeps clear of the field. `inShare` and `lowShare` are chance, 0 to 1.
 */
export function clumsyDetour(scene: Scene, skill: number, inShare: number, lowShare: number): readonly [number, number] | null {
  const clumsy = 1 - skill;
  if (clumsy < CLUMSY_FROM) return null;
  const { x, y } = crestOf(scene);
  return [x - cordWay(scene) * (DETOUR_IN_M * clumsy * inShare - 0.02), y + DETOUR_OVER_M * (1 - clumsy * lowShare)];
}

/** Clumsiness from which a reach strays over the edge; how far in the worst strays, and how high the best passes (m). */
const CLUMSY_FROM = 0.25;
const DETOUR_IN_M = 0.08;
const DETOUR_OVER_M = 0.1;
