import type { Side } from '../../core/base/side.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { MarkOf } from './art/marks.ts';
import type { HandMotion } from './hand/handMotion.ts';
import type { Pen } from './pen/pen.ts';
import type { Lens } from './lens.ts';
import type { Labels } from './labels/labels.ts';
import type { PictureCache } from './pictureCache.ts';
import type { UltrasoundScreen } from './art/ultrasoundScreen.ts';

/** All that the layers of one frame are drawn from. */
export interface Frame {
  /** In metres of the room. */
  readonly pen: Pen;
  readonly picture: RoomPicture;
  readonly markOf: MarkOf;
  readonly shown: boolean;
  readonly activeHand: Side;
  readonly nowMs: number;
  readonly camera: Lens;
  readonly motion: Readonly<Record<Side, HandMotion>>;
  readonly labels: Labels;
  readonly slowLabels: boolean;
  readonly cache: PictureCache;
  readonly ultrasound: UltrasoundScreen;
}
