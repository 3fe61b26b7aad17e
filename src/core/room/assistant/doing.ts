import { length } from '../../base/portableMath.ts';
import { secondsToSteps } from '../../base/time.ts';
import { SIDES, type Side } from '../../base/side.ts';
import type { RequestId } from '../../commands/command.ts';
import type { Scene } from '../scene.ts';
import { bedGoal } from '../bedHeight.ts';
import type { AssistantState, Limb } from './assistantBody.ts';
import { BED_STEP_M, bedControl, bedWay } from './bedControl.ts';
import { cordWay, hangingNode, holdPoint } from './cordPlace.ts';
import type { AssistantSight, Errand, ErrandKind } from './errand.ts';

/** How long wiping takes, and closing the hand on a thing (s); common practice. */
const WIPE_S = 1.2;
const TAKE_S = 0.3;
/** Pull at which the cord slips out of a bare hand, in newtons, and share by which a new pull enters the one that counts (about 0.1 s). */
const GRIP_N = 12;
const PULL_BLEND = 0.08;
/** Height over the table from which an item is dropped out of its packet, or at which it is offered (m), and how long it is; common practice. */
const DROP_M = 0.15;
const OFFER_M = 0.35;
const OFFER_S = 20;
/** How far below the fingers an item leaves its packet, and how far before them it looks out of one that is held open (m); common practice. */
const CARRIED_BELOW_M = 0.07;
const OFFERED_BEFORE_M = 0.1;
/** Gap that a skilled assistant keeps to a glove while reaching: nearer than that the hand waits (m, palm to fingertips). */
const KEEP_OFF_M = 0.19;
/** How far beside the middle of the face a cheek is wiped, in metres. */
const CHEEK_M = 0.05;

/** Begins an errand, or null where there is nothing to be done. */
export function newErrand(scene: Scene, kind: ErrandKind, thing: string, { torsoX }: AssistantState, sight: AssistantSight): Errand | null {
  const errand = (way: 1 | -1, of: { node?: number; thing?: number } = {}): Errand => ({
    kind, phase: 'coming', arm: way > 0 ? 'right' : 'left', way, path: null, via: null, node: of.node ?? -1, thing: of.thing ?? -1, since: sight.step, slackM: 0, bedToM: 0, pullN: 0,
  });
  if (kind === 'takeCord') return errand(cordWay(scene), { node: hangingNode(scene) });
  if (bedWay(kind) !== 0) return canGoOn(scene, kind) ? errand(torsoX >= 0 ? 1 : -1) : null;
  if (kind === 'wipeFace') return errand(torsoX >= sight.torsoX ? 1 : -1);
  if (isSpare(kind)) {
    const spare = nextSpare(scene, thing, sight);
    return spare < 0 ? null : errand(scene.scenario.items[spare - 1]!.xM >= 0 ? 1 : -1, { thing: spare });
  }
  const k = toTakeAway(scene, thing, torsoX, sight);
  return k < 0 ? null : errand(scene.world.bodyX[scene.things[k]!.body]! >= 0 ? 1 : -1, { thing: k });
}

/** The named spare, or the first, that is still in its packet; −1 when there is none. */
function nextSpare({ things }: Scene, id: string, { packed }: AssistantSight): number {
  return things.findIndex((thing, k) => packed[k]! && (!id || thing.id === id));
}

/** The named thing, or the nearest, of those that lie off the field; −1 when there is none. Nobody takes the probe off its cord. */
function toTakeAway(scene: Scene, id: string, torsoX: number, { gone, offField, hands }: AssistantSight): number {
  const isHeld = (k: number): boolean => SIDES.some((side) => hands[side].hold?.kind === 'thing' && hands[side].hold.thing === k);
  let best = -1;
  const gap = (k: number): number => Math.abs(scene.world.bodyX[scene.things[k]!.body]! - torsoX);
  scene.things.forEach((thing, k) => {
    if (k === 0 || gone[k] || !offField[k] || isHeld(k) || (id && thing.id !== id)) return;
    if (best < 0 || gap(k) < gap(best)) best = k;
  });
  return best;
}

