import { SIDES, signOf, type Side } from '../base/side.ts';
import { nearestPoints, noNearestPoints } from '../touch/segmentGap.ts';
import type { TrackedCapsule } from '../touch/trackedCapsule.ts';
import type { Arm } from './arm.ts';
import { ASSISTANT, type AssistantLook } from './assistant/assistantBody.ts';
import { gownOutlines } from './gown/gownOutlines.ts';
import { HAND, HAND_PARTS, SLEEVE } from './handShape.ts';
import { THING_SHAPES } from './itemShapes.ts';
import { DRAPE_RADIUS_M } from './layPaths.ts';
import type { Scene } from './scene.ts';
import { pointAt } from './sheath/alongCord.ts';
import { isInside } from './sheath/isInside.ts';
import type { Slot, Slots } from './surfaces.ts';

/** Groups for the tracker. */
export const TOUCH_GROUP = { hand: 0, sleeve: 1, upperArm: 2, face: 3, bedside: 4, upright: 5, skin: 6, drape: 7, sheathedCord: 8, bareCord: 9, thing: 10, bareHand: 11, bareProbe: 12, pocket: 13, foldedFingers: 14, gownCloth: 15, person: 16 } as const;
export const TOUCH_GROUPS = 17;

/**
 * Pairs of groups that can touch. Hands and things pass each other in depth, and a thing is touched by the fingers that take it;
 * the cord passes the pole and the machine in depth, and in its sheath also the arms. Fingers under the fold of a sheath meet neither
 * probe nor cord nor the assistant's hands. A hanging gown is before the arms that hold it: what they touch of it is its inside. Who
 * passes by walks beside bed and tables.
 */
const TOUCHING: readonly (readonly [keyof typeof TOUCH_GROUP, keyof typeof TOUCH_GROUP])[] = [
  ['hand', 'face'], ['hand', 'bedside'], ['hand', 'upright'], ['hand', 'skin'], ['hand', 'drape'], ['hand', 'sheathedCord'], ['hand', 'bareCord'],
  ['sleeve', 'bedside'], ['sleeve', 'upright'], ['sleeve', 'drape'], ['sleeve', 'bareCord'],
  ['upperArm', 'bedside'], ['upperArm', 'upright'], ['upperArm', 'drape'],
  ['face', 'thing'], ['bedside', 'sheathedCord'], ['bedside', 'bareCord'], ['bedside', 'thing'], ['upright', 'thing'],
  ['bareHand', 'hand'], ['bareHand', 'sleeve'], ['bareHand', 'drape'], ['bareHand', 'sheathedCord'], ['bareHand', 'thing'], ['bareHand', 'skin'],
  ['skin', 'sheathedCord'], ['skin', 'bareCord'], ['skin', 'thing'], ['drape', 'sheathedCord'], ['drape', 'bareCord'], ['drape', 'thing'],
  ['foldedFingers', 'face'], ['foldedFingers', 'bedside'], ['foldedFingers', 'upright'], ['foldedFingers', 'skin'], ['foldedFingers', 'drape'], ['foldedFingers', 'sheathedCord'],
  ['bareProbe', 'hand'], ['bareProbe', 'sleeve'], ['bareProbe', 'pocket'], ['bareProbe', 'drape'], ['bareProbe', 'skin'], ['bareProbe', 'bedside'],
  ['pocket', 'hand'], ['pocket', 'sleeve'], ['pocket', 'bareHand'], ['pocket', 'face'], ['pocket', 'bedside'], ['pocket', 'upright'], ['pocket', 'drape'], ['pocket', 'skin'], ['pocket', 'bareCord'],
  ['gownCloth', 'bedside'], ['gownCloth', 'upright'], ['gownCloth', 'bareHand'], ['gownCloth', 'drape'],
  ['person', 'hand'], ['person', 'sleeve'], ['person', 'upperArm'], ['person', 'gownCloth'],
];

export const mayTouch = (a: number, b: number): boolean =>
  TOUCHING.some(([p, q]) => (TOUCH_GROUP[p] === a && TOUCH_GROUP[q] === b) || (TOUCH_GROUP[p] === b && TOUCH_GROUP[q] === a));

