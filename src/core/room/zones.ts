import { length } from '../base/portableMath.ts';
import { SIDES, signOf, type Side } from '../base/side.ts';
import type { PlacedZone } from '../ledger/fact.ts';
import { HAND_PARTS } from './handShape.ts';
import { levelAt } from './level.ts';
import type { Scene } from './scene.ts';
import { isHidden } from './sight.ts';
import type { Slot, Slots } from './surfaces.ts';
import type { Arm } from './arm.ts';
import type { AssistantLook } from './assistant/assistantBody.ts';

/** Strands are looked at every so many steps; nothing crosses an edge by more than a few millimetres in that time. */
const STRAND_EVERY_STEPS = 4;
/** Way back that a thing must make before it counts as having left a zone, so that nothing flickers (m). */
const BACK_M = 0.01;
/** Height over the field below which an unsterile upper arm counts as reaching over it (m), common practice. */
const REACH_OVER_M = 0.08;
/** Width of the edge of the field over which an arm may pass (m). */
const EDGE_M = 0.05;
/** How far a thing lies under its level before it counts as off the field (m). */
const OFF_FIELD_M = 0.04;
/** A cord this near to a bare rail lies on it, and the rail's crest is this high (m). */
const ON_RAIL_M = 0.004;
const CREST_M = 0.04;

const ZONES: readonly PlacedZone[] = ['belowField', 'outOfSight', 'margin', 'offField', 'overField'];

export type ZoneChange = { readonly slot: Slot; readonly zone: PlacedZone; readonly inside: boolean; readonly x: number; readonly y: number };

/** Watches where surfaces are, for the rules that need no touch. Holds who is in which zone. */
export class ZoneWatch {
  /** For each zone, 1 where a slot is in it. */
  private readonly inside: Readonly<Record<PlacedZone, Uint8Array>>;
  private changes: ZoneChange[] = [];

  constructor(
    private readonly scene: Scene,
    private readonly slots: Slots,
  ) {
    const none = (): Uint8Array => new Uint8Array(slots.count);
    this.inside = { belowField: none(), outOfSight: none(), margin: none(), offField: none(), overField: none() };
  }

  /** Changes of this step. `held` and `gone` are by thing. */
  step(step: number, humpX: number, arms: Readonly<Record<Side, Arm>>, tucked: Readonly<Record<Side, boolean>>, held: readonly boolean[], gone: readonly boolean[], assistant: AssistantLook): readonly ZoneChange[] {
    this.changes = [];
    for (const side of SIDES) if (!tucked[side]) this.watchHand(side, humpX, arms[side]);
    this.scene.things.forEach((_, k) => this.watchThing(k, humpX, held[k]!, gone[k]!));
    for (const side of SIDES) this.watchAssistant(side, humpX, assistant);
    if (step % STRAND_EVERY_STEPS === 0) {
      this.watchCord();
      this.watchPocket(humpX);
      for (const side of SIDES) this.watchDrape(side);
    }
    return this.changes;
  }

  /** Forgets a slot that got a new surface, so that the new one enters its zones anew. */
  forget(slot: Slot): void {
    for (const zone of ZONES) this.inside[zone][slot] = 0;
  }

  isIn(slot: Slot, zone: PlacedZone): boolean {
    return this.inside[zone][slot] === 1;
  }

  save(): Record<PlacedZone, Uint8Array> {
    const { belowField, outOfSight, margin, offField, overField } = this.inside;
    return { belowField: belowField.slice(), outOfSight: outOfSight.slice(), margin: margin.slice(), offField: offField.slice(), overField: overField.slice() };
  }

  restore(saved: Readonly<Record<PlacedZone, Uint8Array>>): void {
    for (const zone of ZONES) this.inside[zone].set(saved[zone]);
  }

  private set(slot: Slot, zone: PlacedZone, now: boolean, back: boolean, x: number, y: number): void {
    const places = this.inside[zone];
    const was = places[slot] === 1;
    if (now && !was) places[slot] = 1;
    else if (was && back) places[slot] = 0;
    else return;
    this.changes.push({ slot, zone, inside: now, x, y });
  }

  private watchHand(side: Side, humpX: number, arm: Arm): void {
    const { world, scenario, layout } = this.scene;
    const body = this.scene.hands[side];
    const x = world.bodyX[body]!;
    const y = world.bodyY[body]!;
    const level = levelAt(this.scene, humpX, x);
    const hidden = isHidden(this.scene, side, this.isIn(this.slots.hand[side].palm, 'outOfSight') ? BACK_M : 0);
    for (const part of HAND_PARTS) {
      const slot = this.slots.hand[side][part];
      // A hand under something is below its level as well: what hides it says more.
      this.set(slot, 'outOfSight', hidden, !hidden, x, y);
      this.set(slot, 'belowField', y < level, y > level + BACK_M, x, y);
    }
    const share = 1 - scenario.policy.sleeveAboveElbowM / (scenario.operator.upperArmM * scenario.operator.foreshortening);
    const ax = arm.shoulderX + (arm.elbowX - arm.shoulderX) * share;
    const ay = arm.shoulderY + (arm.elbowY - arm.shoulderY) * share;
    const overBed = ax > layout.crest.right.x + EDGE_M && ax < layout.crest.left.x - EDGE_M;
    const top = overBed ? levelAt(this.scene, humpX, ax) + REACH_OVER_M : -1;
    this.set(this.slots.sleeve[side].outerSleeve, 'overField', overBed && ay < top, !overBed || ay > top + BACK_M, ax, ay);
  }

