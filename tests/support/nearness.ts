import { SIDES, signOf, type Side } from '../../src/core/base/side.ts';
import { armOf } from '../../src/core/room/driveHands.ts';
import { levelAt } from '../../src/core/room/level.ts';
import type { Slot } from '../../src/core/room/surfaces.ts';
import { TouchGeometry } from '../../src/core/room/touchGeometry.ts';
import { nearestPoints, noNearestPoints } from '../../src/core/touch/segmentGap.ts';
import type { TrackedCapsule } from '../../src/core/touch/trackedCapsule.ts';
import type { Run } from '../../src/core/run/run.ts';

/**
 * What can be named: a thing without its generation (`glove.left`, `rail.right`, `needle`), a part of it (`needle:needle`), a kind of
 * surface (`patientSkin`), and three groups: `sleeve.left` (its sterile part), `margin.left` (stretches of that drape that do not
 * count as sterile), `hungCord` (sheathed cord that left the field).
 */
export type Named = string;

/** Measures gaps between the outlines of things as they are now, in metres; below 0 they overlap. */
export class Nearness {
  private readonly geometry: TouchGeometry;
  private measuredAt = -1;
  private readonly found = new Map<Named, TrackedCapsule[]>();
  private readonly p = new Float64Array(4);
  private readonly q = new Float64Array(4);
  private readonly nearest = noNearestPoints();

  constructor(private readonly run: Run) {
    this.geometry = new TouchGeometry(run.room.scene, run.room.surfaces.slots, (slot) => slot);
  }

  /** Gap between the nearest of `some` and the nearest of `others`; Infinity when one of them is not there to be touched. */
  gap(some: Named, others: Named): number {
    this.measure();
    const first = this.capsulesOf(some);
    const second = this.capsulesOf(others);
    let least = Infinity;
    for (const a of first) for (const b of second) if (apart(a, b) < least) least = Math.min(least, this.between(a, b));
    return least;
  }

  /** Height of the palm above the level that it must stay above, in metres. */
  overLevel(side: Side): number {
    const { room } = this.run;
    const b = room.scene.hands[side];
    const { bodyX, bodyY } = room.scene.world;
    return bodyY[b]! - levelAt(room.scene, room.happenings.humpX, bodyX[b]!);
  }

  /** Height of the lowest sleeve that is not sterile above the field under it, in metres. */
  upperArmOver(side: Side): number {
    this.measure();
    const { scene, happenings } = this.run.room;
    const [arm] = this.capsulesOf(`upperArm.${side}`);
    return arm!.Ay - levelAt(scene, happenings.humpX, arm!.Ax);
  }

  /** How far the innermost sheathed cord that hangs over the covered edge still is from where it counts as back on the field, in metres. */
  cordOverEdge(): number {
    const { scene, surfaces } = this.run.room;
    const { world, cord, layout, scenario } = scene;
    const side: Side = scenario.room.machine.outletXM >= 0 ? 'left' : 'right';
    const start = world.strandStart(cord);
    let least = Infinity;
    for (let k = 0, links = world.strandSize(cord) - 1; k < links; k++) {
      if (!this.isNamed(surfaces.slots.cord + k, 'hungCord')) continue;
      const x = (world.x[start + k]! + world.x[start + k + 1]!) / 2;
      least = Math.min(least, signOf(side) * (x - layout.crest[side].x) + scenario.policy.marginM);
    }
    return least;
  }

  private measure(): void {
    if (this.measuredAt === this.run.stepCount) return;
    this.measuredAt = this.run.stepCount;
    this.found.clear();
    const { room } = this.run;
    const arms = { left: armOf(room.scene, 'left', room.torsoX), right: armOf(room.scene, 'right', room.torsoX) };
    this.geometry.update(room.torsoX, room.happenings.humpX, room.happenings.humpY, arms, { left: false, right: false }, room.gone, room.assistant.look());
  }

  private capsulesOf(what: Named): TrackedCapsule[] {
    let list = this.found.get(what);
    if (!list) this.found.set(what, (list = this.geometry.capsules.filter(({ surface }) => this.isNamed(surface, what))));
    return list;
  }

  private isNamed(slot: Slot, what: Named): boolean {
    const { surfaces } = this.run.room;
    const { slots } = surfaces;
    for (const side of SIDES) {
      const { lowerSleeve, upperSleeve, outerSleeve } = slots.sleeve[side];
      if (what === `sleeve.${side}`) return slot === lowerSleeve || slot === upperSleeve;
      if (what === `upperArm.${side}`) return slot === outerSleeve;
    }
    const { id, thing, part, kind } = surfaces.known.get(surfaces.upper[slot]!)!;
    const object = thing.split('#')[0]!;
    const outside = this.run.ledger.stateOf(id) === 'unsterile' && !this.run.ledger.isSpoiled(id);
    if (what.startsWith('margin.')) return object === what.replace('margin', 'drape') && outside;
    if (what === 'hungCord') return kind === 'sheath' && outside;
    return what === object || what === `${object}:${part}` || what === kind;
  }

  private between(a: TrackedCapsule, b: TrackedCapsule): number {
    this.p.set([a.Ax, a.Ay, a.Bx, a.By]);
    this.q.set([b.Ax, b.Ay, b.Bx, b.By]);
    nearestPoints(this.p, this.q, this.nearest);
    return this.nearest.distance - a.r - b.r;
  }
}

/** A gap that two capsules have at the least, by the boxes around them. */
function apart(a: TrackedCapsule, b: TrackedCapsule): number {
  const across = Math.max(Math.min(a.Ax, a.Bx) - Math.max(b.Ax, b.Bx), Math.min(b.Ax, b.Bx) - Math.max(a.Ax, a.Bx));
  const up = Math.max(Math.min(a.Ay, a.By) - Math.max(b.Ay, b.By), Math.min(b.Ay, b.By) - Math.max(a.Ay, a.By));
  return Math.max(across, up) - a.r - b.r;
}
