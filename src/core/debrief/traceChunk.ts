import type { Side } from '../base/side.ts';
import type { Fact } from '../ledger/fact.ts';
import type { ClearanceThing } from '../room/clearanceThings.ts';
import type { RunResult } from '../run/result.ts';
import type { PackedColumns } from './columns.ts';
import type { PictureForm } from './pictureForm.ts';

/** Poses are kept every so many steps: 30 times a second. */
export const SAMPLE_STEPS = 4;

/** What a clearance is kept of. */
export interface ClearanceName {
  readonly side: Side;
  readonly thing: ClearanceThing;
}

/** A stretch of a run, about two seconds, as it goes from the thread that plays it to the one that shows it. */
export interface TraceChunk {
  /** Steps of its samples, rising. */
  readonly sampleSteps: readonly number[];
  /** One row for each sample: clearances in the order of their names, then the numbers of the picture; shorter rows end in zeros. */
  readonly numbers: PackedColumns;
  /**
   * Forms of the pictures, each from a sample on (a place in `sampleSteps`), the first from 0; `count` numbers belong to it. Null: the
   * last form of the chunk before goes on.
   */
  readonly forms: readonly { readonly from: number; readonly form: PictureForm | null; readonly count: number }[];
  readonly clearances: readonly ClearanceName[];
  /** Facts of the steps since the chunk before; with the first one also those from before the run. */
  readonly facts: readonly Fact[];
  /** Steps done when it was closed. */
  readonly steps: number;
  /** What the run had come to by then. */
  readonly result: RunResult;
}