/** Radius of the face with its mask in metres. */
const FACE_R = 0.1;
/** Fingers without a glove that close on a cord (m). */
const BARE_FINGERS_R = 0.012;
/** Half thickness of a film as it is touched (m): it is creased by a millimetre more than the solver knows; and how long its folds lie at its open end (m). */
const FILM_R = 0.0015;
const END_M = 0.04;
/** Halvings by which the mouth is found along a probe: to a tenth of a millimetre. */
const HALVINGS = 10;
/** Skin nearer than this to the edge of a drape lies under it (m). */
const UNDER_EDGE_M = 0.003;

/** Where everything touchable was and is, as capsules, kept from step to step. */
export class TouchGeometry {
  /** Capsules of each slot; none where what it carries was never seen or was put somewhere else. */
  private readonly all: (TrackedCapsule[] | undefined)[];
  private fresh = true;
  private readonly link = new Float64Array(4);
  private readonly other = new Float64Array(4);
  private readonly nearest = noNearestPoints();
  /** Capsules that can be touched in this step. */
  readonly capsules: TrackedCapsule[] = [];

  constructor(
    private readonly scene: Scene,
    private readonly slots: Slots,
    /** Number of the surface that a slot carries now. */
    private readonly numberOf: (slot: Slot) => number,
  ) {
    this.all = Array.from({ length: slots.count }, () => undefined);
  }

  /** Takes in the poses after a step. */
  update(torsoX: number, humpX: number, humpY: number, arms: Readonly<Record<Side, Arm>>, tucked: Readonly<Record<Side, boolean>>, gone: readonly boolean[], assistant: AssistantLook): void {
    this.capsules.length = 0;
    for (const side of SIDES) {
      if (tucked[side]) this.forgetArm(side);
      else this.hand(side, arms[side]);
    }
    this.put(this.slots.face, TOUCH_GROUP.face, 0, torsoX, this.scene.scenario.operator.faceM, torsoX, this.scene.scenario.operator.faceM, FACE_R);
    this.fixed();
    this.skin(humpX, humpY);
    for (const side of SIDES) this.drape(side);
    this.cord();
    this.film();
    this.scene.things.forEach((_, k) => {
      if (!gone[k]) this.thing(k);
    });
    for (const side of SIDES) this.assistant(side, assistant);
    if (this.slots.gown) gownOutlines(this.scene, this.slots.gown, (slot, group, piece, ax, ay, bx, by, r) => this.put(slot, TOUCH_GROUP[group], piece, ax, ay, bx, by, r), (slot) => this.forget(slot));
    this.fresh = false;
  }

  /** Forgets where a slot was: what it carries was put somewhere else and did not travel there. */
  forget(slot: Slot): void {
    this.all[slot] = undefined;
  }

  /**
   * Side of a link on which another slot came to it: positive to the left of the way from its first to its second node, 0 when they
   * overlapped already. Looked at where both were before the step, when they did not touch yet.
   */
  sideOf(link: Slot, other: Slot): number {
    const [l] = this.all[link]!;
    this.link.set([l!.ax, l!.ay, l!.bx, l!.by]);
    let side = 0;
    let least = Infinity;
    for (const c of this.all[other] ?? []) {
      this.other.set([c.ax, c.ay, c.bx, c.by]);
      nearestPoints(this.link, this.other, this.nearest);
      const { distance, px, py, qx, qy } = this.nearest;
      if (distance - c.r >= least) continue;
      least = distance - c.r;
      side = (l!.bx - l!.ax) * (qy - py) - (l!.by - l!.ay) * (qx - px);
    }
    return side;
  }

  /** Ends of every capsule, for continuing a run bit for bit. */
  save(): [Slot, number[]][] {
    return this.all.flatMap((list, slot) => (list ? [[slot, list.flatMap((c) => [c.Ax, c.Ay, c.Bx, c.By])] as [Slot, number[]]] : []));
  }

  restore(saved: readonly (readonly [Slot, readonly number[]])[]): void {
    this.all.fill(undefined);
    for (const [slot, ends] of saved) {
      const list: TrackedCapsule[] = [];
      for (let k = 0; k < ends.length; k += 4) list.push({ surface: 0, group: 0, ax: 0, ay: 0, bx: 0, by: 0, Ax: ends[k]!, Ay: ends[k + 1]!, Bx: ends[k + 2]!, By: ends[k + 3]!, r: 0 });
      this.all[slot] = list;
    }
    this.fresh = saved.length === 0;
  }

