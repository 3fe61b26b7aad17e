import type { Side } from '../../core/base/side.ts';
import type { NextHold } from '../../core/procedure/nextHold.ts';
import type { RoomPicture } from '../../core/room/picture.ts';
import type { Framing } from '../input/keyMap.ts';

/** Draws one hand with what it holds into a small canvas. */
export type DrawHand = (canvas: HTMLCanvasElement, picture: RoomPicture, side: Side, look: { readonly active: boolean; readonly shown: boolean }) => void;

/** A point on the drawn room, in CSS pixels from its upper left corner. */
export interface StagePoint {
  readonly x: number;
  readonly y: number;
}

/** A part of the room that is to be seen whole, in metres. */
export interface RoomPart {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** How the room is drawn. */
export interface StageLook {
  readonly activeHand: Side | null;
  readonly shown: boolean;
  readonly named?: boolean;
  readonly pointer?: StagePoint | null;
  /** Where hands grip and go next, where that is marked. */
  readonly holds?: readonly NextHold[];
}

/** What the pages need of the drawn room. */
export interface StagePort {
  draw(previous: RoomPicture, current: RoomPicture, blend: number, look: StageLook): void;
  roomToScreen(x: number, y: number): StagePoint;
  screenToRoom(x: number, y: number): StagePoint;
  zoom(factor: number, x: number, y: number): void;
  pan(dx: number, dy: number): void;
  fit(framing: Framing | RoomPart): void;
  readonly drawHand: DrawHand;
  destroy(): void;
}

/** Puts a stage into an element. */
export type MountStage = (host: HTMLElement, shown: boolean) => Promise<StagePort>;
