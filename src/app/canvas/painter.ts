import type { Side } from '../../core/base/side.ts';
import type { NextHold } from '../../core/procedure/nextHold.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { LensData } from './lens.ts';

/** How the room is to be looked at. */
export interface StageView {
  /** Hand that is outlined and lies on top, or null when none is led. */
  readonly activeHand: Side | null;
  /** Whether the patterns of sterility are shown. */
  readonly shown: boolean;
  /** Where hands grip and go next; nothing is marked while there are none. */
  readonly holds?: readonly NextHold[];
  /** Labels look for new places less often. */
  readonly slowLabels?: boolean;
  /** Whether things are named; they are unless this is false. */
  readonly named?: boolean;
  /** Pointer that leads the active hand, in CSS pixels from the upper left corner of the host; none while nothing does. */
  readonly pointer?: { readonly x: number; readonly y: number } | null;
}

/** All that one frame is painted from; plain data, so that it can be sent to another thread. */
export interface Shot extends LensData, StageView {
  /** What is seen lies between these two, 0 at the previous and 1 at the current one. */
  readonly previous: RoomPicture;
  readonly current: RoomPicture;
  readonly blend: number;
  /** Device pixels per CSS pixel. */
  readonly density: number;
  readonly nowMs: number;
}

/** What fills the canvas of a stage. */
export interface Painter {
  readonly canvas: HTMLCanvasElement;
  readonly renderer: 'canvas' | 'webgl';
  /** False while it has enough to do: a shot that is taken now would be late. */
  readonly ready: boolean;
  paint(shot: Shot): void;
  destroy(): void;
}
