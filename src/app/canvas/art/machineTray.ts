import type { RoomPicture } from '../../../core/room/picture.ts';
import { layoutOf } from '../../../core/room/layout.ts';
import { METAL, METAL_LINE } from '../palette.ts';
import { scaling, shift } from '../pen/affine.ts';
import type { Pen } from '../pen/pen.ts';
import { METAL_SHADE } from '../pen/shades.ts';

/** Half the width of a tray, and how far its hooks go up to the upper edge of the screen, in centimetres. */
const HALF_CM = 4.6;
const HOOK_CM = 7.4;

/** Trays that hang on the machine's screen, where bottles stand. The pen's frame is in metres. */
export function paintMachineTrays(pen: Pen, { scenario }: RoomPicture): void {
  const { top } = layoutOf(scenario).machine;
  for (const { kind, xM } of scenario.items) {
    if (kind !== 'gelBottle') continue;
    const cm = pen.in(scaling(0.01), shift(xM * 100, top * 100));
    for (const x of [-HALF_CM + 0.8, HALF_CM - 0.8]) {
      cm.path(`M${x} -.6V${HOOK_CM}`, { line: METAL_LINE, weight: 3.4 });
      cm.path(`M${x} -.6V${HOOK_CM}`, { line: METAL, weight: 1.8 });
    }
    cm.box(-HALF_CM, -1.3, HALF_CM, 0, { fill: METAL_SHADE, line: METAL_LINE }, 0.4);
  }
}