  private put(slot: Slot, group: number, piece: number, ax: number, ay: number, bx: number, by: number, r: number): void {
    const list = (this.all[slot] ??= []);
    let c = list[piece];
    if (!c) list[piece] = c = { surface: 0, group, ax, ay, bx, by, Ax: ax, Ay: ay, Bx: bx, By: by, r };
    const first = this.fresh;
    c.surface = this.numberOf(slot);
    c.group = group;
    c.r = r;
    c.ax = first ? ax : c.Ax;
    c.ay = first ? ay : c.Ay;
    c.bx = first ? bx : c.Bx;
    c.by = first ? by : c.By;
    c.Ax = ax;
    c.Ay = ay;
    c.Bx = bx;
    c.By = by;
    this.capsules.push(c);
  }

  private forgetArm(side: Side): void {
    for (const slot of [...Object.values(this.slots.hand[side]), ...Object.values(this.slots.sleeve[side])]) this.forget(slot);
  }

  private hand(side: Side, arm: Arm): void {
    const { world, hands, scenario } = this.scene;
    const b = hands[side];
    const x = world.bodyX[b]!;
    const y = world.bodyY[b]!;
    const c = world.bodyC[b]!;
    const s = world.bodyS[b]!;
    const mirror = -signOf(side);
    for (const part of HAND_PARTS) {
      const { fromU, toU, v, r } = HAND[part];
      const w = v * mirror;
      const group = part === 'fingers' && this.scene.cover.folded[side] ? TOUCH_GROUP.foldedFingers : TOUCH_GROUP.hand;
      this.put(this.slots.hand[side][part], group, 0, x + c * fromU - s * w, y + s * fromU + c * w, x + c * toU - s * w, y + s * toU + c * w, r);
    }
    const { lowerSleeve, upperSleeve, outerSleeve } = this.slots.sleeve[side];
    const fore = SLEEVE.seamFromWristM / (scenario.operator.forearmM * scenario.operator.foreshortening);
    const above = scenario.policy.sleeveAboveElbowM / (scenario.operator.upperArmM * scenario.operator.foreshortening);
    const seamX = arm.wristX + (arm.elbowX - arm.wristX) * fore;
    const seamY = arm.wristY + (arm.elbowY - arm.wristY) * fore;
    const endX = arm.elbowX + (arm.shoulderX - arm.elbowX) * above;
    const endY = arm.elbowY + (arm.shoulderY - arm.elbowY) * above;
    const nearX = arm.elbowX + (arm.wristX - arm.elbowX) * 0.25;
    const nearY = arm.elbowY + (arm.wristY - arm.elbowY) * 0.25;
    this.put(lowerSleeve, TOUCH_GROUP.sleeve, 0, seamX, seamY, nearX, nearY, (SLEEVE.wristR + SLEEVE.elbowR) / 2);
    this.put(upperSleeve, TOUCH_GROUP.sleeve, 0, nearX, nearY, arm.elbowX, arm.elbowY, SLEEVE.elbowR);
    this.put(upperSleeve, TOUCH_GROUP.sleeve, 1, arm.elbowX, arm.elbowY, endX, endY, SLEEVE.elbowR);
    this.put(outerSleeve, TOUCH_GROUP.upperArm, 0, endX, endY, arm.shoulderX, arm.shoulderY, SLEEVE.upperR);
  }

  /** Hand and forearm of the assistant while they are in the plane of bed and field. */
  private assistant(side: Side, { hands }: AssistantLook): void {
    const { hand, forearm } = this.slots.assistant[side];
    const { inPlane, x, y, c, s, wristX, wristY, elbowX, elbowY } = hands[side];
    if (!inPlane) {
      this.forget(hand);
      this.forget(forearm);
      return;
    }
    const { fingers, palm } = HAND;
    this.put(hand, TOUCH_GROUP.bareHand, 0, x + c * palm.toU, y + s * palm.toU, x + c * fingers.toU, y + s * fingers.toU, BARE_FINGERS_R);
    this.put(hand, TOUCH_GROUP.bareHand, 1, x + c * HAND.wristU, y + s * HAND.wristU, x + c * palm.toU, y + s * palm.toU, palm.r);
    this.put(forearm, TOUCH_GROUP.bareHand, 0, wristX, wristY, elbowX, elbowY, ASSISTANT.forearmR);
  }

