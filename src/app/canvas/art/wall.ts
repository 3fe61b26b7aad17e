import { QUIET_INK } from '../palette.ts';
import { scaling } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';
import { FLOOR_SHADE, WALL_SHADE } from '../pen/shades.ts';

const RAIL_LINE = '#C2CBCB';
/** The wall goes on this far beyond the middle of the room, in centimetres. */
const WIDE_CM = 600;
/** Over these heights and depths wall and floor are shaded; beyond, as far as any screen sees, they are plain (cm). */
const HIGH_CM = 400;
const DEEP_CM = 120;
const BEYOND_CM = 1000;

/** Wall, skirting, floor, supply rail and clock: quiet; the pen's frame is in metres. */
export function paintWall(pen: Pen): void {
  const cm = pen.in(scaling(0.01));
  // A tall screen sees farther up and down than the shades go.
  cm.box(-WIDE_CM, HIGH_CM, WIDE_CM, BEYOND_CM, { fill: '#F6F7F5' });
  cm.box(-WIDE_CM, -BEYOND_CM, WIDE_CM, -DEEP_CM, { fill: '#CDD4D3' });
  cm.box(-WIDE_CM, 0, WIDE_CM, HIGH_CM, { fill: WALL_SHADE });
  cm.box(-WIDE_CM, 0, WIDE_CM, 7, { fill: '#E3E7E6' });
  cm.path(`M${-WIDE_CM} 7H${WIDE_CM}`, { line: '#C7CFCF', weight: 1 });
  cm.box(-WIDE_CM, -DEEP_CM, WIDE_CM, 0, { fill: FLOOR_SHADE });
  cm.path(`M${-WIDE_CM} 0H${WIDE_CM}`, { line: '#9BA7A8', weight: 1.4 });
  paintSupplyRail(cm);
  paintClock(cm, -115, 192);
}

function paintSupplyRail(cm: Pen): void {
  cm.box(-82, 150, 82, 160.5, { fill: '#E9EDEC', line: RAIL_LINE, weight: 'd' }, 1);
  cm.path('M-82 157.6H82', { line: RAIL_LINE, weight: 'h' });
  for (const x of [-74, -66, -58, -40, 40, 48]) {
    cm.box(x - 2.6, 151.6, x + 2.6, 156.2, { fill: '#F4F6F5', line: RAIL_LINE, weight: 'h' }, 0.5);
    cm.ellipse(x, 153.9, 0.9, 0.9, { fill: '#DDE3E2', line: RAIL_LINE, weight: 'h' });
  }
  for (const x of [-28, 28]) {
    cm.ellipse(x, 153.8, 2.3, 2.3, { fill: '#F4F6F5', line: RAIL_LINE, weight: 'd' });
    cm.ellipse(x, 153.8, 0.9, 0.9, { fill: '#D2DADA', line: RAIL_LINE, weight: 'h' });
  }
}

function paintClock(cm: Pen, x: number, y: number): void {
  cm.ellipse(x, y, 13, 13, { fill: '#F8F9F8', line: '#B4BEBF' });
  cm.ellipse(x, y, 11.6, 11.6, { line: '#D5DBDB', weight: 'h' });
  for (let hour = 0; hour < 12; hour++) {
    const [s, c] = [Math.sin((hour * Math.PI) / 6), Math.cos((hour * Math.PI) / 6)];
    const inner = hour % 3 === 0 ? 8.2 : 9.2;
    cm.path(`M${(x + 10.6 * s).toFixed(2)} ${(y + 10.6 * c).toFixed(2)}L${(x + inner * s).toFixed(2)} ${(y + inner * c).toFixed(2)}`, { line: '#8E9BA0', weight: 'd' });
  }
  cm.path(`M${x} ${y}L${x - 4.6} ${y + 4.4}`, { line: QUIET_INK, weight: 3, alpha: 0.8 });
  cm.path(`M${x} ${y}L${x + 7.8} ${y + 4.6}`, { line: QUIET_INK, weight: 2, alpha: 0.8 });
}
