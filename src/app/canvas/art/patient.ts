import type { RoomPicture } from '../../../core/room/picture.ts';
import type { Affine } from '../pen/affine.ts';
import { smooth, type Point } from '../pen/curves.ts';
import { CLOSE, type PathData } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { PATIENT_SHADE } from '../pen/shades.ts';
import { paintSection } from './section.ts';

const SKIN_LINE = '#8A5E42';
/** The section was drawn for a hump this wide and high, in centimetres, standing on y = 95. */
const DRAWN = { halfWidthCm: 22.8, heightCm: 15.1, baseCm: 95 } as const;

/** The patient's shoulders and neck, cut across; the pen's frame is in metres. */
export function paintPatient(pen: Pen, picture: RoomPicture): void {
  const outline = humpPath(picture.patientOutline);
  pen.path(outline, { fill: PATIENT_SHADE });
  pen.clipped(outline, () => paintSection(pen.in(sectionFrame(picture.patientOutline))));
  pen.path(outline, { line: SKIN_LINE });
}

/** From centimetres of the drawn section to metres of the room. */
function sectionFrame(outline: readonly Point[]): Affine {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const across = (x1 - x0) / 2 / DRAWN.halfWidthCm;
  const up = (y1 - y0) / DRAWN.heightCm;
  return [across, 0, 0, up, (x0 + x1) / 2, y0 - DRAWN.baseCm * up];
}

/** Smooth over the top, straight along the mattress: the outline runs counter-clockwise and closes along its base. */
function humpPath(outline: readonly Point[]): PathData {
  const lowest = Math.min(...outline.map(([, y]) => y));
  const onBase = (point: Point): boolean => point[1] < lowest + 0.004;
  const first = outline.findIndex((point, i) => onBase(point) && !onBase(outline[(i + 1) % outline.length]!));
  if (first < 0) return smooth(outline, true);
  const turned = [...outline.slice(first), ...outline.slice(0, first)];
  const end = turned.findIndex((point, i) => i > 0 && onBase(point));
  const path = smooth(turned.slice(0, end + 1));
  path.ops.push(CLOSE);
  return path;
}
