import type { SurfaceMark } from '../../../core/room/picture.ts';
import { FILM_LINE } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { polygon, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';

/** It was drawn 30 mm high. */
const FLAT = 0.8;
const PLEATS = 6;
const HALF = { length: 70, height: 15 } as const;
/** How far every other fold stands in at the ends (mm). */
const STEP_IN = 3.4;

/** Both ends show the film going to and fro. */
const ends: Point[] = Array.from({ length: 2 * PLEATS + 1 }, (_, i): Point => [HALF.length - (i % 2) * STEP_IN, -HALF.height + (i * HALF.height) / PLEATS]);
const OUTLINE = polygon([...ends, ...ends.map(([x, y]): Point => [-x, y]).reverse()]);
const FOLDS = Array.from({ length: PLEATS - 1 }, (_, k) => {
  const y = -HALF.height + ((k + 1) * 2 * HALF.height) / PLEATS;
  return `M-69 ${y}C-40 ${y + 0.9} 40 ${y + 0.9} 69 ${y}`;
}).join('');

/** The sheath as it comes: drawn together into a flat packet of pleats, 140 by 24 mm, its mouth turned back on the upper side. Millimetres. */
export function paintSheathRoll(thing: Pen, mark: SurfaceMark): void {
  const pen = thing.in(scaling(1, FLAT));
  pen.path(OUTLINE, { fill: down('#F1F8FA', '#C4DEE6'), line: FILM_LINE });
  pen.path(parsePath(FOLDS), { line: FILM_LINE, weight: 'd', alpha: 0.8 });
  pen.path('M-62 -11.5C-30 -10.8 10 -10.8 40 -11.4M-58 -1.4C-20 -.6 30 -.6 60 -1.4', { line: '#FFFFFF', weight: 'd', alpha: 0.9 });
  pen.path('M-71 9.5C-40 12 40 12 71 9.5L71.5 15.5C40 17.6 -40 17.6 -71.5 15.5Z', { fill: '#E9F4F7', line: FILM_LINE });
  pen.path('M-48 15.8C-46 14 -46 12.6 -47 11.2M12 16.6C14 14.6 14 13 13 11.6M52 15.6C54 14 54 12.4 53 10.8', { line: FILM_LINE, weight: 'h', alpha: 0.7 });
  paintMark(pen, OUTLINE, mark);
}