/** Where the fingertips go now. `operatorX` is the middle of the operator, whose face may be wiped. */
export function aimOf(scene: Scene, errand: Errand, operatorX: number): readonly [number, number] {
  const { world } = scene;
  if (errand.kind === 'takeCord') return errand.phase === 'doing' ? holdPoint(scene, errand.slackM) : [world.x[errand.node]!, world.y[errand.node]!];
  if (errand.kind === 'wipeFace') return [operatorX + errand.way * CHEEK_M, scene.scenario.operator.faceM];
  if (bedWay(errand.kind) !== 0) return bedControl(scene.layout, errand.way);
  if (isSpare(errand.kind)) {
    const [aside, below] = carriedFrom(errand);
    return [scene.scenario.items[errand.thing - 1]!.xM - aside, scene.layout.kitTable.top + (errand.kind === 'offerPacket' ? OFFER_M : DROP_M) + below];
  }
  const { body } = scene.things[errand.thing]!;
  return [world.bodyX[body]!, world.bodyY[body]!];
}

/** The hand is there: it takes hold. */
export function arrived(scene: Scene, errand: Errand): void {
  const { world, assistantHands, things } = scene;
  if (errand.kind === 'takeCord') world.gripNode(assistantHands[errand.arm], errand.node, Infinity);
  if (errand.kind === 'takeAway') world.setBodyEnabled(things[errand.thing]!.body, false);
  if (bedWay(errand.kind) !== 0) {
    pressNoMore(scene, errand);
    pressOn(scene, errand, errand.kind);
  }
}

/** Whether there is more to do at the goal; looks after what is held. An item is offered until a glove has it, or for long enough. */
export function continues(scene: Scene, errand: Errand, { step, hands }: AssistantSight): boolean {
  if (errand.kind === 'offerPacket') return step - errand.since < secondsToSteps(OFFER_S) && !isTaken(errand, hands);
  if (bedWay(errand.kind) !== 0) return scene.layout.bedUpM !== errand.bedToM;
  if (errand.kind !== 'takeCord') return step - errand.since < secondsToSteps(errand.kind === 'wipeFace' ? WIPE_S : TAKE_S);
  if (!holdsNode(scene, errand.arm, errand.node)) return false;
  errand.pullN += (scene.world.holdForce(errand.node) - errand.pullN) * PULL_BLEND;
  return errand.pullN <= GRIP_N;
}

/** A glove is close: the hand waits, the sooner the more skilled. */
export function mustWait({ world, hands: bodies }: Scene, limb: Limb, skill: number, { hands }: AssistantSight): boolean {
  if (!limb.inPlane) return false;
  return SIDES.some((side) => !hands[side].tucked && length(world.bodyX[bodies[side]]! - limb.x, world.bodyY[bodies[side]]! - limb.y) < KEEP_OFF_M * skill);
}

/** An item that comes out of a packet. */
export const isSpare = (kind: ErrandKind): boolean => kind === 'openPacket' || kind === 'offerPacket';

/** How far aside of the fingers, toward the operator, and how far below them such an item is carried (m). */
export const carriedFrom = ({ kind, way }: Errand): readonly [aside: number, below: number] => (kind === 'offerPacket' ? [-way * OFFERED_BEFORE_M, 0] : [0, CARRIED_BELOW_M]);

/** A glove has taken hold of what the errand is about. */
export const isTaken = ({ thing }: Errand, hands: AssistantSight['hands']): boolean =>
  SIDES.some((side) => hands[side].hold?.kind === 'thing' && hands[side].hold.thing === thing);

/** Whether the bed can go any farther that way. */
export const canGoOn = (scene: Scene, request: RequestId): boolean => bedGoal(scene, bedWay(request) * BED_STEP_M) !== scene.layout.bedUpM;

/** With the hand on the control: so much farther that way, beyond what is under way. */
export function pressOn(scene: Scene, errand: Errand, request: RequestId): void {
  const way = bedWay(request);
  const ahead = Math.max(0, way * (errand.bedToM - scene.layout.bedUpM));
  errand.bedToM = bedGoal(scene, way * (ahead + BED_STEP_M));
}

/** The bed stands still where it is. */
export const pressNoMore = ({ layout }: Scene, errand: Errand): void => void (errand.bedToM = layout.bedUpM);

/** Opens the hand. */
export function drop(scene: Scene, errand: Errand): void {
  if (errand.kind === 'takeCord' && holdsNode(scene, errand.arm, errand.node)) scene.world.releaseNode(errand.node);
}

const holdsNode = ({ world, assistantHands }: Scene, arm: Side, node: number): boolean => world.holderOf(node) === assistantHands[arm];

/** An item is held out in its opened packet. */
export const isOffering = ({ kind, phase }: Errand): boolean => phase === 'doing' && kind === 'offerPacket';

/** The hand is on the control of the bed. */
export const isOnControl = ({ kind, phase }: Errand): boolean => phase === 'doing' && bedWay(kind) !== 0;
