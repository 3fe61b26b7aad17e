import type { RoomPicture } from '../../../core/room/picture.ts';
import { CASTOR, DRAPE, DRAPE_LINE, FLOOR_SHADOW, HUB, METAL, METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import { polygon } from '../pen/curves.ts';
import { paintMark } from '../pen/hatch.ts';
import type { Pen } from '../pen/pen.ts';
import { COVER_SHADE, DRAPE_FAR_SHADE, METAL_SHADE } from '../pen/shades.ts';
import type { MarkOf } from './marks.ts';

/** The cover was drawn for a table of this width and height, in centimetres. */
const DRAWN_WIDTH_CM = 60;
const DRAWN_TOP_CM = 95.3;
const FALL = 'M-35 77.6C-34 84 -32.6 91 -30.6 95.3H30.6C32.6 91 34 84 35 77.6C33 76.8 29 78 25 77.4C19 76.8 13 78 7 77.4C1 76.8 -5 78 -11 77.4C-17 76.8 -23 78 -28 77.4C-31 77 -33 77.2 -35 77.6Z';
const EDGE = 'M-31.4 94.5C-30.6 95.3 -30 95.3 -29 95.3H29C30 95.3 30.6 95.3 31.4 94.5';

/** Kit table with its sterile cover and the things that stay on it; the pen's frame is in metres. */
export function paintKitTable(pen: Pen, picture: RoomPicture, markOf: MarkOf): void {
  const { xM, topM, widthM } = picture.scenario.room.kitTable;
  const foot = pen.in(scaling(0.01), shift(xM * 100, 0));
  paintStand(foot, topM * 100);
  const cm = foot.in(shift(0, topM * 100 - DRAWN_TOP_CM), scaling((widthM * 100) / DRAWN_WIDTH_CM, 1));
  cm.box(-30, 90, 30, 94, { fill: METAL_SHADE, line: METAL_LINE }, 0.8);
  cm.path(polygon([[-30, 95], [30, 95], [27.9, 98.85], [-27.9, 98.85]]), { fill: DRAPE_FAR_SHADE, line: '#5E9498', weight: 'd' });
  cm.path(FALL, { fill: COVER_SHADE, line: DRAPE_LINE });
  cm.path('M-25 93C-24.6 88 -25.6 83 -26.6 78.6M-12 93.6C-12.6 88 -11.4 83 -10.6 78.6M2 93.8C2.4 88 1.4 82 .4 78.4M16 93.4C15.4 88 16.6 83 17.2 78.4M25 93.2C25.6 88 24.6 83 24 78.4', { line: DRAPE_LINE, weight: 'h', alpha: 0.55 });
  paintMark(cm, FALL, markOf(picture.fixed['tableEdge']));
  paintMark(cm, 'M-30 95L30 95L27.9 98.85L-27.9 98.85Z', markOf(picture.fixed['kitTable']));
  cm.path(EDGE, { line: DRAPE_LINE, weight: cm.weights.cloth + 1.4 });
  cm.path(EDGE, { line: DRAPE, weight: cm.weights.cloth - 0.6 });
  paintKit(foot.in(shift(0, topM * 100 + 0.6)), (widthM * 100) / DRAWN_WIDTH_CM);
}

function paintStand(cm: Pen, top: number): void {
  const base = 'M-19 6.6C-15 9.6 -7 10.4 0 10.4C7 10.4 15 9.6 19 6.6';
  cm.ellipse(0, 1.2, 24, 1.2, { fill: FLOOR_SHADOW, alpha: 0.6 });
  cm.box(-3, 8, 3, top - 5, { fill: METAL_SHADE, line: METAL_LINE });
  cm.path(base, { line: METAL_LINE, weight: 7 });
  cm.path(base, { line: METAL, weight: 5 });
  for (const x of [-19, 19]) {
    cm.ellipse(x, 3.2, 3.2, 3.2, { fill: CASTOR, line: METAL_LINE });
    cm.ellipse(x, 3.2, 1.3, 1.3, { fill: HUB, line: METAL_LINE, weight: 'h' });
  }
}

/** Cup of antiseptic with a swab stick and a stack of swabs; heights from the table top in centimetres. */
function paintKit(cm: Pen, stretch: number): void {
  const line = '#5E6E77';
  const cup = cm.in(shift(-22 * stretch, 0));
  cup.path('M-4.5 0L-3.9 5.4H3.9L4.5 0Z', { fill: '#E3E8EA', line });
  cup.path('M-4.1 4H4.1', { line, weight: 'h' });
  cup.ellipse(0, 5.4, 3.9, 0.55, { fill: '#F4F7F8', line, weight: 'd' });
  cup.ellipse(0, 5.3, 3.1, 0.36, { fill: '#B7702A', line: '#7A4513', weight: 'h' });
  cup.path('M-1.5 5.2L6.7 12.4', { line, weight: 2.6 });
  cup.path('M-1.5 5.2L6.7 12.4', { line: '#EEF2F3', weight: 1.2 });
  const swabs = cm.in(shift(-10 * stretch, 0));
  for (let i = 0; i < 4; i++) {
    swabs.box(-3.9 + i * 0.12, i * 0.55, 3.9 - i * 0.2, i * 0.55 + 0.62, { fill: i % 2 === 1 ? '#FFFFFF' : '#F3F6F6', line: '#8B9AA2', weight: 'h' }, 0.25);
  }
  swabs.path('M-2 2.2V0M1 2.2V.1', { line: '#B9C6CB', weight: 'h' });
}
