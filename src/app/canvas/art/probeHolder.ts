import type { RoomPicture } from '../../../core/room/picture.ts';
import { holderAt } from '../../../core/room/sheath/inHolder.ts';
import { METAL_LINE, METAL_MID } from '../palette.ts';
import { applyTo, lengthFactor, scaling, shift } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';
import { DARK_SHADE } from '../pen/shades.ts';

/** A probe whose middle is this near to the ring is in it, in metres. */
const IN_CUP_M = 0.05;
/** The console's side, from the middle of the machine, where the arm of the holder is fixed, in centimetres. */
const CONSOLE_SIDE_CM = 20;

/** The pen at the ring that holds the probe, in centimetres, the machine towards +x; null where no probe hangs there at first. */
function atHolder(pen: Pen, { scenario }: RoomPicture): Pen | null {
  if (scenario.station !== 'sheath') return null;
  const { x, y } = holderAt(scenario);
  return pen.in(scaling(0.01), shift(x * 100, y * 100), scaling(x < scenario.room.machine.xM ? 1 : -1, 1));
}

/** The cradle at the machine's side. The pen's frame is in metres. */
export function paintProbeHolder(pen: Pen, picture: RoomPicture): void {
  const cm = atHolder(pen, picture);
  if (cm === null) return;
  const arm = Math.abs(picture.scenario.room.machine.xM - holderAt(picture.scenario).x) * 100 - CONSOLE_SIDE_CM;
  cm.path(`M2 -.4L${arm} -6.6L${arm + 1.6} -8.6L${arm + 1} -10L2 -2.6Z`, { fill: METAL_MID, line: METAL_LINE });
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
