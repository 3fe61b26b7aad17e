import { length } from '../base/portableMath.ts';
import { otherSide, SIDES, signOf, type Side } from '../base/side.ts';
import type { Scenario } from '../scenario/schema.ts';
import { hasGownTable } from '../scenario/station.ts';
import { HAND } from './handShape.ts';
import type { HandState } from './handState.ts';

/** How far the operator can step to either side, and how fast (m, m/s). */
const STEP_ASIDE_M = 1.05;
const STEP_SPEED_MPS = 0.6;
/** From a place of work that is not the middle of the bed (m); whoever needs the gown table gets to it. */
const STEP_FROM_HOME_M = 0.5;
/** Share of the whole arm that is used before the operator steps aside. */
const COMFORT = 0.97;

export interface Arm {
  readonly shoulderX: number;
  readonly shoulderY: number;
  readonly elbowX: number;
  readonly elbowY: number;
  readonly wristX: number;
  readonly wristY: number;
}

/** Lengths of the arm's links as seen in this plane: a real arm also reaches toward the viewer (design: foreshortened to 0.75). */
function linksOf(scenario: Scenario): { upper: number; fore: number } {
  const { upperArmM, forearmM, foreshortening } = scenario.operator;
  return { upper: upperArmM * foreshortening, fore: forearmM * foreshortening };
}

/** Where an elbow hangs when nothing pulls it: outward and down from the shoulder (m), as people work at a table; common practice. */
const HANG_OUT_M = 0.12;
const HANG_DOWN_M = 0.215;

/**
 * Elbow of an arm from shoulder to wrist. While the wrist is near enough, the elbow hangs beside the body and the forearm reaches
 * partly toward the viewer; farther out both links are stretched as far as this plane shows them, and the elbow is the outer
 * intersection of their circles (textbook two-link inverse kinematics). Out of reach the arm is straight.
 */
export function solveArm(scenario: Scenario, side: Side, torsoX: number, palmX: number, palmY: number, c: number, s: number): Arm {
  const { upper, fore } = linksOf(scenario);
  const shoulderX = torsoX + signOf(side) * scenario.operator.shoulderHalfWidthM;
  const shoulderY = scenario.operator.shoulderM;
  const wristX = palmX + c * HAND.wristU;
  const wristY = palmY + s * HAND.wristU;
  const [elbowX, elbowY] = elbowOf(side, upper, fore, shoulderX, shoulderY, wristX, wristY);
  return { shoulderX, shoulderY, elbowX, elbowY, wristX, wristY };
}

/** Elbow of an arm whose links are so long in this plane (m), as told above. */
export function elbowOf(side: Side, upper: number, fore: number, shoulderX: number, shoulderY: number, wristX: number, wristY: number): readonly [number, number] {
  const hang = upper / length(HANG_OUT_M, HANG_DOWN_M);
  const hangX = shoulderX + signOf(side) * HANG_OUT_M * hang;
  const hangY = shoulderY - HANG_DOWN_M * hang;
  if (length(wristX - hangX, wristY - hangY) <= fore) return [hangX, hangY];
  const dx = wristX - shoulderX;
  const dy = wristY - shoulderY;
  const d = Math.max(length(dx, dy), 1e-6);
  const along = Math.min(upper, Math.max(-upper, (d * d + upper * upper - fore * fore) / (2 * d)));
  const out = Math.sqrt(Math.max(0, upper * upper - along * along));
  // Of the two intersections the one nearer to where the elbow hangs: the arm does not flip over.
  const elbows = [1, -1].map((turn): readonly [number, number] => [shoulderX + (dx * along - turn * dy * out) / d, shoulderY + (dy * along + turn * dx * out) / d]);
  const gap = ([x, y]: readonly [number, number]): number => length(x - hangX, y - hangY);
  return gap(elbows[0]!) <= gap(elbows[1]!) ? elbows[0]! : elbows[1]!;
}

/**
 * Moves the torso at walking pace so that the hand that is being moved comes into reach. A hand that holds something keeps its place
 * and the other reaches no farther than that allows; an empty one comes along. `homeX` is where the operator stands when both are in reach.
 */
export function stepTorso(scenario: Scenario, homeX: number, torsoX: number, hands: Readonly<Record<Side, HandState>>, moving: Side, seconds: number): number {
  const { upper, fore } = linksOf(scenario);
  const reach = (upper + fore) * COMFORT;
  const aside = Math.max(STEP_ASIDE_M, Math.abs(homeX) + STEP_FROM_HOME_M, hasGownTable(scenario) ? Math.abs(scenario.gown.table.xM) : 0);
  let low = -aside;
  let high = aside;
  for (const side of hands[otherSide(moving)].hold ? SIDES : [moving]) {
    const hand = hands[side];
    const wristX = hand.wishX + signOf(side) * 0.8 * -HAND.wristU;
    const dy = hand.wishY + 0.02 - scenario.operator.shoulderM;
    const width = Math.sqrt(Math.max(0.0025, reach * reach - dy * dy));
    const base = wristX - signOf(side) * scenario.operator.shoulderHalfWidthM;
    low = Math.max(low, Math.min(aside, base - width));
    high = Math.min(high, Math.max(-aside, base + width));
  }
  const goal = low > high ? (low + high) / 2 : Math.min(high, Math.max(low, homeX));
  const most = STEP_SPEED_MPS * seconds;
  return torsoX + Math.min(most, Math.max(-most, goal - torsoX));
}

/** Nearest point to the wanted palm position that the arm can reach; a hand cannot leave its arm. */
export function withinReach(scenario: Scenario, side: Side, torsoX: number, palmX: number, palmY: number, c: number, s: number): readonly [number, number] {
  const { upper, fore } = linksOf(scenario);
  const sx = torsoX + signOf(side) * scenario.operator.shoulderHalfWidthM;
  const sy = scenario.operator.shoulderM;
  const wx = palmX + c * HAND.wristU - sx;
  const wy = palmY + s * HAND.wristU - sy;
  const d = length(wx, wy);
  const most = (upper + fore) * 0.995;
  if (d <= most) return [palmX, palmY];
  return [palmX + (wx * most) / d - wx, palmY + (wy * most) / d - wy];
}
