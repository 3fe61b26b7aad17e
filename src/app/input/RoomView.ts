import type { Side } from '../../core/base/side.ts';
import type { Point } from './followPointer.ts';

/** What the controls must know of the drawn room: where things are on the screen, and how to look closer. Screen points are client pixels. */
export interface RoomView {
  toRoom(clientX: number, clientY: number): Point;
  /** Where the hand is now, in metres. */
  handAt(side: Side): Point;
  /** False while a test makes the steps: then the speed of the pointer says nothing. */
  inRealTime(): boolean;
  zoom(factor: number, clientX: number, clientY: number): void;
  pan(dxPx: number, dyPx: number): void;
}

export const distance = (a: Point, b: Point): number => Math.sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
