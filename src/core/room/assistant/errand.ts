import type { Side } from '../../base/side.ts';
import type { RequestId } from '../../commands/command.ts';
import type { HandState } from '../handState.ts';
import type { ReachPath } from './reachPath.ts';

/** What an assistant does with a hand, from coming to going; the other requests change one that is under way. */
export type ErrandKind = Extract<RequestId, 'takeCord' | 'wipeFace' | 'takeAway' | 'openPacket' | 'offerPacket' | 'bedUp' | 'bedDown'>;

/** One errand under way. Plain data. */
export interface Errand {
  readonly kind: ErrandKind;
  /** Walks to where the hand reaches from, reaches, does it, lets a held cord down, and takes the hand back. */
  phase: 'coming' | 'reaching' | 'doing' | 'lettingCordDown' | 'leaving';
  readonly arm: Side;
  /** From which side it is reached: 1 from the right of the screen, −1 from the left. */
  readonly way: 1 | -1;
  path: ReachPath | null;
  /** A detour of a clumsy reach that is still to be made, or where the cord is let down to, in metres. */
  via: readonly [number, number] | null;
  /** Node of the cord, or thing, that it is about; −1 where there is none. */
  readonly node: number;
  readonly thing: number;
  /** Step at which what is done at the goal began. */
  since: number;
  /** Cord given back toward the field so far, in metres. */
  slackM: number;
  /** Height to which the bed goes, once the hand is on its control (m above where the scenario has it). */
  bedToM: number;
  /** Pull at a held cord in newtons, averaged over about 0.1 s. */
  pullN: number;
}

/** What the assistant sees of the room in a step. */
export interface AssistantSight {
  readonly step: number;
  /** The operator's. */
  readonly hands: Readonly<Record<Side, HandState>>;
  readonly torsoX: number;
  readonly gone: readonly boolean[];
  readonly offField: readonly boolean[];
  /** Things that are still in their packets. */
  readonly packed: readonly boolean[];
}

/** What came of a step. */
export interface AssistantDeeds {
  readonly said: readonly string[];
  /** The operator's face was wiped. */
  readonly wiped: boolean;
  /** A thing was carried out of the room, or −1. */
  readonly tookAway: number;
  /** A thing has come out of its packet, or −1. */
  readonly unpacked: number;
}

/** What an errand has brought about in a step. */
export type Deed = Pick<AssistantDeeds, 'wiped' | 'tookAway' | 'unpacked'>;
