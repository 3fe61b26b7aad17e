import type { Side } from '../base/side.ts';

/**
 * What can be seen of the work at the end of a step: plain facts measured in the room, from which the station's state machine
 * judges order, completeness and steadiness. Distances in metres, speeds in metres per second.
 */
export interface FieldObservation {
  readonly step: number;
  /** Gel on the site, 0 to 1. */
  readonly gelOnSite: number;
  readonly probe: {
    readonly heldBy: Side | null;
    /** Its face lies on the skin of the site, through the sheath, within 30 degrees of upright. */
    readonly atSite: boolean;
    readonly speed: number;
    /** Nobody holds it, it lies on the sterile part of the field and does not move. */
    readonly lyingOnField: boolean;
  };
  readonly needle: { readonly heldBy: Side | null; readonly tipToSite: number; readonly speed: number };
  /** Local anaesthetic given at the site, 0 to 1. */
  readonly anaesthetic: number;
  /** Ids of rubbish items not yet in the bin, and of everything that is in it. */
  readonly rubbishLeft: readonly string[];
  readonly binned: readonly string[];
  /** Ids of sharps that were thrown into the bin. */
  readonly sharpsBinned: readonly string[];
  readonly dropped: readonly string[];
}

export type TaskId = 'gel' | 'view' | 'park' | 'anaesthetic' | 'ready' | 'rubbish';

export interface TaskReport {
  readonly task: TaskId;
  readonly critical: boolean;
  readonly doneStep: number | null;
  /** Done before something that should have come first; names that task. */
  readonly outOfOrderAfter: TaskId | null;
  /** Part done so far, 0 to 1 (seconds held of seconds asked). */
  readonly progress: number;
}

export interface FieldProgress {
  readonly tasks: readonly TaskReport[];
  readonly current: TaskId | 'finished';
  /** One line for the operator: what to do now. */
  readonly hint: string;
  /** Fraction of the time at the site in which the probe was steady, or null before it was there. */
  readonly steadyShare: number | null;
  readonly sharpsBinned: readonly string[];
}
