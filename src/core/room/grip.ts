import { atan2, cos, length, PI, sin } from '../base/portableMath.ts';
import { otherSide, SIDES, signOf, type Side } from '../base/side.ts';
import { fingertips } from './fingertips.ts';
import { isOut, isSleeved } from './gown/dress.ts';
import { laidPose } from './gown/Gloving.ts';
import { hangingPose } from './gown/OpenGloving.ts';
import type { Gown } from './gown/Gown.ts';
import { gloveStrain, IN_LOOSE_GLOVE, isLoose, THROUGH_CLOTH } from './gown/gownFacts.ts';
import type { HandState, Hold } from './handState.ts';
import { THING_SHAPES } from './itemShapes.ts';
import type { Scene } from './scene.ts';
import type { Sheath } from './sheath/Sheath.ts';

/** How long the fingers take to bring a thing into the way they hold it, in steps. */
const SETTLE_STEPS = 36;
/** Share of the grip's force up to which turning counts as easy. */
const EASY_SHARE = 0.45;
/** A glove that hangs from its cuff is limp: it comes to hang only where nothing is in its way (N). */
const LIMP_N = 0.4;
/** Share by which a new pull enters the one that counts: about 0.1 s, since flesh and glove take up shorter jerks. */
const PULL_BLEND = 0.08;
/** A cord or a sheet is taken only when no thing is nearer by these distances (m): people reach for the thing on the sheet. */
const CORD_BIAS_M = 0.008;
const DRAPE_BIAS_M = 0.02;
/** The folds at the open end of a sheath are taken before the cord under them (m). */
const END_BIAS_M = 0.004;
/** Of a glove on a hand the edge of its cuff is taken, not the glove (m). */
const CUFF_BIAS_M = -0.03;
/** Half the length of a glove's cuff by which it is taken (m). */
const CUFF_HALF_M = 0.045;

/** A hand that nothing is in the way of, in a glove that fits as well. */
const BARE = { reach: 1, grip: 1 } as const;

/** Film, cloth or glove that is held without being a thing of its own: see `Hold`. */
type Cloth = 'rim' | 'film' | 'gown' | 'gloveCuff';

/** What the fingertips would take hold of now. */
export type Grasp =
  | { readonly kind: 'thing'; readonly thing: number; readonly gap: number }
  | { readonly kind: 'node'; readonly strand: 'drape.left' | 'drape.right' | 'cord'; readonly node: number; readonly gap: number }
  | { readonly kind: Cloth; readonly gap: number };

const isCloth = (grasp: Grasp): grasp is Extract<Grasp, { readonly kind: Cloth }> => grasp.kind !== 'thing' && grasp.kind !== 'node';

/** Nearest thing, cord or sheet within reach of the fingertips, or null. `gone` says which things are no longer there. */
export function findGrasp(scene: Scene, side: Side, gone: readonly boolean[], sheath: Sheath | null, gown: Gown | null): Grasp | null {
  const [x, y] = fingertips(scene, side);
  const reach = scene.scenario.operator.gripReachM * feelOf(scene, side).reach;
  let best: Grasp | null = null;
  let bestRank = Infinity;
  const offer = (grasp: Grasp, bias: number): void => {
    if (grasp.gap <= reach && grasp.gap + bias < bestRank) {
      best = grasp;
      bestRank = grasp.gap + bias;
    }
  };
  scene.things.forEach((_, k) => {
    if (!gone[k]) offer({ kind: 'thing', thing: k, gap: Math.max(0, gapToThing(scene, k, x, y)) }, 0);
  });
  const film = sheath?.offers(side, x, y) ?? null;
  const cloth = gown?.offers(side, x, y) ?? null;
  if (cloth) offer(cloth, cloth.kind === 'gloveCuff' ? CUFF_BIAS_M : 0);
  if (film) offer(film, film.kind === 'film' ? END_BIAS_M : 0);
  for (const strand of ['cord', 'drape.right', 'drape.left'] as const) {
    const id = strandId(scene, strand);
    const start = scene.world.strandStart(id);
    for (let node = start, end = start + scene.world.strandSize(id); node < end; node++) {
      const gap = length(scene.world.x[node]! - x, scene.world.y[node]! - y);
      if (gap <= reach) offer({ kind: 'node', strand, node, gap }, strand === 'cord' ? CORD_BIAS_M : DRAPE_BIAS_M);
    }
  }
  return best;
}

