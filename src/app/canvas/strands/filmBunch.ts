import { FILM_LINE } from '../palette.ts';
import type { Point } from '../pen/curves.ts';
import { CLOSE, LINE, MOVE, QUADRATIC, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { alongLine } from './along.ts';

/** Room that one fold takes along the cord, and that a metre of folded film takes, in centimetres. */
const FOLD_CM = 0.5;
const BUNCH_CM_PER_M = 5;
/** How far folds stand out, as parts of the half width of film that is drawn out: the more is folded the further. */
const BULGE = { least: 2, perM: 1.4, most: 3.4 } as const;
/** Less than this is not seen as folds, in metres of film. */
const LEAST_M = 0.02;

/** Length along the cord of film that is still folded (cm); 0 where there is none. */
export const bunchLength = (foldedM: number): number => (foldedM < LEAST_M ? 0 : Math.max(2, Math.round((BUNCH_CM_PER_M * foldedM) / FOLD_CM)) * FOLD_CM);

/** Where folded film lies along the line of a cord, half the width of film that is drawn out (cm), and how much is folded (m). */
interface Bunch {
  readonly from: number;
  readonly to: number;
  readonly half: number;
  readonly foldedM: number;
}

/** Film gathered into folds round the cord. The pen's frame is in centimetres. */
export function paintFilmBunch(cm: Pen, line: readonly Point[], { from, to, half, foldedM }: Bunch): void {
  const bulged = half * Math.min(BULGE.most, BULGE.least + BULGE.perM * foldedM);
  const valley = (half + bulged) / 2;
  const folds = Math.max(1, Math.round((to - from) / FOLD_CM));
  const step = (to - from) / folds;
  const point = (far: number, off: number): Point => {
    const { at, t } = alongLine(line, far);
    return [at[0] - t[1] * off, at[1] + t[0] * off];
  };
  const outline: PathData = { ops: [MOVE, LINE], xy: [...point(from, -valley), ...point(from, valley)] };
  const bulge = (far: number, side: 1 | -1, way: 1 | -1): void => {
    outline.ops.push(QUADRATIC);
    // The control point of a curve lies twice as far out as the curve goes.
    outline.xy.push(...point(far + (way * step) / 2, side * bulged), ...point(far + way * step, side * valley));
  };
  for (let k = 0; k < folds; k++) bulge(from + k * step, 1, 1);
  outline.ops.push(LINE);
  outline.xy.push(...point(to, -valley));
  for (let k = folds; k > 0; k--) bulge(from + k * step, -1, -1);
  outline.ops.push(CLOSE);
  const creases: PathData = { ops: [], xy: [] };
  for (let k = 1; k < folds; k++) {
    creases.ops.push(MOVE, QUADRATIC);
    creases.xy.push(...point(from + k * step, valley), ...point(from + (k + 0.45) * step, 0), ...point(from + k * step, -valley));
  }
  cm.path(outline, { fill: '#DCEDF2', fillAlpha: 0.94, line: FILM_LINE, weight: 'd' });
  cm.path(creases, { line: FILM_LINE, weight: 'd', alpha: 0.8 });
}