  private fixed(): void {
    const { layout } = this.scene;
    const { slots } = this;
    const near = TOUCH_GROUP.bedside;
    for (const side of SIDES) {
      const rail = layout.rails[side];
      // A rail under the drape cannot be touched: what touches there is the drape, over its margin.
      if (rail.up && !this.covered(side)) this.put(slots.rail[side], near, 0, rail.x, rail.bottom, rail.x, rail.topCentre, rail.radius);
    }
    this.put(slots.pole, TOUCH_GROUP.upright, 0, layout.pole.x, 0, layout.pole.x, layout.pole.top, layout.pole.radius);
    const { machine, kitTable, bin, mattress } = layout;
    this.box(slots.machine, TOUCH_GROUP.upright, machine.left, machine.bottom, machine.right, machine.top);
    this.put(slots.floor, near, 0, -4, 0, 4, 0, 0);
    this.put(slots.kitTable, near, 0, kitTable.left + 0.03, kitTable.top, kitTable.right - 0.03, kitTable.top, 0);
    this.put(slots.tableEdge, near, 0, kitTable.left, kitTable.top - 0.25, kitTable.left, kitTable.top, 0);
    this.put(slots.tableEdge, near, 1, kitTable.right, kitTable.top, kitTable.right, kitTable.top - 0.25, 0);
    this.put(slots.bin, near, 0, bin.left, 0.05, bin.left, bin.rim, 0.01);
    this.put(slots.bin, near, 1, bin.right, 0.05, bin.right, bin.rim, 0.01);
    let piece = 0;
    for (const side of SIDES) {
      const edge = layout.crest[side].x;
      const from = this.drapeEnd(side);
      const bare = signOf(side) * (mattress.halfWidth * signOf(side) - from) > 0.01 && !this.covered(side);
      const x = bare ? from : edge;
      this.put(slots.bed, near, piece++, x, mattress.top, signOf(side) * mattress.halfWidth, bare ? mattress.top : mattress.bottom, 0);
    }
  }

  private box(slot: Slot, group: number, left: number, bottom: number, right: number, top: number): void {
    this.put(slot, group, 0, left, bottom, left, top, 0);
    this.put(slot, group, 1, left, top, right, top, 0);
    this.put(slot, group, 2, right, top, right, bottom, 0);
  }

  /** The drape of that side hangs over the edge of the bed. */
  private covered(side: Side): boolean {
    return signOf(side) * this.drapeEnd(side) > Math.abs(this.scene.layout.crest[side].x);
  }

  private drapeEnd(side: Side): number {
    const { world, drapes } = this.scene;
    return world.x[world.strandStart(drapes[side]) + world.strandSize(drapes[side]) - 1]!;
  }

  /** Skin that no drape covers. */
  private skin(humpX: number, humpY: number): void {
    const { world, drapes, layout } = this.scene;
    const from = world.x[world.strandStart(drapes.right)]! + UNDER_EDGE_M;
    const to = world.x[world.strandStart(drapes.left)]! - UNDER_EDGE_M;
    for (let k = 0; k + 1 < layout.skin.length; k++) {
      const [ax, ay] = layout.skin[k]!;
      const [bx, by] = layout.skin[k + 1]!;
      const middle = (ax + bx) / 2 + humpX;
      if (middle > from && middle < to) this.put(this.slots.skin + k, TOUCH_GROUP.skin, 0, ax + humpX, ay + humpY, bx + humpX, by + humpY, 0);
    }
  }

  private drape(side: Side): void {
    const strand = this.scene.drapes[side];
    for (let k = 0, links = this.scene.world.strandSize(strand) - 1; k < links; k++) this.stretch(strand, k, this.slots.drape[side] + k, TOUCH_GROUP.drape, DRAPE_RADIUS_M);
  }

