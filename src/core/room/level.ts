import type { World } from '../physics/world.ts';
import type { Scene } from './scene.ts';
import { isOverBed, skinHeight } from './layout.ts';
import { SIDES } from '../base/side.ts';
import { hasGownTable } from '../scenario/station.ts';

/** A palm this far beside a table still has its fingers over it (m). */
const ON_TO_TABLE_M = 0.13;

/**
 * Level that hands must stay above at x, in metres: over the field the drape under the hand, which sags between patient and rail;
 * over a table and right beside it its top; elsewhere the operator's waist. Where a sheet lies in folds the lowest fold counts.
 */
export function levelAt(scene: Scene, humpX: number, x: number): number {
  const beside = levelBeside(scene, x);
  if (beside !== null) return beside;
  let lowest = Infinity;
  for (const side of SIDES) lowest = Math.min(lowest, lowestFold(scene.world, scene.drapes[side], x));
  return lowest < Infinity ? lowest : bareLevel(scene, humpX, x);
}

/** The same at each of `xs`, which rise evenly, in one pass over the sheets. */
export function levelsAt(scene: Scene, humpX: number, xs: Float64Array): Float64Array {
  const levels = new Float64Array(xs.length).fill(Infinity);
  for (const side of SIDES) lowerToFolds(scene.world, scene.drapes[side], xs, levels);
  for (let k = 0; k < xs.length; k++) {
    const beside = levelBeside(scene, xs[k]!);
    if (beside !== null) levels[k] = beside;
    else if (levels[k] === Infinity) levels[k] = bareLevel(scene, humpX, xs[k]!);
  }
  return levels;
}

/** Level where no sheet decides: over the table, beside the bed, or anywhere if the policy asks for the waist; else null. */
function levelBeside({ layout, scenario }: Scene, x: number): number | null {
  const { kitTable } = layout;
  const { waistM } = scenario.operator;
  if (x > kitTable.left && x < kitTable.right) return kitTable.top;
  if (isOverBed(layout, x)) return scenario.policy.lowerLimit === 'waist' ? waistM : null;
  const { xM, widthM, topM } = scenario.gown.table;
  const byKit = x > kitTable.left - ON_TO_TABLE_M && x < kitTable.right + ON_TO_TABLE_M;
  const byGown = hasGownTable(scenario) && Math.abs(x - xM) < widthM / 2 + ON_TO_TABLE_M;
  return Math.min(waistM, byKit ? kitTable.top : Infinity, byGown ? topM : Infinity);
}

const bareLevel = ({ layout }: Scene, humpX: number, x: number): number => layout.mattress.top + skinHeight(layout, x - humpX);

/** Height of the lowest fold of a sheet at x, or infinity where it does not reach. */
function lowestFold(world: World, strand: number, x: number): number {
  const nodeX = world.x;
  const start = world.strandStart(strand);
  let lowest = Infinity;
  for (let i = start, last = start + world.strandSize(strand) - 1; i < last; i++) {
    const ax = nodeX[i]!;
    const bx = nodeX[i + 1]!;
    if ((ax - x) * (bx - x) > 0 || ax === bx) continue;
    const y = heightAt(world, i, x);
    if (y < lowest) lowest = y;
  }
  return lowest;
}

/** Lowers each level to the lowest fold of the sheet there. */
function lowerToFolds(world: World, strand: number, xs: Float64Array, levels: Float64Array): void {
  const stride = (xs[xs.length - 1]! - xs[0]!) / (xs.length - 1);
  const start = world.strandStart(strand);
  for (let i = start, last = start + world.strandSize(strand) - 1; i < last; i++) {
    const ax = world.x[i]!;
    const bx = world.x[i + 1]!;
    if (ax === bx) continue;
    const from = Math.max(0, Math.floor((Math.min(ax, bx) - xs[0]!) / stride));
    const to = Math.min(xs.length - 1, Math.ceil((Math.max(ax, bx) - xs[0]!) / stride));
    for (let k = from; k <= to; k++) {
      if ((ax - xs[k]!) * (bx - xs[k]!) <= 0) levels[k] = Math.min(levels[k]!, heightAt(world, i, xs[k]!));
    }
  }
}

/** Height of the link from node i to the next at x. */
function heightAt({ x: nodeX, y: nodeY }: World, i: number, x: number): number {
  const ax = nodeX[i]!;
  return nodeY[i]! + ((nodeY[i + 1]! - nodeY[i]!) * (x - ax)) / (nodeX[i + 1]! - ax);
}
