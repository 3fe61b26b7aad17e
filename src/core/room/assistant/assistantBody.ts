import { length } from '../../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../../base/side.ts';
import { STEP_SECONDS } from '../../base/time.ts';
import { elbowOf, type Arm } from '../arm.ts';
import { HAND } from '../handShape.ts';
import type { AssistantDoing, Pose } from '../picture.ts';

/**
 * Size of the assistant in metres: shoulders between the female and the male mean of ANSUR II, arms likewise, seen foreshortened as the
 * operator's are.
 */
export const ASSISTANT = { shoulderM: 1.38, shoulderHalfWidthM: 0.19, eyeM: 1.55, upperArmM: 0.31 * 0.75, forearmM: 0.255 * 0.75, forearmR: 0.036 } as const;
/** From the fingertips that grip to the wrist (m). */
export const TIPS_TO_WRIST = HAND.gripU - HAND.wristU;
const LONGEST = (ASSISTANT.upperArmM + ASSISTANT.forearmM) * 0.995;

/** Walking: highest speed, how hard it starts and stops, and how fast the body bends down (m/s, m/s², m/s). */
const WALK_MPS = 1;
const WALK_MPS2 = 2.5;
const STOOP_MPS = 0.8;
/** The step slows down over this distance before its end (as a rate, 1/s). */
const ARRIVE_RATE = 4;
/** A body this near to where it goes, and as slow, is there (m, m/s). */
const THERE_M = 0.002;
/** No hand of an assistant ever moves faster (m/s); a brisk reach has 1.5. */
export const HAND_LIMIT_MPS = 2;
/** Rate at which a hand turns to where it goes (share per step). */
const TURN_BLEND = 0.07;

/** Fingertips and direction of one hand, and whether its arm is in the plane of bed and field, where it can touch. */
export interface Limb {
  x: number;
  y: number;
  c: number;
  s: number;
  inPlane: boolean;
}

/** Where the assistant is. Plain data. */
export interface AssistantState {
  torsoX: number;
  torsoV: number;
  /** How far the shoulders are lowered to reach down, in metres. */
  stoop: number;
  readonly limbs: Record<Side, Limb>;
}

/** Where fingertips rest when nothing is to be done: folded before the body. */
export const restOf = (state: Pick<AssistantState, 'torsoX' | 'stoop'>, side: Side): readonly [number, number] => [state.torsoX - signOf(side) * 0.11, 1.06 - state.stoop];

export function standingAt(x: number): AssistantState {
  const limb = (side: Side): Limb => {
    const [tipX, tipY] = restOf({ torsoX: x, stoop: 0 }, side);
    return { x: tipX, y: tipY, c: -signOf(side), s: 0, inPlane: false };
  };
  return { torsoX: x, torsoV: 0, stoop: 0, limbs: { left: limb('left'), right: limb('right') } };
}

/** Middle of the palm and direction of the fingers: the frame of a hand, as the operator's. */
export const palmOf = ({ x, y, c, s }: Limb): Pose => ({ x: x - c * HAND.gripU, y: y - s * HAND.gripU, c, s });

/** Shoulder of that side now. */
const shoulderOf = (state: AssistantState, side: Side): readonly [number, number] => [state.torsoX + signOf(side) * ASSISTANT.shoulderHalfWidthM, ASSISTANT.shoulderM - state.stoop];

/** The arm as two links from shoulder to wrist, solved as the operator's. */
export function assistantArm(state: AssistantState, side: Side): Arm {
  const { upperArmM: upper, forearmM: fore } = ASSISTANT;
  const [shoulderX, shoulderY] = shoulderOf(state, side);
  const { x, y, c, s } = state.limbs[side];
  const wristX = x - c * TIPS_TO_WRIST;
  const wristY = y - s * TIPS_TO_WRIST;
  const [elbowX, elbowY] = elbowOf(side, upper, fore, shoulderX, shoulderY, wristX, wristY);
  return { shoulderX, shoulderY, elbowX, elbowY, wristX, wristY };
}

/** Walks and bends towards a stance for one step; hands at rest come along. */
export function stepBody(state: AssistantState, goalX: number, goalStoop: number): void {
  const wanted = Math.min(WALK_MPS, Math.max(-WALK_MPS, (goalX - state.torsoX) * ARRIVE_RATE));
  const most = WALK_MPS2 * STEP_SECONDS;
  state.torsoV += Math.min(most, Math.max(-most, wanted - state.torsoV));
  state.torsoX += state.torsoV * STEP_SECONDS;
  if (Math.abs(goalX - state.torsoX) < THERE_M && Math.abs(state.torsoV) < THERE_M) {
    state.torsoX = goalX;
    state.torsoV = 0;
  }
  const bend = STOOP_MPS * STEP_SECONDS;
  state.stoop += Math.min(bend, Math.max(-bend, goalStoop - state.stoop));
}