  /** A bare hand low over the field is a risk, as the operator's own upper arm is. */
  private watchAssistant(side: Side, humpX: number, { hands }: AssistantLook): void {
    const { layout } = this.scene;
    const { x, y, inPlane } = hands[side];
    const over = inPlane && x > layout.crest.right.x + EDGE_M && x < layout.crest.left.x - EDGE_M;
    const top = over ? levelAt(this.scene, humpX, x) + REACH_OVER_M : -1;
    this.set(this.slots.assistant[side].hand, 'overField', over && y < top, !over || y > top + BACK_M, x, y);
  }

  private watchThing(k: number, humpX: number, held: boolean, gone: boolean): void {
    const { world, things } = this.scene;
    const body = things[k]!.body;
    const x = world.bodyX[body]!;
    const y = world.bodyY[body]!;
    // A gown or a glove that falls is lost by what it touches.
    const dressing = this.scene.gown !== null && k >= this.scene.gown.packet;
    const below = !dressing && !held && !gone && y < levelAt(this.scene, humpX, x) - OFF_FIELD_M;
    const { solid, needle } = this.slots.thing[k]!;
    for (const slot of needle >= 0 ? [solid, needle] : [solid]) this.set(slot, 'offField', below, !below, x, y);
  }

  /**
   * A stretch of cord is off the field where it hangs over the edge or lies on a bare rail, not where it is carried over them; back on
   * it once it is inside the margin.
   */
  private watchCord(): void {
    const { world, cord, layout, scenario } = this.scene;
    const start = world.strandStart(cord);
    const side: Side = scenario.room.machine.outletXM >= 0 ? 'left' : 'right';
    const crest = layout.crest[side];
    const near = scenario.cord.radiusM + ON_RAIL_M;
    const onRail = this.railIsBare(side) ? layout.rails[side].radius + near : 0;
    for (let k = 0, links = world.strandSize(cord) - 1; k < links; k++) {
      const x = (world.x[start + k]! + world.x[start + k + 1]!) / 2;
      const y = (world.y[start + k]! + world.y[start + k + 1]!) / 2;
      const past = signOf(side) * (x - crest.x);
      const lies = Math.abs(past) < onRail && y > crest.y - CREST_M && y < crest.y + near;
      const hangs = past > 0 && y < crest.y;
      this.set(this.slots.cord + k, 'offField', lies || hangs, past < -onRail - scenario.policy.marginM, x, y);
    }
  }

  /** An opened sheath must hang above the level, as the hand that holds it. */
  private watchPocket(humpX: number): void {
    const { world, sheath, cover } = this.scene;
    if (!sheath || !cover.open) return;
    const start = world.strandStart(sheath.pocket);
    for (let k = 0, links = world.strandSize(sheath.pocket) - 1; k < links; k++) {
      const x = (world.x[start + k]! + world.x[start + k + 1]!) / 2;
      const y = (world.y[start + k]! + world.y[start + k + 1]!) / 2;
      const level = levelAt(this.scene, humpX, x);
      this.set(this.slots.pocket + k, 'belowField', y < level, y > level + BACK_M, x, y);
    }
  }

  private railIsBare(side: Side): boolean {
    const { world, drapes, layout } = this.scene;
    const end = world.x[world.strandStart(drapes[side]) + world.strandSize(drapes[side]) - 1]!;
    return layout.rails[side].up && signOf(side) * (end - layout.crest[side].x) < 0;
  }

  private watchDrape(side: Side): void {
    const { world, drapes, scenario } = this.scene;
    const start = world.strandStart(drapes[side]);
    const links = world.strandSize(drapes[side]) - 1;
    const edge = this.fieldEnd(side) - scenario.policy.marginM;
    let along = 0;
    for (let k = 0; k < links; k++) {
      const dx = world.x[start + k + 1]! - world.x[start + k]!;
      const dy = world.y[start + k + 1]! - world.y[start + k]!;
      const l = length(dx, dy);
      const middle = along + l / 2;
      along += l;
      this.set(this.slots.drape[side] + k, 'margin', middle > edge, middle < edge - BACK_M, world.x[start + k]! + dx / 2, world.y[start + k]! + dy / 2);
    }
  }

  /** Distance along the sheet at which the field ends: where it passes over the edge of the bed, or its own end. */
  private fieldEnd(side: Side): number {
    const { world, drapes, layout } = this.scene;
    const start = world.strandStart(drapes[side]);
    const last = start + world.strandSize(drapes[side]) - 1;
    const edge = Math.abs(layout.crest[side].x);
    const sign = signOf(side);
    let along = 0;
    for (let i = start; i < last; i++) {
      const from = sign * world.x[i]!;
      const to = sign * world.x[i + 1]!;
      const l = length(to - from, world.y[i + 1]! - world.y[i]!);
      if (to >= edge) return along + (l * Math.max(0, edge - from)) / Math.max(to - from, l * 0.01);
      along += l;
    }
    return along;
  }
}
