import type { Mark } from '../ledger/Ledger.ts';

/** A touch of the thing that is followed; `toStep` is the end of the log while it lasts. */
export interface FollowedTouch {
  readonly touch: number;
  readonly fromStep: number;
  readonly toStep: number;
  /** Its own part, and what it met. */
  readonly surface: string;
  readonly surfaceWords: string;
  readonly other: string;
  readonly otherWords: string;
  readonly x: number;
  readonly y: number;
  /** Its own state when the touch began and when that step was over: the touch may have changed it. */
  readonly before: Mark;
  readonly after: Mark;
  readonly spoils: boolean;
}

/** How it is shown from a step until before another. For a whole thing: 'became' as soon as one part did. */
export interface StateInterval {
  readonly fromStep: number;
  readonly toStep: number;
  readonly mark: Mark;
}

/** One surface or one thing through the run. */
export interface Followed {
  readonly words: string;
  readonly touches: readonly FollowedTouch[];
  readonly intervals: readonly StateInterval[];
}

/** What can be followed: a thing in all its generations ("left glove": `glove.left#1`, `glove.left#2`). */
export interface Followable {
  /** The thing without its generation: `glove.left`. */
  readonly object: string;
  readonly words: string;
  readonly touches: number;
  readonly spoiled: boolean;
}