/**
 * Brings the fingertips toward (x, y), no faster than a hand moves and no farther than the arm reaches, and turns the hand so that it
 * points along the arm. `folded` turns it as it rests.
 */
export function stepLimb(state: AssistantState, side: Side, x: number, y: number, folded: boolean): void {
  const limb = state.limbs[side];
  const [shoulderX, shoulderY] = shoulderOf(state, side);
  const aimX = folded ? -signOf(side) : x - shoulderX;
  const aimY = folded ? 0.15 : y - shoulderY + 0.22;
  const aim = Math.max(length(aimX, aimY), 1e-6);
  const c = limb.c + (aimX / aim - limb.c) * TURN_BLEND;
  const s = limb.s + (aimY / aim - limb.s) * TURN_BLEND;
  const l = Math.max(length(c, s), 1e-6);
  limb.c = c / l;
  limb.s = s / l;
  const wx = x - limb.c * TIPS_TO_WRIST - shoulderX;
  const wy = y - limb.s * TIPS_TO_WRIST - shoulderY;
  const far = length(wx, wy);
  const short = far > LONGEST ? LONGEST / far - 1 : 0;
  const dx = x + wx * short - limb.x;
  const dy = y + wy * short - limb.y;
  const d = length(dx, dy);
  const most = HAND_LIMIT_MPS * STEP_SECONDS;
  const share = d > most ? most / d : 1;
  limb.x += dx * share;
  limb.y += dy * share;
}

/** Fingertips that follow a goal, no faster than that (m/s): where they are after a step. */
export function followGoal(limb: Limb, x: number, y: number, mps: number): readonly [number, number] {
  const far = length(x - limb.x, y - limb.y);
  const share = Math.min(1, (mps * STEP_SECONDS) / Math.max(far, 1e-9));
  return [limb.x + (x - limb.x) * share, limb.y + (y - limb.y) * share];
}

/** Where to stand, and how far to bend, so that the arm on the inner side reaches (x, y) comfortably from `way` (1: from its right on the screen). */
export function stanceFor(x: number, y: number, way: number): { readonly x: number; readonly stoop: number } {
  const stoop = Math.max(0, ASSISTANT.shoulderM - y - 0.27);
  const dy = ASSISTANT.shoulderM - stoop - y;
  const aside = Math.sqrt(Math.max(0, 0.36 * 0.36 - dy * dy)) + TIPS_TO_WRIST * 0.9;
  return { x: x + way * (aside + ASSISTANT.shoulderHalfWidthM), stoop };
}

/** How far the fingertips are from the shoulder of a nearly straight arm, how near the body comes, and how far below the shoulder it reaches without bending down (m). */
const OUTSTRETCHED_M = 0.56;
const NEAR_M = 0.3;
const LOW_M = 0.27;

/** Where to stand so that a nearly straight arm reaches (x, y) from `way`, over the operator's arms. */
export function outstretched(x: number, y: number, way: number): { readonly x: number; readonly stoop: number } {
  const stoop = Math.max(0, ASSISTANT.shoulderM - y - LOW_M);
  const up = y - ASSISTANT.shoulderM + stoop;
  const aside = Math.max(NEAR_M, Math.sqrt(Math.max(0, OUTSTRETCHED_M * OUTSTRETCHED_M - up * up)));
  return { x: x + way * (aside + ASSISTANT.shoulderHalfWidthM), stoop };
}

export const copyState = (state: AssistantState): AssistantState => ({ ...state, limbs: { left: { ...state.limbs.left }, right: { ...state.limbs.right } } });

/** Both arms with their palms, for whoever looks at them. */
export interface AssistantLook {
  readonly doing: AssistantDoing;
  readonly torsoX: number;
  readonly stoop: number;
  /** Stands at its place with folded hands. */
  readonly waits: boolean;
  readonly hands: Readonly<Record<Side, Pose & Arm & { readonly inPlane: boolean }>>;
}

/** Hands are folded when this near to where they rest, in metres. */
const FOLDED_M = 0.01;

export function lookOf(state: AssistantState, homeX: number, doing: AssistantDoing = 'waiting'): AssistantLook {
  const [right, left] = SIDES.map((side) => ({ ...palmOf(state.limbs[side]), ...assistantArm(state, side), inPlane: state.limbs[side].inPlane }));
  const folded = SIDES.every((side) => {
    const [x, y] = restOf(state, side);
    return length(state.limbs[side].x - x, state.limbs[side].y - y) < FOLDED_M;
  });
  return { doing, torsoX: state.torsoX, stoop: state.stoop, waits: folded && state.torsoX === homeX && state.stoop === 0, hands: { right: right!, left: left! } };
}
