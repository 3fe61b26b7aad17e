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
export type AssistantDoing = 'waiting' | 'coming' | 'reaching' | 'holdingCord' | 'wipingFace' | 'takingAway' | 'bringingProbe' | 'overMouth' | 'lowering' | 'supportingCord' | 'pullingTail' | 'lettingCordDown' | 'openingPacket' | 'offeringItem' | 'movingBed' | 'tyingGown' | 'holdingCard' | 'pullingGlove' | 'openingGlove' | 'leaving' | 'stopped';

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
  /** `pocket` is the opened sheath, from one edge of its mouth down to the closed end and up to the other; there only while it is open; `gown` one side of the open gown from shoulder to hem, likewise, `sleeve` the empty part of its sleeve down to the cuff. */
  readonly id: 'drape.right' | 'drape.left' | 'cord' | 'pocket' | 'gown.right' | 'gown.left' | 'sleeve.right' | 'sleeve.left';
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly surfaces: readonly string[];
  /** For each node of a drape, whether it sticks to the skin. */
  readonly glued: readonly boolean[];
}

export interface ItemPicture extends Pose {
  readonly id: string;
  readonly kind: ItemKind | 'probe' | 'sheathRoll' | 'gownPacket' | 'glove' | 'tieCard';
  /** Surface ids: one for most, barrel and needle for a needle syringe, sheath for the probe. */
  readonly surfaces: readonly string[];
  readonly heldBy: Side | null;
  /** In the bin or taken away. */
  readonly gone: boolean;
  /** 0 full … 1 emptied (gel, anaesthetic). */
  readonly used: number;
  /** What covers the probe; null for other things and while it is bare. */
  readonly dress: ProbeDress | null;
}

/** The film on the probe. Distances from the middle of its face along its outline toward the cord, in metres. */
export interface ProbeDress {
  readonly bands: readonly number[];
  /** Air under the film: where its middle lies and how long it is. */
  readonly bubbles: readonly { readonly at: number; readonly lengthM: number }[];
  readonly torn: boolean;
}

/** One arm on its way into sleeve and glove. Lengths in metres. */
export interface ArmDressPicture {
  /** Arm in the sleeve from the fingertips on; 0 while it is bare. */
  readonly inM: number;
  /** From the fingertips to the end of the cuff, negative once they are past. */
  readonly toCuffM: number;
  readonly glove: 'away' | 'lying' | 'taken' | 'laid' | 'over' | 'entered' | 'on';
  /** Sleeve under the glove, and how far the hand is in it. */
  readonly overlapM: number;
  readonly advanceM: number;
}

/** Cloth as it is seen from the operator's side: distance before the shoulders and height of each node, from the top on (m). */
export interface LineFromSide {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Where hem or sleeves are nearest to the clothes before which they hang: distance before the shoulders, height, and how near (m). */
export interface NearestFromSide {
  readonly x: number;
  readonly y: number;
  readonly gapM: number;
}

/** The open gown from the operator's side. */
export interface GownFromSide {
  readonly cloth: readonly { readonly side: Side; readonly edge: LineFromSide; readonly sleeve: LineFromSide }[];
  /** Null where hem and sleeves hang before nothing. */
  readonly nearest: NearestFromSide | null;
}

/** Gown and gloves while they are put on. */
export interface GownPicture {
  readonly arms: Readonly<Record<Side, ArmDressPicture>>;
  readonly tied: boolean;
  /** Somebody who passes by, or null. */
  readonly personX: number | null;
  /** Null while no hand holds it open. */
  readonly fromSide: GownFromSide | null;
  readonly surfaces: { readonly clothes: string; readonly table: string; readonly tableSide: string; readonly hem: string; readonly person: string };
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
  /** How far the bed is above where the scenario has it (m). */
  readonly bedUpM: number;
  /** Outline of the patient's hump, counter-clockwise, in metres (moves when the patient does). */
  readonly patientOutline: readonly (readonly [number, number])[];
  /** Skin stretches along the top of the hump: from, to as indices into skinX/skinY, with surface ids. */
  readonly skinX: Float64Array;
  readonly skinY: Float64Array;
  readonly skinSurfaces: readonly string[];
  /** Gel on the site, 0 to 1. */
  readonly gelOnSite: number;
  /** Length of cord under the film, from the probe (m). */
  readonly coveredM: number;
  /** Gel in the closed end of an opened sheath (mL). */
  readonly gelInSheathMl: number;
  /** Rest of the film that is still folded at the open end (m). */
  readonly foldedM: number;
  /** Outlines of hands that hold the mouth of the sheath have their fingers under its fold. */
  readonly fingersInFold: readonly Side[];
  /** How far gown and gloves are on; null where they are on from the start. */
  readonly gown: GownPicture | null;
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
