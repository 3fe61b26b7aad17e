import { otherSide, signOf, type Side } from '../../src/core/base/side.ts';
import type { TaskId } from '../../src/core/procedure/observation.ts';
import type { Operator } from './operator.ts';

/** How far above the rail a hand with something in it passes, and the height at which hands wait over the field, in metres. */
const ABOVE_RAIL_M = 0.2;
const AWAY_M = 1.3;
/** Distance from the midline at which the face of the probe is laid down, in metres. */
const PARK_M = 0.25;
/** How far the face of the probe is lifted off the site to lay it down the second time (m): the cord that lies on the drape keeps it from sliding out over the rail. */
const LIFT_M = 0.05;

/** The whole procedure as a careful operator does it, step by step, in any of the rooms. */
export class WholeProcedure {
  /** Hand on the side of the kit table, which takes things from there, and the other, which works with the probe. */
  readonly table: Side;
  readonly probe: Side;
  private readonly out: number;
  private readonly over: number;

  constructor(readonly op: Operator) {
    this.table = op.thing('needle').x < 0 ? 'right' : 'left';
    this.probe = otherSide(this.table);
    this.out = signOf(this.table);
    const { crest } = op.run.room.scene.layout;
    this.over = Math.max(crest.left.y, crest.right.y) + ABOVE_RAIL_M;
  }

  /** Gel on the site, and the packet into the bin. */
  gel(): this {
    const { op, table } = this;
    // From steeply above: the packet lies beside the edge.
    op.palmTo(this.probe, -this.out * 0.27, this.over).turn(table, -60).take(table, 'gel');
    return this.squeeze().throwAway().back();
  }

  /** The same with a packet from the table, which goes back there. */
  gelFromTable(id: string): this {
    this.op.palmTo(this.probe, -this.out * 0.27, this.over);
    return this.fetch(id).squeeze().putBack(-0.6);
  }

  /** The probe on the site, held still for a view. */
  view(): this {
    const { op, probe, out } = this;
    op.turn(probe, -50).take(probe, 'probe').palmTo(probe, -out * 0.16, 1.2).turn(probe, -5);
    const site = op.site();
    op.endTo(probe, site.x - out * 0.06, site.y + 0.13).endTo(probe, site.x, site.y + 0.003, 0.08);
    this.until('view', 6);
    return this;
  }

  /** The probe laid where it stays; where no clip holds the cord, the assistant first takes its weight. */
  park(): this {
    const { op, probe, out } = this;
    if (op.run.scenario.cord.clipN === 0) op.send({ type: 'ask', request: 'takeCord' }).wait(4);
    const site = op.site();
    op.endTo(probe, site.x - out * 0.06, site.y + 0.13).turn(probe, -50);
    op.endTo(probe, -out * PARK_M, 1.06).endTo(probe, -out * PARK_M, 0.985, 0.08).release(probe).palmTo(probe, -out * 0.27, this.over);
    this.until('park', 9);
    return this;
  }

  /** Local anaesthetic from the table, given at the site, the empty syringe back on the table. */
  anaesthetic(): this {
    const { op, table, out } = this;
    this.fetch('anaesthetic');
    const site = op.site();
    op.endTo(table, site.x + out * 0.03, site.y + 0.03, 0.12).endTo(table, site.x, site.y + 0.004, 0.05).use(table, 3.2);
    op.endTo(table, site.x + out * 0.08, site.y + 0.1);
    return this.putBack(0.31);
  }

  /** Needle from the table, probe from where it was parked, both at the site. */
  ready(): this {
    const { op, table, probe, out } = this;
    this.fetch('needle');
    op.palmTo(table, out * 0.35, AWAY_M);
    this.until('park', 9);
    op.turn(probe, -75).take(probe, 'probe').palmTo(probe, -out * 0.16, 1.2).turn(probe, -5);
    const site = op.site();
    op.endTo(probe, site.x - out * 0.06, site.y + 0.13).endTo(probe, site.x, site.y + 0.003, 0.08);
    op.endTo(table, site.x + out * 0.05, site.y + 0.05).endTo(table, site.x + out * 0.012, site.y + 0.012, 0.05);
    this.until('ready', 4);
    op.endTo(table, site.x + out * 0.1, site.y + 0.1);
    op.endTo(probe, site.x - out * 0.06, site.y + LIFT_M).turn(probe, -50);
    op.endTo(probe, -out * PARK_M, 1.06).endTo(probe, -out * PARK_M, 0.985, 0.08).release(probe).palmTo(probe, -out * 0.27, this.over);
    return this.putBack(-0.42);
  }

  /** What is left of the rubbish into the bin. */
  rubbish(): this {
    const { op, table, out } = this;
    op.palmTo(table, out * 0.3, this.over).palmTo(table, out * 0.95, 1.38).turn(table, -30).take(table, 'gauze').palmTo(table, out * 1.1, AWAY_M);
    op.palmTo(table, out * 1.42, 1.25).release(table).wait(0.5);
    return this.back();
  }

  all(): this {
    return this.gel().view().park().anaesthetic().ready().rubbish();
  }

  /** Takes a thing from the table and brings it over the rail, high and level. */
  private fetch(id: string): this {
    const { op, table, out } = this;
    op.palmTo(table, out * 0.3, this.over).palmTo(table, out * 0.75, this.over).turn(table, -30).take(table, id);
    op.palmTo(table, out * 0.75, this.over).turn(table, 10).palmTo(table, out * 0.35, this.over);
    const site = op.site();
    op.turn(table, -30).endTo(table, site.x + out * 0.1, site.y + 0.1);
    return this;
  }

  /** Gel from the packet in the hand on to the site. */
  private squeeze(): this {
    const { op, table, out } = this;
    const site = op.site();
    op.endTo(table, site.x + out * 0.05, site.y + 0.16).endTo(table, site.x, site.y + 0.04, 0.1).use(table, 1.2);
    op.endTo(table, site.x + out * 0.1, site.y + 0.16);
    return this;
  }

  /** Lays what the hand holds on the table, so far outward from its middle, as a share of its half width. */
  private putBack(share: number): this {
    const { op, table, out } = this;
    const { left, right } = op.run.room.scene.layout.kitTable;
    const x = (out * (left + right) + share * (right - left)) / 2;
    op.palmTo(table, out * 0.35, this.over).turn(table, 10).palmTo(table, out * 0.95, this.over).turn(table, -30);
    op.fingersTo(table, out * x, 1.02).fingersTo(table, out * x, 0.975, 0.1).release(table);
    op.palmTo(table, out * 0.95, 1.3);
    return this.back();
  }

  /** Goes on with what the hands do until the task is done; no longer than `mostS` seconds. */
  private until(task: TaskId, mostS: number): void {
    const { op } = this;
    const done = (): boolean => op.run.progress.tasks.some((report) => report.task === task && report.doneStep !== null);
    for (let s = 0; s < mostS && !done(); s += 0.2) op.wait(0.2);
  }

  private throwAway(): this {
    const { op, table, out } = this;
    op.palmTo(table, out * 0.35, this.over).palmTo(table, out * 0.75, this.over).palmTo(table, out * 1.42, 1.25).release(table).wait(0.5);
    return this;
  }

  /** The hand of the table back over the field, empty. */
  private back(): this {
    const { op, table, out } = this;
    op.palmTo(table, out * 0.95, 1.4).palmTo(table, out * 0.75, this.over).palmTo(table, out * 0.35, this.over).palmTo(table, out * 0.3, 1.33);
    return this;
  }
}
