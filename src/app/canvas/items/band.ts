import type { SurfaceMark } from '../../../core/room/picture.ts';
import { BAND, BAND_LINE } from '../palette.ts';
import { ellipsePath } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { joinPaths } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';

/** The inner edge runs the other way round, so that the middle stays open. */
const RING = joinPaths([ellipsePath(0, 0, 15, 4.4), ellipsePath(0, 0.3, -11.4, 2.1)]);

/** A rubber ring that lies flat, 30 mm across, seen from a little above. Millimetres. */
export function paintLooseBand(pen: Pen, mark: SurfaceMark): void {
  pen.path(RING, { fill: BAND, line: BAND_LINE, weight: 'd' });
  pen.path('M-13.2 0.8C-11 3 -6 3.7 0 3.7', { line: '#F6E6C4', weight: 'd' });
  paintMark(pen, RING, mark);
}
