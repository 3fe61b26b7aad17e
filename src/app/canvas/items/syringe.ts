import type { SurfaceMark } from '../../../core/room/picture.ts';
import { paintMark } from '../pen/hatch.ts';
import { boxPath } from '../pen/curves.ts';
import { parsePath } from '../pen/pathData.ts';
import type { Pen } from '../pen/pen.ts';

const LINE = '#51626C';
/** Ends of the barrel along the axis and the longest way of the plunger out of it, in millimetres. */
const BARREL = { from: -30, to: 38 } as const;
const PLUNGER_MM = 44;
/** From the stopper to the thumb rest. */
const ROD_MM = 73;

export interface SyringeLook {
  /** Needle with its hub beyond the barrel's tip, in millimetres. */
  readonly needleMm: number;
  /** How full the barrel is, 0 to 1. */
  readonly full: number;
  readonly liquid: string;
  readonly barrelMark: SurfaceMark;
  readonly needleMark: SurfaceMark;
}

/** A syringe with its needle; millimetres, the needle along +x, the middle of the barrel near the origin. */
export function paintSyringe(pen: Pen, look: SyringeLook): void {
  const stopper = BARREL.to - 6 - look.full * PLUNGER_MM;
  const thumbRest = stopper - ROD_MM;
  pen.box(thumbRest, -4, stopper - 6, 4, { fill: '#E3E8EA', line: LINE, weight: 'd' }, 1.5);
  pen.box(thumbRest - 4, -8.5, thumbRest, 8.5, { fill: '#D3DADD', line: LINE }, 1.6);
  const barrel = boxPath(BARREL.from, -7.5, BARREL.to, 7.5, 2);
  pen.path(barrel, { fill: '#F4F8F9', line: LINE, fillAlpha: 0.92 });
  pen.box(stopper, -6.2, BARREL.to - 1.5, 6.2, { fill: look.liquid });
  pen.box(stopper - 6, -6.4, stopper, 6.4, { fill: '#4B565D' }, 1.4);
  pen.path(marksAlong(), { line: LINE, weight: 'h' });
  paintMark(pen, barrel, look.barrelMark);
  pen.path(`M${BARREL.from - 3} -13L${BARREL.from + 2} -11V11L${BARREL.from - 3} 13Z`, { fill: '#DDE4E7', line: LINE });
  pen.path(`M${BARREL.to} -4.6L${BARREL.to + 7} -3.2V3.2L${BARREL.to} 4.6Z`, { fill: '#E6ECEE', line: LINE, weight: 'd' });
  if (look.needleMm > 0) paintNeedle(pen, look);
}

const marksAlong = () => parsePath(Array.from({ length: 8 }, (_, i) => `M${BARREL.from + 8 + i * 7} -7.5V${i % 4 === 3 ? -0.5 : -3}`).join(''));

function paintNeedle(pen: Pen, { needleMm, needleMark }: SyringeLook): void {
  const hub = BARREL.to + 6;
  const tip = BARREL.to + 7 + needleMm;
  const tube = `M${hub + 14} -.85H${tip - 4}L${tip} .85H${hub + 14}Z`;
  const hubPath = `M${hub} -4.4L${hub + 13} -3L${hub + 15} -1.2V1.2L${hub + 13} 3L${hub} 4.4Z`;
  pen.path(hubPath, { fill: '#8FB0BC', line: '#3F6370', weight: 'd' });
  pen.path(tube, { fill: '#B7C1C7', line: '#4D5960', weight: 'h' });
  if (needleMark !== 'sterile') {
    paintMark(pen, hubPath, needleMark);
    paintMark(pen, boxPath(hub + 14, -1.6, tip, 1.6), needleMark);
  }
}
