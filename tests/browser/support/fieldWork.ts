import { expect } from '@playwright/test';
import type { RoomHands } from './roomHands.ts';
import type { RoomPage, Side } from './roomPage.ts';

/** Height at which a hand passes over the rail, and where hands wait over the field, in metres. */
const OVER_RAIL_M = 1.45;
const AWAY_M = 1.3;
/** Longest that a task is waited for, in steps, and how many are made at a time. */
const MOST_STEPS = 1500;
const LOOK_STEPS = 60;

/** The work in the quiet room as a careful operator does it: the right hand takes things from the table, the left leads the probe. */
export class FieldWork {
  constructor(
    private readonly room: RoomPage,
    private readonly hands: RoomHands,
  ) {}

  async gel(): Promise<void> {
    const { hands } = this;
    await hands.palmTo('left', 0.27, OVER_RAIL_M);
    await hands.turn('right', -40);
    await hands.pick('right', 'gel');
    const site = await this.room.site();
    await hands.endTo('right', site.x - 0.05, site.y + 0.16);
    await hands.endTo('right', site.x, site.y + 0.04, 'fine');
    await hands.use('right', 1.2);
    await this.done('gel');
    await hands.endTo('right', site.x - 0.1, site.y + 0.16);
    await this.via('right', [-0.35, OVER_RAIL_M], [-0.75, OVER_RAIL_M], [-1.42, 1.25]);
    await hands.drop('right');
    await this.back();
  }

  async view(): Promise<void> {
    await this.hands.turn('left', -50);
    await this.probeToSite();
    await this.done('view');
  }

  async park(): Promise<void> {
    await this.layProbe();
    await this.done('park');
  }

  async anaesthetic(): Promise<void> {
    const { hands } = this;
    await this.fetch('anaesthetic');
    const site = await this.room.site();
    await hands.endTo('right', site.x - 0.03, site.y + 0.03, 'fine');
    await hands.endTo('right', site.x, site.y + 0.004, 'fine');
    await hands.use('right', 3.2);
    await this.done('anaesthetic');
    await hands.endTo('right', site.x - 0.08, site.y + 0.1);
    await this.putBack(-1.06);
  }

  /** Needle in one hand, probe in the other, both at the site. */
  async ready(): Promise<void> {
    const { hands } = this;
    await this.fetch('needle');
    await hands.palmTo('right', -0.35, AWAY_M);
    await hands.turn('left', -75);
    await this.probeToSite();
    const site = await this.room.site();
    await hands.endTo('right', site.x - 0.05, site.y + 0.05);
    await hands.endTo('right', site.x - 0.012, site.y + 0.012, 'fine');
    await this.done('ready');
  }

  /** After that: the needle back on the table, the probe on the field. */
  async putAway(): Promise<void> {
    const site = await this.room.site();
    await this.hands.endTo('right', site.x - 0.1, site.y + 0.1);
    await this.layProbe();
    await this.putBack(-0.87);
  }

  /** To the gauze on the table, fingers on it. */
  async toGauze(): Promise<void> {
    const { hands } = this;
    await this.via('right', [-0.3, OVER_RAIL_M], [-0.95, 1.38]);
    await hands.turn('right', -30);
    const { x, y } = await this.room.item('gauze');
    await hands.fingersTo('right', x, y + 0.16);
    await hands.fingersTo('right', x, y + 0.014, 'fine');
  }

  private async probeToSite(): Promise<void> {
    const { hands } = this;
    await hands.pick('left', 'probe');
    await hands.palmTo('left', 0.16, 1.2);
    await hands.turn('left', -5);
    const site = await this.room.site();
    await hands.endTo('left', site.x + 0.06, site.y + 0.13);
    await hands.endTo('left', site.x, site.y + 0.003, 'fine');
  }

  private async layProbe(): Promise<void> {
    const { hands } = this;
    const site = await this.room.site();
    await hands.endTo('left', site.x + 0.06, site.y + 0.13);
    await hands.turn('left', -50);
    await hands.endTo('left', 0.25, 1.06);
    await hands.endTo('left', 0.25, 0.985, 'fine');
    await hands.drop('left');
    await hands.palmTo('left', 0.27, OVER_RAIL_M);
  }

  /** Takes a thing from the table and brings it over the rail, high and level. */
  private async fetch(id: string): Promise<void> {
    const { hands } = this;
    await this.via('right', [-0.3, OVER_RAIL_M], [-0.75, OVER_RAIL_M]);
    await hands.turn('right', -30);
    await hands.pick('right', id);
    await hands.palmTo('right', -0.75, OVER_RAIL_M);
    await hands.turn('right', 10);
    await hands.palmTo('right', -0.35, OVER_RAIL_M);
    const site = await this.room.site();
    await hands.turn('right', -30);
    await hands.endTo('right', site.x - 0.1, site.y + 0.1);
  }

  /** Lays what the right hand holds on the table. */
  private async putBack(x: number): Promise<void> {
    const { hands } = this;
    await hands.palmTo('right', -0.35, OVER_RAIL_M);
    await hands.turn('right', 10);
    await hands.palmTo('right', -0.95, OVER_RAIL_M);
    await hands.turn('right', -30);
    await hands.fingersTo('right', x, 1.02);
    await hands.fingersTo('right', x, 0.975, 'fine');
    await hands.drop('right');
    await hands.palmTo('right', -0.95, AWAY_M);
    await this.back();
  }

  /** The right hand back over the field, empty. */
  private async back(): Promise<void> {
    await this.via('right', [-0.95, 1.4], [-0.75, OVER_RAIL_M], [-0.35, OVER_RAIL_M], [-0.3, 1.33]);
  }

  private async via(side: Side, ...points: readonly (readonly [number, number])[]): Promise<void> {
    for (const [x, y] of points) await this.hands.palmTo(side, x, y);
  }

  /** Goes on as it is until the task is done, and holds that nothing was broken so far. */
  private async done(task: string): Promise<void> {
    for (let k = 0; k < MOST_STEPS && !(await this.room.tasksDone()).includes(task); k += LOOK_STEPS) await this.room.advance(LOOK_STEPS);
    expect(await this.room.tasksDone()).toContain(task);
    expect(await this.room.rulesBroken()).toEqual([]);
  }
}
