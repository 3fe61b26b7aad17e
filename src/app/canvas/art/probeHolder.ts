import type { RoomPicture } from '../../../core/room/picture.ts';
import { layoutOf } from '../../../core/room/layout.ts';
import { METAL_LINE } from '../palette.ts';
import { applyTo, lengthFactor, scaling, shift } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';
import { DARK_SHADE } from '../pen/shades.ts';

/** How far below the top of the machine the probe hangs, and how far the ring stands out from its side, in metres. */
const BELOW_TOP_M = 0.05;
const OUT_M = 0.035;
/** A probe whose middle is this near to the ring is in it, in metres. */
const IN_CUP_M = 0.05;

/** The pen at the ring that holds the probe, in centimetres, the machine towards +x; null where no probe hangs there at first. */
function atHolder(pen: Pen, { scenario }: RoomPicture): Pen | null {
  if (scenario.station !== 'sheath') return null;
  const { machine } = layoutOf(scenario);
  const { xM, outletXM } = scenario.room.machine;
  const left = outletXM <= xM;
  const x = left ? machine.left - OUT_M : machine.right + OUT_M;
  return pen.in(scaling(0.01), shift(x * 100, (machine.top - BELOW_TOP_M) * 100), scaling(left ? 1 : -1, 1));
}

/** The cradle at the machine's side. The pen's frame is in metres. */
export function paintProbeHolder(pen: Pen, picture: RoomPicture): void {
  const cm = atHolder(pen, picture);
  if (cm === null) return;
  cm.path('M-.5 1.6H2.4V-3.4H-.5Z', { fill: DARK_SHADE, line: METAL_LINE });
  cm.ellipse(0, 0, 3.3, 1.1, { fill: '#323C43', line: METAL_LINE });
  paintCup(cm);
}

/** The front of its cup once more, over a probe that hangs in it. The pen's frame is in metres. */
export function paintHolderBefore(pen: Pen, picture: RoomPicture): void {
  const cm = atHolder(pen, picture);
  if (cm === null) return;
  const [x, y] = [cm.map[4], cm.map[5]];
  const hangsIn = picture.items.some((item) => {
    const [px, py] = applyTo(pen.map, item.x, item.y);
    return item.kind === 'probe' && item.heldBy === null && Math.hypot(px - x, py - y) < IN_CUP_M * lengthFactor(pen.map);
  });
  if (hangsIn) paintCup(cm);
}

function paintCup(cm: Pen): void {
  cm.path('M-3.3 0C-2.4 -1.5 2.4 -1.5 3.3 0L2.8 -3.2C1.6 -4.4 -1.6 -4.4 -2.8 -3.2Z', { fill: DARK_SHADE, line: METAL_LINE });
  cm.path('M-2.9 -.9C-2 -2 2 -2 2.9 -.9', { line: '#8A969E', weight: 'h' });
}
