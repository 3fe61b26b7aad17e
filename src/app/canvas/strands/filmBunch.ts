import { FILM_LINE } from '../palette.ts';
import type { Point } from '../pen/curves.ts';
import { CLOSE, LINE, MOVE, QUADRATIC, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { alongLine } from './along.ts';

/** Room that one fold takes along the cord, and that a metre of folded film takes, in centimetres. */
const FOLD_CM = 0.5;
const BUNCH_CM_PER_M = 5;
/** Less than this is not seen as folds, in metres of film. */
const LEAST_M = 0.02;

/** Length along the cord of film that is still folded (cm); 0 where there is none. */
export const bunchLength = (foldedM: number): number => (foldedM < LEAST_M ? 0 : Math.max(2, Math.round((BUNCH_CM_PER_M * foldedM) / FOLD_CM)) * FOLD_CM);

/** Film gathered into folds round the cord between two places along its line. The pen's frame and all lengths are in centimetres. */
export function paintFilmBunch(cm: Pen, line: readonly Point[], from: number, to: number, half: number): void {
  const folds = Math.max(1, Math.round((to - from) / FOLD_CM));
  const step = (to - from) / folds;
  const point = (far: number, off: number): Point => {
    const { at, t } = alongLine(line, far);
    return [at[0] - t[1] * off, at[1] + t[0] * off];
  };
  const outline: PathData = { ops: [MOVE, LINE], xy: [...point(from, -half), ...point(from, half)] };
  const bulge = (far: number, side: 1 | -1, way: 1 | -1): void => {
    outline.ops.push(QUADRATIC);
    outline.xy.push(...point(far + (way * step) / 2, side * half * 1.75), ...point(far + way * step, side * half));
  };
  for (let k = 0; k < folds; k++) bulge(from + k * step, 1, 1);
  outline.ops.push(LINE);
  outline.xy.push(...point(to, -half));
  for (let k = folds; k > 0; k--) bulge(from + k * step, -1, -1);
  outline.ops.push(CLOSE);
  const creases: PathData = { ops: [], xy: [] };
  for (let k = 1; k < folds; k++) {
    creases.ops.push(MOVE, QUADRATIC);
    creases.xy.push(...point(from + k * step, half), ...point(from + (k + 0.45) * step, 0), ...point(from + k * step, -half));
  }
  cm.path(outline, { fill: '#DCEDF2', fillAlpha: 0.94, line: FILM_LINE, weight: 'd' });
  cm.path(creases, { line: FILM_LINE, weight: 'd', alpha: 0.8 });
}
