import type { Side } from '../base/side.ts';
import type { ClearanceThing } from '../room/clearanceThings.ts';
import type { RoomPicture, SurfaceMark } from '../room/picture.ts';
import type { Scenario } from '../scenario/schema.ts';

/** Way of the middle of a palm, one point for each sample (every 4 steps), in metres. */
export interface HandPath {
  readonly steps: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Closest approach of one hand and its forearm to one unsterile thing, one value for each sample (every 4 steps), in metres. */
export interface ClearanceSeries {
  readonly side: Side;
  readonly thing: ClearanceThing;
  readonly steps: Float64Array;
  /** 0 in touch; Infinity beyond 0.3 m. */
  readonly metres: Float64Array;
}

/** Where a palm has been: seconds spent in each square cell. */
export interface HeatMap {
  readonly cellM: number;
  /** Lower corner of the first cell, in metres. */
  readonly x: number;
  readonly y: number;
  readonly columns: number;
  readonly rows: number;
  /** Row by row from below. */
  readonly seconds: Float64Array;
}

/**
 * The room of a run at any instant, as far as it has been played. Poses are kept 30 times a second to 0.05 mm and blended between;
 * what is sterile is exact for every step.
 */
export interface TraceView {
  readonly scenario: Scenario;
  /** Last step that can be shown; −1 before there is one. */
  readonly lastStep: number;
  /** The room once step floor(step) is done, moved on by the fraction; clamped to what there is. */
  pictureAt(step: number): RoomPicture;
  marksAt(step: number): ReadonlyMap<string, SurfaceMark>;
  handPath(side: Side, fromStep?: number, toStep?: number): HandPath;
  /** Cells of 2 cm. */
  heatMap(side: Side, fromStep?: number, toStep?: number): HeatMap;
  /** Empty when the run does not say. */
  clearances(): readonly ClearanceSeries[];
}
