import type { ItemKind, Scenario } from '../scenario/schema.ts';
import type { Side } from '../base/side.ts';

/** How the fingers are drawn; decided by what the hand does. */
export type HandPose = 'open' | 'pinch' | 'probe' | 'syringe';

/** A position and direction: (x, y) in metres, (c, s) the cosine and sine of its angle. */
export interface Pose {
  readonly x: number;
  readonly y: number;
  readonly c: number;
  readonly s: number;
}

export interface HandPicture extends Pose {
  /** (x, y) is the middle of the palm; (c, s) points from the wrist to the fingertips. */
  readonly side: Side;
  readonly pose: HandPose;
  readonly shoulderX: number;
  readonly shoulderY: number;
  readonly elbowX: number;
  readonly elbowY: number;
  readonly wristX: number;
  readonly wristY: number;
  /** Where what it grips lies, from the middle of the palm toward the fingertips, in metres. */
  readonly gripAlong: number;
  /** Id of the held item, 'probe', a strand's id, or null. */
  readonly holds: string | null;
  /** Where the hand is asked to be. */
  readonly targetX: number;
  readonly targetY: number;
  /** Surface ids by part, newest generation. */
  readonly surfaces: Readonly<Record<'fingers' | 'palm' | 'back' | 'cuff' | 'lowerSleeve' | 'upperSleeve' | 'outerSleeve', string>>;
}

/** One arm of the assistant: (x, y) the middle of the palm, (c, s) from wrist to fingertips, then the links of the arm. */
export interface AssistantHandPicture extends Pose {
  readonly shoulderX: number;
  readonly shoulderY: number;
  readonly elbowX: number;
  readonly elbowY: number;
  readonly wristX: number;
  readonly wristY: number;
  /** In the plane of bed and field, where it can touch. */
  readonly inPlane: boolean;
}

/** What the assistant is at. */
export type AssistantDoing = 'waiting' | 'coming' | 'reaching' | 'holdingCord' | 'wipingFace' | 'takingAway' | 'leaving' | 'stopped';

export interface AssistantPicture {
  readonly doing: AssistantDoing;
  readonly torsoX: number;
  /** How far the body bends down, in metres. */
  readonly stoop: number;
  /** Stands at its place with folded hands. */
  readonly waits: boolean;
  readonly hands: Readonly<Record<Side, AssistantHandPicture>>;
}

/** A strand as a line of nodes, inner or probe end first. `surfaces[i]` is the surface id of the stretch from node i to node i + 1. */
export interface StrandPicture {
  readonly id: 'drape.right' | 'drape.left' | 'cord';
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly surfaces: readonly string[];
  /** For each node of a drape, whether it sticks to the skin. */
  readonly glued: readonly boolean[];
}

export interface ItemPicture extends Pose {
  readonly id: string;
  readonly kind: ItemKind | 'probe';
  /** Surface ids: one for most, barrel and needle for a needle syringe, sheath for the probe. */
  readonly surfaces: readonly string[];
  readonly heldBy: Side | null;
  /** In the bin or taken away. */
  readonly gone: boolean;
  /** 0 full … 1 emptied (gel, anaesthetic). */
  readonly used: number;
}

/** How a surface is shown: plain, hatched, cross-hatched, dotted. */
export type SurfaceMark = 'sterile' | 'unsterile' | 'became' | 'prepared';

/** All that is needed to draw one instant; plain data, copied out of the run, so two of them can be blended. */
export interface RoomPicture {
  readonly step: number;
  readonly scenario: Scenario;
  /** How far the operator has stepped aside from x = 0. */
  readonly torsoX: number;
  readonly hands: Readonly<Record<Side, HandPicture>>;
  readonly assistant: AssistantPicture;
  readonly strands: readonly StrandPicture[];
  readonly items: readonly ItemPicture[];
  /** Outline of the patient's hump, counter-clockwise, in metres (moves when the patient does). */
  readonly patientOutline: readonly (readonly [number, number])[];
  /** Skin stretches along the top of the hump: from, to as indices into skinX/skinY, with surface ids. */
  readonly skinX: Float64Array;
  readonly skinY: Float64Array;
  readonly skinSurfaces: readonly string[];
  /** Gel on the site, 0 to 1. */
  readonly gelOnSite: number;
  /** Where the cord is plugged in (it may be pulled). */
  readonly outletX: number;
  readonly outletY: number;
  /** Level that hands must stay above, at a row of x positions. */
  readonly levelX: Float64Array;
  readonly levelY: Float64Array;
  /** Surface ids of fixed things: rail.left, rail.right, pole, machine, bed, floor, kitTable, tableEdge, bin, face, gownFront. */
  readonly fixed: Readonly<Record<string, string>>;
  readonly marks: ReadonlyMap<string, SurfaceMark>;
}
