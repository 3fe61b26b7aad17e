import type { RemedyId } from '../commands/command.ts';

/** A remedy under way: first the hands must be empty, still and clear of the field, then time runs. */
export interface RemedyStatus {
  readonly remedy: RemedyId;
  readonly things: readonly string[];
  readonly phase: 'waitingForHands' | 'running';
  /** 0 to 1 of its time. */
  readonly progress: number;
  readonly secondsLeft: number;
}
