import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { OPERATOR_FACE, paintHead } from '../art/head.ts';
import type { MarkOf } from '../art/marks.ts';
import { scaling, shift } from '../pen/affine.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';

/** Height of the shoulders that the top was drawn for, in centimetres. */
const DRAWN_SHOULDER_CM = 142;
const TOP = 'M-7 147C-10 146 -15 145 -18.6 142C-20 137 -18 130 -17.2 124C-17.8 110 -18.4 94 -18.8 78C-14 76 14 76 18.8 78C18.4 94 17.8 110 17.2 124C18 130 20 137 18.6 142C15 145 10 146 7 147L0 137Z';
export const SCRUB_SHADE = down('#9DB7B4', '#7E9C99');
export const SCRUB_LINE = '#3E5B59';
const NECK = 'M-5.4 150L-6.4 145.6L0 138.4L6.4 145.6L5.4 150Z';

type Operator = RoomPicture['scenario']['operator'];

/** How much taller this person is than the drawn one, in centimetres. */
const lift = ({ shoulderM }: Operator): number => shoulderM * 100 - DRAWN_SHOULDER_CM;

/** The operator in scrubs, cap and mask, before the gown is on; nothing of it is sterile. The pen's frame is in metres, 0 at the midline. */
export function paintScrubs(pen: Pen, picture: RoomPicture, markOf: MarkOf, shown: boolean): void {
  const mark = shown ? 'unsterile' : 'sterile';
  const { operator } = picture.scenario;
  const cm = pen.in(scaling(0.01));
  paintScrubLegs(cm, operator, mark);
  const top = cm.in(shift(0, lift(operator)), scaling(operator.shoulderHalfWidthM / 0.19, 1));
  top.path(NECK, { fill: OPERATOR_FACE.shade, line: OPERATOR_FACE.line, weight: 'd' });
  paintHead(cm.in(shift(0, operator.faceM * 100)), OPERATOR_FACE, markOf(picture.fixed['face']));
  top.path(TOP, { fill: SCRUB_SHADE, line: SCRUB_LINE });
  top.path('M-7 147L0 137L7 147', { line: SCRUB_LINE });
  top.path('M-12 130C-13 118 -12.6 104 -13.4 90M10 128C11 116 11.4 102 12 88M5 122H12.4V113H5Z', { line: SCRUB_LINE, weight: 'h', alpha: 0.55 });
  paintMark(top, TOP, mark);
}

/** Trousers as long as the person is tall, and shoes; the pen's frame is in centimetres, 0 at the midline. */
export function paintScrubLegs(cm: Pen, operator: Operator, mark: SurfaceMark): void {
  const hips = 84 + lift(operator);
  for (const side of [-1, 1]) {
    const leg = `M${side * 0.6} ${hips}L${side * 2.6} 7L${side * 11.8} 7L${side * 17} ${hips}Z`;
    cm.path(leg, { fill: SCRUB_SHADE, line: SCRUB_LINE });
    paintMark(cm, leg, mark);
    cm.path(`M${side * 2.6} 0C${side * 2} 5 ${side * 3} 8.4 ${side * 7} 8.6C${side * 11.4} 8.4 ${side * 13.6} 5 ${side * 13.4} 0Z`, { fill: '#5E6E78', line: '#35434C' });
  }
}