export function strandId(scene: Scene, strand: 'drape.left' | 'drape.right' | 'cord'): number {
  if (strand === 'cord') return scene.cord;
  return scene.drapes[strand === 'drape.left' ? 'left' : 'right'];
}

function gapToThing(scene: Scene, k: number, x: number, y: number): number {
  const { world } = scene;
  const { body, kind } = scene.things[k]!;
  const shape = THING_SHAPES[kind];
  const dx = x - world.bodyX[body]!;
  const dy = y - world.bodyY[body]!;
  const u = world.bodyC[body]! * dx + world.bodyS[body]! * dy;
  const v = -world.bodyS[body]! * dx + world.bodyC[body]! * dy;
  // A glove is taken by its cuff.
  const middle = kind === 'glove' ? CUFF_HALF_M - shape.halfLength : 0;
  const half = kind === 'glove' ? CUFF_HALF_M : shape.halfLength;
  const alongOut = Math.max(0, Math.abs(u - middle) - half + shape.halfHeight);
  return length(alongOut, v) - shape.halfHeight;
}

/** Closes the fingers on what they reach; a thing that the other hand holds is taken over. Returns what is held, or null. */
export function takeHold(scene: Scene, hands: Readonly<Record<Side, HandState>>, side: Side, gone: readonly boolean[], sheath: Sheath | null, gown: Gown | null): Hold | null {
  const hand = hands[side];
  hand.closed = true;
  const grasp = findGrasp(scene, side, gone, sheath, gown);
  if (!grasp) return null;
  const { world } = scene;
  const body = scene.hands[side];
  if (isCloth(grasp)) {
    if (grasp.kind === 'rim') sheath!.pocket.take(side);
    else if (grasp.kind === 'film') sheath!.takeEnd(side);
    else if (grasp.kind === 'gown') gown!.held.take(side);
    hand.hold = { kind: grasp.kind, pullN: 0 };
    return hand.hold;
  }
  if (grasp.kind === 'node') {
    const other = hands[otherSide(side)].hold;
    if (other?.kind === 'node' && other.node === grasp.node) return null;
    world.gripNode(body, grasp.node, Infinity);
    hand.hold = { kind: 'node', strand: grasp.strand, node: grasp.node, pullN: 0 };
    return hand.hold;
  }
  const other = hands[otherSide(side)];
  if (other.hold?.kind === 'thing' && other.hold.thing === grasp.thing) {
    letGo(scene, other, sheath, gown);
    if (sheath && grasp.thing === scene.sheath!.roll) {
      // A folded sheath between two hands opens.
      other.closed = true;
      other.hold = { kind: 'rim', pullN: 0 };
      hand.hold = { kind: 'rim', pullN: 0 };
      sheath.open(other.side, side);
      return hand.hold;
    }
  }
  const thing = scene.things[grasp.thing]!.body;
  const from = relativePose(scene, body, thing);
  const joint = world.weld(body, thing, { relative: from });
  hand.hold = { kind: 'thing', thing: grasp.thing, joint, pullN: 0, settled: 0, from };
  gown?.took(side, grasp.thing);
  return hand.hold;
}

/** Opens the fingers. */
export function letGo(scene: Scene, hand: HandState, sheath: Sheath | null, gown: Gown | null): void {
  hand.closed = false;
  hand.using = false;
  if (!hand.hold) return;
  if (hand.hold.kind === 'thing') scene.world.unweld(hand.hold.joint);
  else if (hand.hold.kind === 'node') scene.world.releaseNode(hand.hold.node);
  else if (hand.hold.kind === 'rim' || hand.hold.kind === 'film') sheath!.letGo(hand.side);
  gown?.letGo(hand.side, hand.hold);
  hand.hold = null;
}

/** Lets go of what is pulled out of the fingers, and lets them bring held things into the way they hold them. */
export function settleHolds(scene: Scene, hands: Readonly<Record<Side, HandState>>, sheath: Sheath | null, gown: Gown | null): void {
  for (const side of SIDES) {
    const hand = hands[side];
    const { hold } = hand;
    if (!hold) continue;
    // What pulls at a grip is felt by the arm as well; single jerks inside the grip are not.
    const inGrip = pullOn(scene, hold, side, sheath);
    hold.pullN += (Math.min(inGrip, hand.driveN) - hold.pullN) * PULL_BLEND;
    const bears = scene.scenario.operator.gripForceN * feelOf(scene, side).grip;
    if (hold.pullN > bears) slip(scene, hand, sheath, gown);
    else if (hold.kind === 'thing' && hold.settled < 1) settle(scene, side, hold);
  }
}

