import type { RequestId } from '../../src/core/commands/command.ts';
import type { TaskId } from '../../src/core/procedure/observation.ts';
import { levelAt } from '../../src/core/room/level.ts';
import type { Operator } from './operator.ts';

/** Where the mouth of the sheath is held: the palm of the right hand, over the patient and clear of the field (m). */
const MOUTH: readonly [number, number] = [0.04, 1.34];
/** A probe that moves no faster hangs still (m/s). */
const STILL_MPS = 0.04;
/** Half the length of the probe (m). */
const HALF_M = 0.062;

/**
 * Loads the probe as a careful operator does, in a room whose kit table is on the right and whose machine is on the left: the right hand
 * holds the mouth, the left does the rest and then holds the probe.
 */
export class Loading {
  constructor(readonly op: Operator) {}

  ask(request: RequestId, seconds = 0): this {
    this.op.send({ type: 'ask', request }).wait(seconds);
    return this;
  }

  /** The folded sheath from the kit table to over the field, in the right hand. */
  fetch(): this {
    const { op } = this;
    op.palmTo('right', -0.3, 1.38).palmTo('right', -0.75, 1.38).turn('right', -40).take('right', 'sheathRoll');
    op.palmTo('right', -0.6, 1.42).turn('right', -10).palmTo('right', MOUTH[0], MOUTH[1]);
    return this;
  }

  /** The left hand opens its mouth. */
  open(): this {
    const { op } = this;
    op.palmTo('left', 0.3, 1.35).turn('left', -10).fingersTo('left', MOUTH[0] + 0.17, MOUTH[1] - 0.01).grip('left').wait(0.6);
    if (this.op.holds('left') !== 'rim') throw new Error(`the left hand holds ${op.holds('left') ?? 'nothing'} instead of the mouth of the sheath`);
    return this;
  }

  /** The left hand lets go of the mouth, which the right spreads alone, and goes aside. */
  aside(): this {
    this.op.release('left').palmTo('left', 0.28, 1.14);
    return this;
  }

  /** Gel from a packet on the field into the sheath, as long as it is squeezed (s); it has run down at the end. The packet goes back to the field. */
  gel(seconds = 0.4, id = 'gel'): this {
    this.squeeze(seconds, id);
    this.op.turn('left', -40).endTo('left', 0.3, 1.1).endTo('left', 0.3, 1.02, 0.1).release('left').turn('left', -10).palmTo('left', 0.28, 1.14);
    return this;
  }

  /** The packet stays in the left hand. */
  squeeze(seconds = 0.4, id = 'gel'): this {
    const { op } = this;
    op.palmTo('left', 0.33, 1.3).turn('left', -40).take('left', id, 0.12).palmTo('left', 0.33, 1.36).turn('left', -10);
    const [x, y] = this.mouth();
    op.endTo('left', x + 0.02, y + 0.06).use('left', seconds).palmTo('left', 0.33, 1.36).wait(4);
    return this;
  }

  /** The probe brought over the mouth, and hanging still there. */
  bring(): this {
    return this.ask('bringProbe', 6).untilItHangs();
  }

  /** Waits until the probe has stopped swinging, no longer than `mostS` seconds. */
  untilItHangs(mostS = 15): this {
    const { world, things } = this.op.run.room.scene;
    const { body } = things[0]!;
    for (let s = 0, still = 0; s < mostS && still < 0.6; s += 0.1) {
      this.op.wait(0.1);
      still = Math.abs(world.bodyVx[body]!) < STILL_MPS ? still + 0.1 : 0;
    }
    return this;
  }

  /** The mouth moved under the face of the probe. */
  under(): this {
    const { op } = this;
    op.palmTo('right', op.hand('right').x + op.end('probe').x - this.mouth()[0], MOUTH[1], 0.1);
    return this;
  }

  /** The probe lowered into the mouth. */
  lower(): this {
    return this.ask('lower', 5.8);
  }

  /** The left hand takes the probe through the film. */
  takeProbe(): this {
    const { op } = this;
    op.fingersTo('left', op.thing('probe').x - 0.018, op.thing('probe').y - 0.01).grip('left');
    if (op.holds('left') !== 'probe') throw new Error(`the left hand holds ${op.holds('left') ?? 'nothing'} instead of the probe`);
    return this;
  }

  letGo(): this {
    return this.ask('letGo', 1.5);
  }

  /** The right hand draws the open end a little way up the cord, and leaves it. */
  drawUp(): this {
    this.op.palmTo('right', this.op.hand('right').x + 0.03, MOUTH[1] + 0.12, 0.15).release('right').palmTo('right', -0.1, 1.35);
    return this;
  }

  /** The assistant draws the rest. */
  tail(): this {
    this.ask('pullTail');
    for (let s = 0; s < 14 && !this.done('covered'); s += 0.2) this.op.wait(0.2);
    this.op.wait(2.5);
    return this;
  }

  /** A band from the field round the film, so far from the face (m). */
  band(id: string, alongM: number): this {
    const { op } = this;
    op.turn('right', -40).take('right', id, 0.14).palmTo('right', -0.15, 1.25).turn('right', -10);
    return this.putBand(alongM);
  }

  /** The band in the right hand round the film, so far from the face (m). */
  putBand(alongM: number): this {
    const [x, y] = this.onProbe(alongM);
    this.op.fingersTo('right', x, y, 0.15).use('right', 0.2).palmTo('right', -0.15, 1.2);
    return this;
  }

  bands(): this {
    return this.band('bandOne', 0.03).band('bandTwo', 0.11);
  }

  /** The probe laid on the field, from a palm there (m) and fingers that point so (degrees), and hands off. */
  layDown(x = 0.33, y = 1.03, degrees = -50): this {
    const { op } = this;
    op.palmTo('right', -0.25, 1.25).turn('left', degrees).palmTo('left', x + 0.02, y + 0.07).palmTo('left', x, y, 0.1).release('left').palmTo('left', 0.33, 1.25);
    for (let s = 0; s < 14 && !this.done('laidDown'); s += 0.2) op.wait(0.2);
    return this;
  }

  /** Up to the probe in the sheath, in the left hand, with the assistant still holding it. */
  toProbe(): this {
    return this.fetch().open().aside().gel().bring().under().lower().takeProbe();
  }

  all(): this {
    return this.toProbe().letGo().drawUp().tail().bands().layDown();
  }

  done(task: TaskId): boolean {
    return this.op.run.progress.tasks.some((report) => report.task === task && report.doneStep !== null);
  }

  /** Middle of the mouth (m). */
  mouth(): readonly [number, number] {
    return this.op.run.room.sheath!.pocket.mouth();
  }

  /** How far the closed end of the opened sheath is above the level that it must stay above (m). */
  overLevel(): number {
    const { room } = this.op.run;
    const [x, y] = room.sheath!.pocket.end();
    return y - levelAt(room.scene, room.happenings.humpX, x);
  }

  /** Place on the probe's axis so far from its face (m). */
  private onProbe(alongM: number): readonly [number, number] {
    const { world, things } = this.op.run.room.scene;
    const { body } = things[0]!;
    const u = HALF_M - alongM;
    return [world.bodyX[body]! + world.bodyC[body]! * u - 0.012, world.bodyY[body]! + world.bodyS[body]! * u];
  }
}
