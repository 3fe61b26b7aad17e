import type { Frame } from '../frame.ts';
import { paintBody } from '../art/assistant.ts';
import { METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { polygon } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { METAL_SHADE } from '../pen/shades.ts';
import { WRAPPER_LINE, WRAPPER_SHADE } from './colours.ts';

/** Depth of the table top as it is seen, in centimetres. */
const DEPTH_CM = 4;

/** The table with the opened wrapper, and whoever passes by. Nothing where no gown is put on. */
export function paintGownTable({ picture, pen, markOf, shown }: Frame): void {
  const { gown, scenario } = picture;
  if (!gown) return;
  const cm = pen.in(scaling(0.01));
  if (gown.personX !== null) paintBody(cm.in(shift(gown.personX * 100, 0)), 0, shown);
  const { xM, topM, widthM } = scenario.gown.table;
  const top = cm.in(shift(xM * 100, topM * 100));
  const half = widthM * 50;
  const leg = cm.in(shift(xM * 100, 0));
  for (const x of [-half + 4, half - 4]) leg.box(x - 1.2, 0, x + 1.2, topM * 100 - 3, { fill: METAL_SHADE, line: METAL_LINE, weight: 'd' });
  leg.box(-half + 4, 22, half - 4, 24, { fill: METAL_SHADE, line: METAL_LINE, weight: 'd' });
  top.box(-half, -3.4, half, 0, { fill: METAL_SHADE, line: METAL_LINE }, 0.8);
  const sheet = polygon([[-half, 0], [half, 0], [half - 3, DEPTH_CM], [-half + 3, DEPTH_CM]]);
  const side = `M${-half} 0L${-half - 0.6} -9C${-half / 2} -11 ${half / 2} -11 ${half + 0.6} -9L${half} 0Z`;
  top.path(sheet, { fill: WRAPPER_SHADE, line: WRAPPER_LINE, weight: 'd' });
  top.path(side, { fill: WRAPPER_SHADE, line: WRAPPER_LINE });
  // Creases of the wrapper where it was folded.
  top.path(`M${-half / 3} ${DEPTH_CM}L${-half / 3 - 1} -10M${half / 3} ${DEPTH_CM}L${half / 3 + 1} -10`, { line: WRAPPER_LINE, weight: 'h', alpha: 0.6 });
  paintMark(top, sheet, markOf(gown.surfaces.table));
  paintMark(top, side, markOf(gown.surfaces.tableSide));
}
