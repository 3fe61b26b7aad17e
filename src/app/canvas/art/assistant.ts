import type { RoomPicture, SurfaceMark } from '../../../core/room/picture.ts';
import { signOf, type Side } from '../../../core/base/side.ts';
import { NO_MARKS, paintHand } from '../hand/paintHand.ts';
import { HAND_SHAPES } from '../hand/poses.ts';
import { CLOTHES_LINE, FLOOR_SHADOW } from '../palette.ts';
import { scaling, shift, turning } from '../pen/affine.ts';
import { limb, polygon, smooth, type Point } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { CLOTHES_SHADE } from '../pen/shades.ts';
import { ASSISTANT_FACE, paintHead } from './head.ts';

const TOP = 'M-7 144C-10 142.4 -14 141 -17.2 138.4C-18.6 134 -16.4 128 -15.8 122C-16.6 108 -17.8 90 -18 74C-14 71.6 14 71.6 18 74C17.8 90 16.6 108 15.8 122C16.4 128 18.6 134 17.2 138.4C14 141 10 142.4 7 144L0 135Z';
const SKIN_LINE = '#855E45';
const FOLD = { line: CLOTHES_LINE, weight: 'h', alpha: 0.5 } as const;

/** The assistant stands with folded hands; nothing of an assistant is sterile. The pen's frame is in metres. */
export function paintAssistant(pen: Pen, picture: RoomPicture, shown: boolean): void {
  const cm = pen.in(scaling(0.01), shift(picture.scenario.room.assistantXM * 100, 0));
  paintBody(cm, 0, shown);
  for (const side of ['left', 'right'] as const) paintArm(cm, side, shown);
}

/** Legs, head and top of someone who bends down so far; the pen's frame is in centimetres, 0 at the midline. */
export function paintBody(cm: Pen, stoopCm: number, shown: boolean): void {
  const mark = shown ? 'unsterile' : 'sterile';
  cm.ellipse(0, 1.2, 22, 1.2, { fill: FLOOR_SHADOW, alpha: 0.6 });
  for (const side of [-1, 1]) {
    const leg = `M${side * 0.6} ${84 - stoopCm}L${side * 2.6} 8L${side * 11.8} 8L${side * 16.2} ${84 - stoopCm}Z`;
    cm.path(leg, { fill: CLOTHES_SHADE, line: CLOTHES_LINE });
    cm.path(`M${side * 1.8} 0C${side * 1.4} 5 ${side * 2.6} 9 ${side * 7} 9.2C${side * 11.6} 9 ${side * 13.8} 5 ${side * 13.4} 0Z`, { fill: '#EEF0F0', line: '#5E6A70' });
    cm.path(`M${side * 2} 2.4H${side * 13.4}`, { line: '#5E6A70', weight: 'h' });
    paintMark(cm, leg, mark);
    cm.path(`M${side * 8} ${78 - stoopCm}C${side * 8.6} 56 ${side * 8.2} 30 ${side * 7.6} 12`, FOLD);
  }
  paintTop(cm.in(shift(0, -stoopCm)), mark);
}

function paintTop(cm: Pen, mark: SurfaceMark): void {
  paintHead(cm.in(shift(0, 159)), ASSISTANT_FACE, 'sterile');
  cm.path(TOP, { fill: CLOTHES_SHADE, line: CLOTHES_LINE });
  cm.path('M-7 144L0 135L7 144C3 146 -3 146 -7 144Z', { fill: '#DDB596' });
  cm.path('M-7 144L0 135L7 144', { line: CLOTHES_LINE });
  cm.box(5, 118, 14, 128, { line: CLOTHES_LINE, weight: 'h' }, 0.6);
  cm.path('M-13 110C-10 104 -12 92 -14 78M12 112C10 104 12 90 13 78M-3 130C-4 118 -2 100 -3 80', FOLD);
  paintMark(cm, TOP, mark);
}

/** Bare forearm and hand below a short sleeve. */
function paintArm(cm: Pen, side: Side, shown: boolean): void {
  const sign = signOf(side);
  const left = side === 'left';
  const mark = shown ? 'unsterile' : 'sterile';
  const wrist: Point = [sign * 5.2, left ? 103.2 : 105.6];
  const middle: Point = [sign * 14, left ? 105.4 : 107];
  const forearm = limb([[sign * 19.6, 124, 4.5], [sign * 21.4, 111, 4.3], [...middle, 3.9], [...wrist, 2.9]], 6, true);
  cm.path(forearm, { fill: '#DFB897', line: SKIN_LINE });
  const degrees = (Math.atan2(wrist[1] - middle[1], Math.abs(wrist[0] - middle[0])) * 180) / Math.PI - 4;
  const hand = cm.in(shift(...wrist), scaling(-sign, 1), turning(degrees), scaling(0.1, -0.1));
  paintHand(hand, { shape: HAND_SHAPES.probe, skin: 'assistant', cuffDeg: 0, active: 0, marks: shown ? { ...NO_MARKS, fingers: 'unsterile', back: 'unsterile' } : NO_MARKS });
  paintMark(cm, forearm, mark);
  const sleeve = limb([[sign * 14.6, 136.6, 6.3], [sign * 18, 130, 6.1], [sign * 20.2, 121, 5.6]], 5, true);
  cm.path(sleeve, { fill: CLOTHES_SHADE, line: CLOTHES_LINE });
  const x = (value: number): number => sign * value;
  cm.path(polygon([[x(6.8), 144], [x(10.6), 143.5], [x(14.6), 142.7], [x(16.2), 141.6], [x(14.6), 136.6], [x(12.8), 129.6], [x(9), 131]]), { fill: CLOTHES_SHADE });
  paintMark(cm, sleeve, mark);
  cm.path(smooth([[x(6.9), 144.1], [x(10.6), 143.6], [x(14.6), 142.8], [x(17), 141.9], [x(19), 140.4]]), { line: CLOTHES_LINE });
  cm.path(smooth([[x(12.4), 143.2], [x(13.2), 137], [x(12.2), 130]]), { ...FOLD, alpha: 0.7 });
}
