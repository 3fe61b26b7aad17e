import type { Side } from '../../core/base/side.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { PlacedHold } from '../../core/room/placedHold.ts';
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
  /** Hand that is outlined and lies on top, or null when none is led. */
  readonly activeHand: Side | null;
  /** Whether things are named. */
  readonly named: boolean;
  /** Places where hands grip and go next. */
  readonly holds: readonly PlacedHold[];
  readonly nowMs: number;
  readonly camera: Lens;
  readonly motion: Readonly<Record<Side, HandMotion>>;
  readonly labels: Labels;
  readonly slowLabels: boolean;
  readonly cache: PictureCache;
  readonly ultrasound: UltrasoundScreen;
}
