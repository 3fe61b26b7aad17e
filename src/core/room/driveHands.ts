import { cos, length, sin } from '../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import { STEP_SECONDS } from '../base/time.ts';
import { solveArm, stepTorso, withinReach } from './arm.ts';
import { isDressed } from './gown/dress.ts';
import { HAND } from './handShape.ts';
import type { HandState } from './handState.ts';
import type { Scene } from './scene.ts';

/** Stiffness of the pull to the target as a natural frequency in rad/s: critically damped, it settles in about 0.15 s. */
const PULL_RATE = 30;
const TURN_RATE = 30;
const TURN_SPEED = 4;
const HAND_INERTIA = 0.0013;
const TURN_TORQUE_NM = 3;
/** A careful hand presses a held thing no harder than this share of what its grip bears. */
const CAREFUL_SHARE = 0.85;
/** Where an empty hand is carried while the operator steps aside: from the body's middle, over the highest rail, under the face (m). */
const BESIDE_M = 0.1;
const OVER_RAILS_M = 0.12;
const UNDER_FACE_M = 0.19;

/** Unit vector from wrist to fingertips for an angle above the horizontal; the left hand is the mirror image of the right. */
export const fingersDirection = (side: Side, angle: number): readonly [number, number] => [-signOf(side) * cos(angle), sin(angle)];

/** Pulls both hands to their targets for one step and moves the torso with the one that was moved last. Returns the new position of the torso. */
export function driveHands(scene: Scene, hands: Readonly<Record<Side, HandState>>, moving: Side, torsoX: number): number {
  const { world, scenario } = scene;
  const torso = stepTorso(scenario, scene.dress?.homeX ?? 0, torsoX, hands, moving, STEP_SECONDS);
  for (const side of SIDES) {
    const hand = hands[side];
    const body = scene.hands[side];
    const moved = moveTarget(scene, hand, torso, side === moving);
    const gripN = scenario.operator.gripForceN;
    const most = hand.hold?.kind === 'thing' ? Math.min(scenario.operator.handForceN, gripN * CAREFUL_SHARE) : scenario.operator.handForceN;
    const k = HAND.massKg * PULL_RATE * PULL_RATE;
    const damping = 2 * HAND.massKg * PULL_RATE;
    let fx = k * (hand.targetX - world.bodyX[body]!) + damping * (hand.targetVx - world.bodyVx[body]!);
    let fy = k * (hand.targetY - world.bodyY[body]!) + damping * (hand.targetVy - world.bodyVy[body]!);
    const f = length(fx, fy);
    if (f > most) {
      fx *= most / f;
      fy *= most / f;
    }
    hand.driveN = Math.min(f, most);
    const [tc, ts] = fingersDirection(side, hand.targetAngle);
    const error = world.bodyC[body]! * ts - world.bodyS[body]! * tc;
    const torque = HAND_INERTIA * (TURN_RATE * TURN_RATE * error - 2 * TURN_RATE * world.bodyOmega[body]!);
    const capped = Math.min(TURN_TORQUE_NM, Math.max(-TURN_TORQUE_NM, torque));
    world.setBodyForce(body, fx, fy, capped);
    if (moved) world.wakeBody(body);
  }
  return torso;
}

/** Lets the target follow the wish for one step; true when it moved. `leads` says that this hand is the one being moved. */
function moveTarget(scene: Scene, hand: HandState, torsoX: number, leads: boolean): boolean {
  const { targetX, targetY, targetAngle } = hand;
  const { scenario } = scene;
  const turn = TURN_SPEED * STEP_SECONDS;
  hand.targetAngle += Math.min(turn, Math.max(-turn, hand.wishAngle - hand.targetAngle));
  const [c, s] = fingersDirection(hand.side, hand.targetAngle);
  const near = withinReach(scenario, hand.side, torsoX, hand.wishX, hand.wishY, c, s, isLifting(scene, hand));
  const away = near[0] !== hand.wishX || near[1] !== hand.wishY;
  // Who is putting on gown and gloves needs both arms.
  hand.tucked = away && !leads && !hand.hold && (scene.dress === null || isDressed(scene.dress));
  const [gx, gy] = hand.tucked ? besideTheBody(scene, hand, torsoX) : near;
  const dx = gx - hand.targetX;
  const dy = gy - hand.targetY;
  const d = length(dx, dy);
  const most = scenario.operator.handSpeedMps * STEP_SECONDS;
  const share = d > most ? most / d : 1;
  hand.targetVx = (dx * share) / STEP_SECONDS;
  hand.targetVy = (dy * share) / STEP_SECONDS;
  hand.targetX += dx * share;
  hand.targetY += dy * share;
  return hand.targetX !== targetX || hand.targetY !== targetY || hand.targetAngle !== targetAngle;
}

/** It carries the gown, which has no place in the plane of bed and tables. */
const isLifting = ({ gown }: Scene, { hold }: HandState): boolean => gown !== null && (hold?.kind === 'gown' || (hold?.kind === 'thing' && hold.thing === gown.packet));

/** An empty hand that the operator steps away from comes along close to the body, lifted over rails and drape; common practice. */
function besideTheBody(scene: Scene, hand: HandState, torsoX: number): readonly [number, number] {
  const { crest } = scene.layout;
  const over = Math.max(crest.left.y, crest.right.y) + OVER_RAILS_M;
  const underFace = scene.scenario.operator.faceM - UNDER_FACE_M;
  return [torsoX + signOf(hand.side) * BESIDE_M, Math.min(Math.max(hand.wishY, over), underFace)];
}

/** The arm as it is now, from the pose of the hand's body. */
export function armOf(scene: Scene, side: Side, torsoX: number) {
  const { world } = scene;
  const b = scene.hands[side];
  return solveArm(scene.scenario, side, torsoX, world.bodyX[b]!, world.bodyY[b]!, world.bodyC[b]!, world.bodyS[b]!);
}
