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
  for (const side of SIDES) {
    const start = world.strandStart(scene.drapes[side]);
    const last = start + world.strandSize(scene.drapes[side]) - 1;
    for (let i = start; i < last; i++) {
      const ax = world.x[i]!;
      const bx = world.x[i + 1]!;
      if ((ax - x) * (bx - x) > 0 || ax === bx) continue;
      const y = world.y[i]! + ((world.y[i + 1]! - world.y[i]!) * (x - ax)) / (bx - ax);
      if (y < lowest) lowest = y;
    }
  }
  return lowest < Infinity ? lowest : layout.mattress.top + skinHeight(layout, x - humpX);
}
