import type { SurfaceMark } from '../../../core/room/picture.ts';
import { BAND, BAND_LINE } from '../palette.ts';
import { ellipsePath } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { joinPaths } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';

/** The inner edge runs the other way round, so that the middle stays open. */
const RING = joinPaths([ellipsePath(0, 0, 13, 5), ellipsePath(0, 0.3, -9.8, 2.6)]);

/** A rubber ring that lies flat, 26 mm across, seen from a little above. Millimetres. */
export function paintLooseBand(pen: Pen, mark: SurfaceMark): void {
  pen.path(RING, { fill: BAND, line: BAND_LINE, weight: 'd' });
  pen.path('M-11.6 -0.6C-10 -3.4 -5 -4.2 0 -4.2', { line: '#F6E6C4', weight: 'd' });
  paintMark(pen, RING, mark);
}
