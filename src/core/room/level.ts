import type { World } from '../physics/world.ts';
import type { Scene } from './scene.ts';
import { skinHeight } from './layout.ts';
import { SIDES } from '../base/side.ts';

/**
 * Level that hands must stay above at x, in metres: over the field the drape under the hand, which sags between patient and rail;
 * over the kit table its top; beside them the operator's waist. Where a sheet lies in folds the lowest fold counts.
 */
export function levelAt(scene: Scene, humpX: number, x: number): number {
  const { layout, scenario, world } = scene;
  if (x > layout.kitTable.left && x < layout.kitTable.right) return layout.kitTable.top;
  const overBed = x > layout.crest.right.x && x < layout.crest.left.x;
  if (!overBed || scenario.policy.lowerLimit === 'waist') return scenario.operator.waistM;
  let lowest = Infinity;
  for (const side of SIDES) lowest = Math.min(lowest, lowestFold(world, scene.drapes[side], x));
  return lowest < Infinity ? lowest : layout.mattress.top + skinHeight(layout, x - humpX);
}

/** Height of the lowest fold of a sheet at x, or infinity where it does not reach. */
function lowestFold(world: World, strand: number, x: number): number {
  const nodeX = world.x;
  const nodeY = world.y;
  const start = world.strandStart(strand);
  let lowest = Infinity;
  for (let i = start, last = start + world.strandSize(strand) - 1; i < last; i++) {
    const ax = nodeX[i]!;
    const bx = nodeX[i + 1]!;
    if ((ax - x) * (bx - x) > 0 || ax === bx) continue;
    const y = nodeY[i]! + ((nodeY[i + 1]! - nodeY[i]!) * (x - ax)) / (bx - ax);
    if (y < lowest) lowest = y;
  }
  return lowest;
}