  private cord(): void {
    const { cord, world, scenario, cover } = this.scene;
    for (let k = 0, links = world.strandSize(cord) - 1; k < links; k++) {
      const bare = (k + 0.5) * scenario.cord.linkM > cover.coveredM;
      const underFolds = this.scene.sheath !== null && !bare && (k + 0.5) * scenario.cord.linkM > cover.coveredM - END_M;
      if (underFolds || (bare && cover.open && this.isInPocket(world.strandStart(cord) + k))) {
        this.forget(this.slots.cord + k);
        continue;
      }
      this.stretch(cord, k, this.slots.cord + k, bare ? TOUCH_GROUP.bareCord : TOUCH_GROUP.sheathedCord, scenario.cord.radiusM);
    }
  }

  /** The opened sheath, or the open end of the film on the cord. */
  private film(): void {
    const { sheath, cover, world, cord, scenario } = this.scene;
    if (!sheath) return;
    const links = world.strandSize(sheath.pocket) - 1;
    for (let k = 0; k < links; k++) {
      if (cover.open) this.stretch(sheath.pocket, k, this.slots.pocket + k, TOUCH_GROUP.pocket, FILM_R);
      else this.forget(this.slots.pocket + k);
    }
    if (!cover.on) {
      this.forget(this.slots.end);
      return;
    }
    const { linkM, radiusM } = scenario.cord;
    const to = pointAt(world, cord, linkM, cover.coveredM);
    const from = pointAt(world, cord, linkM, Math.max(0, cover.coveredM - END_M));
    this.put(this.slots.end, TOUCH_GROUP.sheathedCord, 0, from.x, from.y, to.x, to.y, radiusM + FILM_R);
  }

  /** Both ends of the link from node i are between the walls of the opened sheath. */
  private isInPocket(i: number): boolean {
    const { world, sheath } = this.scene;
    return isInside(world, sheath!.pocket, world.x[i]!, world.y[i]!) && isInside(world, sheath!.pocket, world.x[i + 1]!, world.y[i + 1]!);
  }

  /** The probe without film: what of it is not between the walls of the opened sheath. */
  private bareProbe(x: number, y: number, c: number, s: number, slot: Slot, along: number, r: number): void {
    const { world, sheath, cover } = this.scene;
    const inPocket = (u: number): boolean => cover.open && isInside(world, sheath!.pocket, x + c * u, y + s * u);
    let low = -along;
    let high = along;
    if (inPocket(high)) {
      if (inPocket(low)) {
        this.forget(slot);
        return;
      }
      for (let k = 0; k < HALVINGS; k++) {
        const middle = (low + high) / 2;
        if (inPocket(middle)) high = middle;
        else low = middle;
      }
      low = -along;
      high = Math.max(low, high - r);
    }
    this.put(slot, TOUCH_GROUP.bareProbe, 0, x + c * low, y + s * low, x + c * high, y + s * high, r);
  }

  private stretch(strand: number, k: number, slot: Slot, group: number, r: number): void {
    const { world } = this.scene;
    const i = world.strandStart(strand) + k;
    this.put(slot, group, 0, world.x[i]!, world.y[i]!, world.x[i + 1]!, world.y[i + 1]!, r);
  }

  private thing(k: number): void {
    const { world, things } = this.scene;
    const { body, kind } = things[k]!;
    const { halfLength, halfHeight, needleLength } = THING_SHAPES[kind];
    const x = world.bodyX[body]!;
    const y = world.bodyY[body]!;
    const c = world.bodyC[body]!;
    const s = world.bodyS[body]!;
    const along = halfLength - halfHeight;
    const { solid, needle } = this.slots.thing[k]!;
    if (k === 0 && !this.scene.cover.on) {
      this.bareProbe(x, y, c, s, solid, along, halfHeight);
      return;
    }
    this.put(solid, TOUCH_GROUP.thing, 0, x - c * along, y - s * along, x + c * along, y + s * along, halfHeight);
    if (needle >= 0) {
      const tip = halfLength + needleLength;
      this.put(needle, TOUCH_GROUP.thing, 0, x + c * halfLength, y + s * halfLength, x + c * tip, y + s * tip, 0.0005);
    }
  }
}
