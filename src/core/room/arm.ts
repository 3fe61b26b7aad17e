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
/** Share of it that is reached at the most. */
const MOST = 0.995;
/** To either side of a shoulder within which the hand is raised rather than the operator steps (m); our own. */
const OVERHEAD_M = 0.05;

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
 * intersection of their circles (textbook two-link inverse kinematics). Out of reach the arm is straight; raised out of the plane of bed
 * and tables it shows more of its length.
 */
export function solveArm(scenario: Scenario, side: Side, torsoX: number, palmX: number, palmY: number, c: number, s: number): Arm {
  const { upper, fore } = linksOf(scenario);
  const shoulderX = torsoX + signOf(side) * scenario.operator.shoulderHalfWidthM;
  const shoulderY = scenario.operator.shoulderM;
  const wristX = palmX + c * HAND.wristU;
  const wristY = palmY + s * HAND.wristU;
  const shows = Math.min(1 / scenario.operator.foreshortening, Math.max(1, length(wristX - shoulderX, wristY - shoulderY) / (upper + fore)));
  const [elbowX, elbowY] = elbowOf(side, upper * shows, fore * shows, shoulderX, shoulderY, wristX, wristY);
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
    const width = Math.sqrt(Math.max(OVERHEAD_M * OVERHEAD_M, reach * reach - dy * dy));
    const base = wristX - signOf(side) * scenario.operator.shoulderHalfWidthM;
    low = Math.max(low, Math.min(aside, base - width));
    high = Math.min(high, Math.max(-aside, base + width));
  }
  const goal = low > high ? (low + high) / 2 : Math.min(high, Math.max(low, homeX));
  const most = STEP_SPEED_MPS * seconds;
  return torsoX + Math.min(most, Math.max(-most, goal - torsoX));
}

/**
 * How far a wrist is before the shoulders (m). Hands work in the plane of bed and tables, where the arm is foreshortened as design 3
 * has it; one that is raised higher than that allows comes back over its shoulder on a straight arm (Pythagoras).
 */
export function depthOf({ operator }: Scenario, { shoulderX, shoulderY, wristX, wristY }: Arm): number {
  const whole = operator.upperArmM + operator.forearmM;
  const seen = Math.min(whole, Math.max(whole * operator.foreshortening, length(wristX - shoulderX, wristY - shoulderY)));
  return Math.sqrt(whole * whole - seen * seen);
}

/**
 * Nearest point to the wanted palm position that the arm can reach; a hand cannot leave its arm. A hand that `isLifting` is not bound to
 * the plane of bed and tables: straight up over its shoulder it gets as far as the arm is long.
 */
export function withinReach(scenario: Scenario, side: Side, torsoX: number, palmX: number, palmY: number, c: number, s: number, isLifting: boolean): readonly [number, number] {
  const { upper, fore } = linksOf(scenario);
  const sx = torsoX + signOf(side) * scenario.operator.shoulderHalfWidthM;
  const sy = scenario.operator.shoulderM;
  const wx = palmX + c * HAND.wristU - sx;
  const wy = palmY + s * HAND.wristU - sy;
  const d = length(wx, wy);
  const most = (upper + fore) * MOST;
  if (d <= most) return [palmX, palmY];
  const near: readonly [number, number] = [(wx * most) / d, (wy * most) / d];
  const high = overhead(wx, wy, most / scenario.operator.foreshortening);
  const isHigher = isLifting && wy > 0 && length(high[0] - wx, high[1] - wy) < length(near[0] - wx, near[1] - wy);
  const [x, y] = isHigher ? high : near;
  return [palmX + x - wx, palmY + y - wy];
}

/** Nearest point straight over the shoulder, within an arm that long, from a point (wx, wy) beyond it; all from the shoulder (m). */
function overhead(wx: number, wy: number, most: number): readonly [number, number] {
  const x = Math.min(OVERHEAD_M, Math.max(-OVERHEAD_M, wx));
  return [x, Math.min(wy, Math.sqrt(most * most - x * x))];
}
