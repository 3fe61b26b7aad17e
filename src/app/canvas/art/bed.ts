import type { RoomPicture } from '../../../core/room/picture.ts';
import { layoutOf } from '../../../core/room/layout.ts';
import { CASTOR, HUB, METAL_LINE, METAL_MID } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import { boxPath, polygon, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { DARK_SHADE, MATTRESS_SHADE, METAL_SHADE } from '../pen/shades.ts';
import { recede } from './depth.ts';
import type { MarkOf } from './marks.ts';

/** Thickness of the frame under the mattress, in centimetres. */
const FRAME_CM = 8;

/** Bed frame, legs and mattress; the pen's frame is in metres. */
export function paintBed(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const { mattress } = layoutOf(picture.scenario, picture.bedUpM);
  const cm = pen.in(scaling(0.01));
  const top = mattress.top * 100;
  const under = mattress.bottom * 100;
  const half = mattress.halfWidth * 100;
  const bottom = under - FRAME_CM;
  paintLegs(cm, half, bottom);
  cm.box(-half - 0.5, bottom, half + 0.5, under, { fill: METAL_SHADE, line: METAL_LINE }, 1.2);
  cm.path(`M${-half} ${under - 2.6}H${half}M${-half} ${under - 5.6}H${half}`, { line: METAL_LINE, weight: 'h', alpha: 0.5 });
  const edge: Point[] = [[-half, top], [half, top]];
  cm.path(polygon([...edge, ...recede([...edge].reverse())]), { fill: '#EEF0EF', line: '#9AA5A8', weight: 'd' });
  const block = boxPath(-half, under, half, top, 2.4);
  cm.path(block, { fill: MATTRESS_SHADE, line: '#6E7B80' });
  for (const [lift, alpha] of [[0, 0.8], [-0.6, 0.4]] as const) {
    cm.path(`M${-half + 0.4} ${(top + under) / 2 + lift}H${half - 0.4}`, { line: '#8D999D', weight: 'h', alpha });
  }
  paintMark(cm, block, markOf(picture.fixed['bed']));
}

function paintLegs(cm: Pen, half: number, bottom: number): void {
  const x = half - 19;
  for (const side of [-1, 1]) {
    const at = (value: number): number => side * (x + value);
    cm.path(`M${at(-3)} ${bottom + 2}L${at(-2.4)} 12L${at(2.4)} 12L${at(3)} ${bottom + 2}Z`, { fill: METAL_SHADE, line: METAL_LINE });
    cm.path(`M${at(-3.4)} 12L${at(3.4)} 12L${at(3.4)} 9L${at(-3.4)} 9Z`, { fill: METAL_MID, line: METAL_LINE, weight: 'd' });
    cm.ellipse(at(0), 5, 5, 5, { fill: CASTOR, line: METAL_LINE });
    cm.ellipse(at(0), 5, 2.1, 2.1, { fill: HUB, line: METAL_LINE, weight: 'd' });
  }
  cm.box(-x + 2, 24.6, x - 2, 28, { fill: DARK_SHADE, line: METAL_LINE, weight: 'd' });
}