function pullOn({ world }: Scene, hold: Hold, side: Side, sheath: Sheath | null): number {
  if (hold.kind === 'thing') return world.weldForce(hold.joint);
  if (hold.kind === 'node') return world.holdForce(hold.node);
  return hold.kind === 'rim' || hold.kind === 'film' ? sheath!.pullN(side) : 0;
}

/** Shares of reach and grip of bare fingers that are left to a hand: under the cloth of its sleeve, or in a glove that is too large. */
function feelOf({ dress, scenario }: Scene, side: Side): { readonly reach: number; readonly grip: number } {
  const { sleeveM, gloveSizes, palmGirthM } = scenario.gown;
  const arm = dress?.arms[side];
  if (arm && isSleeved(arm, sleeveM)) return THROUGH_CLOTH;
  return arm?.glove === 'on' && isLoose(gloveStrain(gloveSizes[side], palmGirthM)) ? IN_LOOSE_GLOVE : BARE;
}

/** What was held is pulled out of the closed fingers. */
function slip(scene: Scene, hand: HandState, sheath: Sheath | null, gown: Gown | null): void {
  letGo(scene, hand, sheath, gown);
  hand.closed = true;
}

function settle(scene: Scene, side: Side, hold: Extract<Hold, { kind: 'thing' }>): void {
  // Something in the way is not forced: the thing turns in the fingers only as far as it goes easily.
  const easy = hold.pullN < (hangsLimp(scene, side, hold.thing) ? LIMP_N : EASY_SHARE * scene.scenario.operator.gripForceN);
  hold.settled = Math.min(1, Math.max(0, hold.settled + (easy ? 1 : -2) / SETTLE_STEPS));
  const goal = holdPose(scene, side, hold.thing);
  const blend = hold.settled * hold.settled * (3 - 2 * hold.settled);
  const fromAngle = atan2(hold.from.s, hold.from.c);
  let turn = atan2(goal.s, goal.c) - fromAngle;
  if (turn > PI) turn -= 2 * PI;
  if (turn < -PI) turn += 2 * PI;
  const angle = fromAngle + turn * blend;
  scene.world.setWeldPose(hold.joint, hold.from.x + (goal.x - hold.from.x) * blend, hold.from.y + (goal.y - hold.from.y) * blend, cos(angle), sin(angle));
}

/** Where a held thing comes to lie in the hand's frame. */
export function holdPose(scene: Scene, side: Side, thing: number): { x: number; y: number; c: number; s: number } {
  const { holdAngle, holdAlong, halfLength } = THING_SHAPES[scene.things[thing]!.kind];
  if (scene.gown?.gloves[side] === thing && scene.dress!.arms[side].glove === 'laid') return laidPose(side, halfLength);
  if (hangsLimp(scene, side, thing)) return hangingPose(side, halfLength);
  const mirror = -signOf(side);
  return { x: holdAlong, y: 0, c: cos(holdAngle), s: -mirror * sin(holdAngle) };
}

/** A glove that is held for the bare other hand hangs from its cuff. */
const hangsLimp = ({ gown, dress, scenario }: Scene, side: Side, thing: number): boolean =>
  gown?.gloves[otherSide(side)] === thing && isOut(dress!.arms[otherSide(side)], scenario.gown.sleeveM);

function relativePose(scene: Scene, a: number, b: number): { x: number; y: number; c: number; s: number } {
  const { bodyX, bodyY, bodyC, bodyS } = scene.world;
  const dx = bodyX[b]! - bodyX[a]!;
  const dy = bodyY[b]! - bodyY[a]!;
  return {
    x: bodyC[a]! * dx + bodyS[a]! * dy,
    y: -bodyS[a]! * dx + bodyC[a]! * dy,
    c: bodyC[a]! * bodyC[b]! + bodyS[a]! * bodyS[b]!,
    s: bodyC[a]! * bodyS[b]! - bodyS[a]! * bodyC[b]!,
  };
}
