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
    /** Gel and no air lie between its face and the film. */
    readonly coupled: boolean;
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

/** How the sheath is: lying folded, held folded, opened in a hand, on the probe. */
export type SheathState = 'lying' | 'held' | 'open' | 'on';

/** What can be seen of the sheath and its probe at the end of a step. Lengths in metres, gel in millilitres. */
export interface SheathObservation {
  readonly step: number;
  readonly sheath: SheathState;
  /** Part of a loose sheath that is gathered, 0 to 1; 1 where it is telescoped. */
  readonly gathered: number;
  /** Gel in the closed end, from sterile packets and from anything else. */
  readonly gelMl: number;
  /** What is on its way there from sterile packets. */
  readonly gelComingMl: number;
  readonly otherGelMl: number;
  readonly probe: {
    /** The assistant has it by its cord. */
    readonly withAssistant: boolean;
    /** The assistant was told to stop on the way with it, and goes on when asked again. */
    readonly stopped: 'bringing' | 'lowering' | null;
    /** It hangs over the open mouth of the sheath. */
    readonly overMouth: boolean;
    /** Its face is inside the sheath. */
    readonly inside: boolean;
    /** Hand that holds it through the film. */
    readonly heldThrough: Side | null;
    /** Nobody holds it, it lies on the sterile part of the field and does not move. */
    readonly lyingOnField: boolean;
  };
  /** Length of cord under the film, and what the sheath could cover. */
  readonly coveredM: number;
  readonly coverableM: number;
  /** A hand or the assistant holds the open end. */
  readonly endHeld: boolean;
  /** Part of the probe's face that sees no picture for air or want of gel, 0 to 1; 1 while the sheath is not on. */
  readonly faceSpoiled: number;
  /** Bands that sit where they hold: behind the head, and along the handle or the cord. */
  readonly bands: { readonly head: boolean; readonly cord: boolean };
  readonly torn: boolean;
  /** The assistant has the cord in hand, and lets go of it before anything else can be done. */
  readonly cordHeld: boolean;
}

/** What can be seen of loading the probe into its sheath. */
export interface LoadingObservation extends SheathObservation {
  /** Ids of what lies off the field. */
  readonly dropped: readonly string[];
  /** Ids of what is still in its packet with the assistant, and of what is used up. */
  readonly packed: readonly string[];
  readonly used: readonly string[];
}

/** How the gown is: lying folded, carried folded, fallen open in the hands, dropped, on the arms, tied at the back. */
export type GownState = 'lying' | 'carried' | 'open' | 'dropped' | 'onArms' | 'tied';
/** How a glove is: pulled off with no new one there yet, lying, taken up, laid on the palm of its hand, drawn over the cuff, open to a bare hand that is on its way in, on with the hand in its fingers. */
export type GloveState = 'away' | 'lying' | 'taken' | 'laid' | 'over' | 'entered' | 'on';

/** What can be seen of gowning and gloving at the end of a step. Lengths in metres. */
export interface GownObservation {
  readonly step: number;
  readonly gown: GownState;
  /** Hands at the shoulders of the open gown. */
  readonly holding: Readonly<Record<Side, boolean>>;
  /** The hem hangs free, and its lowest part is this high. */
  readonly hemM: number;
  /** Least distance of hem and empty sleeves from the clothes before which they hang; null where they hang before nothing. */
  readonly clothesGapM: number | null;
  /** From each fingertip to the end of its cuff; negative once it is past. Null while the arm is not in the sleeve. */
  readonly toCuffM: Readonly<Record<Side, number | null>>;
  /** Bare hands that are out of their cuffs, and go into a glove by the open method only. */
  readonly isOut: Readonly<Record<Side, boolean>>;
  readonly gloves: Readonly<Record<Side, GloveState>>;
  /** Length of sleeve under each glove that is drawn over. */
  readonly overlapM: Readonly<Record<Side, number>>;
  /** The tie card: not there yet, hanging in front, in the operator's hand, in the assistant's as well, given back and tied. */
  readonly card: 'away' | 'hanging' | 'held' | 'passed' | 'tied';
  /** Both hands together in front, above the waist and below the face. */
  readonly handsTogether: boolean;
  /** The assistant ties the back or goes for the card, or comes to it. */
  readonly isHelped: boolean;
}

/** What can be seen of all stations of a run. */
export interface Observation {
  /** Null where the operator is gowned from the start and no glove is changed by hand. */
  readonly gown: GownObservation | null;
  readonly field: FieldObservation;
  /** Null where no sheath is loaded in the run. */
  readonly sheath: LoadingObservation | null;
}

export const GOWN_TASKS = ['opened', 'armsIn', 'tied', 'firstGlove', 'secondGlove', 'turned', 'waited'] as const;
export const SHEATH_TASKS = ['gelInside', 'probeTaken', 'covered', 'airOut', 'banded', 'laidDown'] as const;
export const FIELD_TASKS = ['gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish'] as const;
export type GownTaskId = (typeof GOWN_TASKS)[number];
export type SheathTaskId = (typeof SHEATH_TASKS)[number];
export type FieldTaskId = (typeof FIELD_TASKS)[number];
export type TaskId = GownTaskId | SheathTaskId | FieldTaskId;

export interface TaskReport {
  readonly task: TaskId;
  readonly critical: boolean;
  readonly doneStep: number | null;
  /** Done before something that should have come first; names that task. */
  readonly outOfOrderAfter: TaskId | null;
  /** Part done so far, 0 to 1 (seconds held of seconds asked). */
  readonly progress: number;
}

/** How far the work of a run has come, over all its stations. */
export interface Progress {
  /** Of the first station first. */
  readonly tasks: readonly TaskReport[];
  readonly current: TaskId | 'finished';
  /** One line for the operator: what to do now. */
  readonly hint: string;
  /** Fraction of the time at the site in which the probe was steady, or null before it was there. */
  readonly steadyShare: number | null;
  readonly sharpsBinned: readonly string[];
}
