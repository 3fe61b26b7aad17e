import { bedControl } from '../../../core/room/assistant/bedControl.ts';
import { layoutOf } from '../../../core/room/layout.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { HUB, METAL_DARK, METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';

/** The keys by which an adjustable bed is raised and lowered, one set at each side. The pen's frame is in metres. */
export function paintBedControls(pen: Pen, { scenario, bedUpM }: RoomPicture): void {
  if (!scenario.room.bed.adjustable) return;
  const layout = layoutOf(scenario, bedUpM);
  for (const side of [1, -1] as const) {
    const [x, y] = bedControl(layout, side);
    const cm = pen.in(scaling(0.01), shift(x * 100, y * 100), scaling(side, 1));
    cm.path('M-7 1H0', { line: METAL_LINE, weight: 3 });
    cm.path('M-7 1H0', { line: METAL_DARK, weight: 1.6 });
    cm.box(-2, -4, 2, 4, { fill: '#EEF0EF', line: METAL_LINE }, 0.8);
    cm.path('M-1.1 .8L0 2.6L1.1 .8Z', { fill: HUB, line: METAL_LINE, weight: 'h' });
    cm.path('M-1.1 -.8L0 -2.6L1.1 -.8Z', { fill: HUB, line: METAL_LINE, weight: 'h' });
  }
}
