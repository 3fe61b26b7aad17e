import type { StrandPicture } from '../../../core/room/picture.ts';
import type { MarkOf } from '../art/marks.ts';
import { recede } from '../art/depth.ts';
import { BREAK, BREAK_TINT, DRAPE, DRAPE_LINE } from '../palette.ts';
import { joinPaths, LINE, MOVE } from '../pen/pathData.ts';
import { ribbon, thrifty, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { DRAPE_FAR_SHADE } from '../pen/shades.ts';
import { runsOf } from './runs.ts';
import { strandLine } from './strandLine.ts';

/** Every how many nodes a soft fold runs back into the sheet. */
const FOLD_STEP = 5;

/** The sheet behind its cut edge; the pen's frame is in centimetres. */
export function paintDrapeFar(cm: Pen, strand: StrandPicture, markOf: MarkOf): void {
  const near = strandLine(strand);
  const far = recede(near);
  cm.path(ribbon(near, far), { fill: DRAPE_FAR_SHADE });
  cm.path(thrifty([near[0]!, ...far, near.at(-1)!]), { line: '#6FA0A3', weight: 'h' });
  const folds = near.flatMap((point, i) => (i % FOLD_STEP === 2 ? [{ ops: [MOVE, LINE], xy: [...point, ...far[i]!] }] : []));
  cm.path(joinPaths(folds), { line: '#5E9498', weight: 'h', alpha: 0.34 });
  for (const { mark, from, to } of runsOf(strand.surfaces, markOf)) {
    if (mark !== 'sterile') paintMark(cm, ribbon(near.slice(from, to + 1), far.slice(from, to + 1)), mark, near[0]);
  }
}

/** The cut edge of the sheet, with its glued strip. */
export function paintDrapeEdge(cm: Pen, strand: StrandPicture, markOf: MarkOf): void {
  const { cloth } = cm.weights;
  const line = strandLine(strand);
  const path = thrifty(line);
  cm.path(path, { line: DRAPE_LINE, weight: cloth + 2.4 });
  cm.path(path, { line: DRAPE, weight: cloth });
  cm.path(thrifty(line.map(([x, y]): Point => [x, y + 0.12])), { line: '#B6D8D8', weight: 1.3, alpha: 0.85 });
  for (const { mark, from, to } of runsOf(strand.surfaces, markOf)) {
    const stretch = thrifty(line.slice(from, to + 1));
    if (mark === 'unsterile') cm.path(stretch, { line: '#12292C', weight: cloth, dash: [1.4, 4], butt: true });
    if (mark !== 'became') continue;
    cm.path(stretch, { line: BREAK, weight: cloth + 3 });
    cm.path(stretch, { line: BREAK_TINT, weight: 2, dash: [3, 5] });
  }
  const glued = strand.glued.filter(Boolean).length;
  if (glued > 1) cm.path(thrifty(line.slice(0, glued).map(([x, y]): Point => [x, y + 0.25])), { line: '#F7FBFA', weight: 2, dash: [2.4, 3.4] });
}
