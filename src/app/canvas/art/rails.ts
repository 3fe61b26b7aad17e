import { signOf, SIDES } from '../../../core/base/side.ts';
import { layoutOf, type RailLayout } from '../../../core/room/layout.ts';
import type { SurfaceMark } from '../../../core/room/picture.ts';
import type { Frame } from '../frame.ts';
import { HUB, METAL_DARK, METAL_LINE } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { polygon, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { METAL_SHADE } from '../pen/shades.ts';
import { boxAround } from '../pictureCache.ts';
import { recede } from './depth.ts';

/** A lowered rail stands this far below the top of the mattress, in centimetres. */
const LOWERED_CM = 4;

/** Both bed rails, up or lowered. */
export function paintRails(frame: Frame): void {
  const { picture, camera, markOf } = frame;
  const layout = layoutOf(picture.scenario, picture.bedUpM);
  const cm = frame.pen.in(scaling(0.01));
  for (const side of SIDES) {
    const rail = layout.rails[side];
    const mark = markOf(picture.fixed[`rail.${side}`]);
    const x = rail.x * 100;
    const corners: Point[] = [[x - 4, rail.bottom * 100 - 1], [x + 4, (rail.topCentre + rail.radius) * 100 + 1], [x * 0.9, rail.bottom * 100]];
    frame.cache.draw(cm, `rail.${side}`, `${mark} ${picture.bedUpM} ${camera.toScreen.join()}`, [0, 0], boxAround(cm, corners, 4),
      (pen) => paintRail(pen, rail, signOf(side), rail.up ? 0 : layout.mattress.top * 100 - LOWERED_CM, mark));
  }
}

/** @param loweredTop top of a lowered rail in centimetres, or 0 where it is up */
function paintRail(cm: Pen, rail: RailLayout, side: number, loweredTop: number, mark: SurfaceMark): void {
  const half = rail.radius * 100;
  const x = rail.x * 100;
  const foot = rail.bottom * 100;
  const top = loweredTop || (rail.topCentre + rail.radius) * 100;
  const bar = { fill: HUB, line: METAL_LINE, weight: 'h' } as const;
  const far = recede([[x + half, top - half], [x - half, top - half]]);
  cm.path(polygon([[x - half, top - half], [x + half, top - half], ...far]), bar);
  const inner = x - side * half;
  if (rail.up) cm.path(polygon([[inner, top - 13], [inner, top - 15.6], ...recede([[inner, top - 15.6], [inner, top - 13]])]), bar);
  const bow = top + half / 3;
  const post = `M${x - half} ${foot}V${top - half}C${x - half} ${bow} ${x + half} ${bow} ${x + half} ${top - half}V${foot}Z`;
  cm.path(post, { fill: METAL_SHADE, line: METAL_LINE });
  cm.path(`M${x - half * 0.4} ${foot + 2}V${top - half - 0.8}`, { line: '#FFFFFF', weight: 'd', alpha: 0.6 });
  cm.box(x - half - 0.8, foot, x + half + 0.8, foot + 6, { fill: METAL_DARK, line: METAL_LINE, weight: 'd' }, 0.8);
  paintMark(cm, post, mark);
}
