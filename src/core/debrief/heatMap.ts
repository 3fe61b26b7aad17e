import { STEP_SECONDS } from '../base/time.ts';
import type { HandPath, HeatMap } from './traceTypes.ts';

const CELL_M = 0.02;

/** Time in cells of 2 cm: each point of the path counts until the next one. */
export function heatMapOf({ steps, x, y }: HandPath): HeatMap {
  if (steps.length === 0) return { cellM: CELL_M, x: 0, y: 0, columns: 0, rows: 0, seconds: new Float64Array(0) };
  const cell = (metres: number): number => Math.floor(metres / CELL_M);
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let k = 0; k < steps.length; k++) {
    left = Math.min(left, cell(x[k]!));
    right = Math.max(right, cell(x[k]!));
    low = Math.min(low, cell(y[k]!));
    high = Math.max(high, cell(y[k]!));
  }
  const columns = right - left + 1;
  const rows = high - low + 1;
  const seconds = new Float64Array(columns * rows);
  for (let k = 0; k + 1 < steps.length; k++) {
    const at = (cell(y[k]!) - low) * columns + cell(x[k]!) - left;
    seconds[at] = seconds[at]! + (steps[k + 1]! - steps[k]!) * STEP_SECONDS;
  }
  return { cellM: CELL_M, x: left * CELL_M, y: low * CELL_M, columns, rows, seconds };
}
