import type { RoomPicture } from '../../../core/room/picture.ts';
import type { Affine } from '../pen/affine.ts';
import { smooth, type Point } from '../pen/curves.ts';
import { CLOSE } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';
import { PATIENT_SHADE } from '../pen/shades.ts';
import { paintSection } from './section.ts';

const SKIN_LINE = '#8A5E42';
/** The section was drawn for a hump this wide and high, in centimetres, standing on y = 95. */
const DRAWN = { halfWidthCm: 22.8, heightCm: 15.1, baseCm: 95 } as const;

/** The patient's shoulders and neck, cut across; the pen's frame is in metres. */
export function paintPatient(pen: Pen, picture: RoomPicture): void {
  const skin = Array.from(picture.skinX, (x, i): Point => [x, picture.skinY[i]!]);
  if (skin.length < 3) return;
  const outline = smooth(skin);
  outline.ops.push(CLOSE);
  pen.path(outline, { fill: PATIENT_SHADE });
  pen.clipped(outline, () => paintSection(pen.in(sectionFrame(skin))));
  pen.path(outline, { line: SKIN_LINE });
}

/** From centimetres of the drawn section to metres of the room. */
function sectionFrame(skin: readonly Point[]): Affine {
  const [left, right] = [skin[0]!, skin.at(-1)!];
  const top = Math.max(...skin.map(([, y]) => y));
  const across = Math.abs(right[0] - left[0]) / 2 / DRAWN.halfWidthCm;
  const base = (left[1] + right[1]) / 2;
  const up = (top - base) / DRAWN.heightCm;
  return [across, 0, 0, up, (left[0] + right[0]) / 2, base - DRAWN.baseCm * up];
}
