import type { RemedyId } from '../commands/command.ts';

/** A remedy under way: first the hands must be empty, still and clear of the field, then time runs, or the assistant does it. */
export interface RemedyStatus {
  readonly remedy: RemedyId;
  readonly things: readonly string[];
  readonly phase: 'waitingForHands' | 'waitingForAssistant' | 'running';
  /** 0 to 1 of its time. */
  readonly progress: number;
  /** Null where it takes as long as the assistant takes. */
  readonly secondsLeft: number | null;
}
