import type { SurfaceMark } from '../../../core/room/picture.ts';
import { paintMark } from '../pen/hatch.ts';
import { boxPath } from '../pen/curves.ts';
import type { Pen } from '../pen/pen.ts';
import { down } from '../pen/shade.ts';

const LINE = '#5E6E77';

/** Gel packet, 70 mm long; it goes flat as it is emptied. Millimetres. */
export function paintGelPacket(pen: Pen, used: number, mark: SurfaceMark): void {
  const h = 7 - 3.5 * used;
  const body = `M-35 4C-33 ${h} -24 ${h + 2} 0 ${h + 2}C24 ${h + 2} 33 ${h} 35 4V-4C33 ${-h} 24 ${-h - 2} 0 ${-h - 2}C-24 ${-h - 2} -33 ${-h} -35 -4Z`;
  pen.path(body, { fill: down('#EAF1F6', '#C9DAE6'), line: LINE });
  pen.path(`M-22 ${h - 2}C-10 ${h} 10 ${h} 22 ${h - 2}`, { line: '#FFFFFF', weight: 'd', alpha: 0.9 });
  pen.box(-12, -h * 0.55, 10, h * 0.45, { fill: '#8FB5CE', fillAlpha: 0.55 }, 2);
  pen.path('M-31 5V-5M31 5V-5', { line: LINE, weight: 'h', alpha: 0.8 });
  pen.path('M-35 2L-33 0L-35 -2M35 2L33 0L35 -2', { line: LINE, weight: 'h' });
  if (used > 0) pen.path('M31 5L35 2V4Z', { fill: '#F1F3F1' });
  paintMark(pen, body, mark);
}

/** A stack of folded gauze, 60 mm long. Millimetres. */
export function paintGauze(pen: Pen, mark: SurfaceMark): void {
  for (let i = 0; i < 4; i++) pen.box(-30 + i * 0.7, -8 + i * 4, 30 - i * 1.3, -4 + i * 4, { fill: i % 2 === 1 ? '#FFFFFF' : '#F3F6F6', line: '#8B9AA2', weight: 'd' }, 1.6);
  pen.path('M-16 8V-8M-4 8V-8M9 8V-8M20 8V-8', { line: '#B9C6CB', weight: 'h', alpha: 0.8 });
  paintMark(pen, boxPath(-30, -8, 30, 8, 1.6), mark);
}
