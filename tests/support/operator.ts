import { STEPS_PER_SECOND, secondsToSteps } from '../../src/core/base/time.ts';
import { PI } from '../../src/core/base/portableMath.ts';
import type { Side } from '../../src/core/base/side.ts';
import type { Command } from '../../src/core/commands/command.ts';
import { HAND } from '../../src/core/room/handShape.ts';
import { fingersDirection } from '../../src/core/room/driveHands.ts';
import { minimumJerk } from '../../src/core/room/patient.ts';
import { workingEnd } from '../../src/core/room/work.ts';
import type { Run } from '../../src/core/run/run.ts';
import { Nearness, type Named } from './nearness.ts';

export interface SentCommand {
  readonly step: number;
  readonly command: Command;
}

/** Least gap seen so far between two named things, in metres. */
export interface Watched {
  least: number;
}

/** A hand that moves less than this in a 60th of a second stands still, in metres. */
const STILL_M = 0.00005;
/** How long a hand that creeps looks before it goes on (s). */
const LOOK_S = 0.05;
/** Most movements in which a hand feels its way, 60 a second. */
const FEEL_STEPS = 1200;

/**
 * A scripted operator: it sees the room as a person does (where hands, things and sheet are) and acts only through the command
 * list, with minimum-jerk hand movements (Flash and Hogan 1985), 60 commands a second, like real input.
 */
export class Operator {
  readonly commands: SentCommand[] = [];
  readonly near: Nearness;
  private queued: Command[] = [];
  private readonly watches: { readonly of: () => number; readonly seen: Watched }[] = [];

  constructor(readonly run: Run) {
    this.near = new Nearness(run);
  }

  /** From now on keeps the least gap between two things. */
  watch(some: Named, others: Named): Watched {
    return this.watchLeast(() => this.near.gap(some, others));
  }

  /** From now on keeps the least value of a measure. */
  watchLeast(of: () => number): Watched {
    const seen = { least: of() };
    this.watches.push({ of, seen });
    return seen;
  }

  /** Middle of the palm in metres. */
  hand(side: Side): { x: number; y: number } {
    const b = this.run.room.scene.hands[side];
    return { x: this.run.room.scene.world.bodyX[b]!, y: this.run.room.scene.world.bodyY[b]! };
  }

  thing(id: string): { x: number; y: number } {
    const k = this.indexOf(id);
    const { body } = this.run.room.scene.things[k]!;
    return { x: this.run.room.scene.world.bodyX[body]!, y: this.run.room.scene.world.bodyY[body]! };
  }

  end(id: string): { x: number; y: number } {
    const [x, y] = workingEnd(this.run.room.scene, this.indexOf(id));
    return { x, y };
  }

  site(): { x: number; y: number } {
    return this.run.room.site();
  }

  holds(side: Side): string | null {
    const { hold } = this.run.room.hands[side];
    if (!hold) return null;
    if (hold.kind === 'thing') return this.run.room.scene.things[hold.thing]!.id;
    return hold.kind === 'node' ? hold.strand : hold.kind;
  }

  /** Sends a command with the next step. */
  send(command: Command): this {
    this.queued.push(command);
    return this;
  }

  /** Lets time pass. */
  wait(seconds: number): this {
    for (let k = secondsToSteps(seconds); k > 0 && !this.run.finished; k--) this.step();
    return this;
  }

  /** Moves the palm to (x, y) in a straight line; `speed` is the mean speed in m/s. */
  palmTo(side: Side, x: number, y: number, speed = 0.25): this {
    return this.palmsTo([[side, x, y]], speed);
  }

  /** Moves both palms at once, each in a straight line. */
  palmsTo(goals: readonly (readonly [Side, number, number])[], speed = 0.25): this {
    // A hand that came along while the other led goes on from where it is, as on the page.
    const from = goals.map(([side]) => {
      const { tucked, wishX, wishY } = this.run.room.hands[side];
      return tucked ? this.hand(side) : { x: wishX, y: wishY };
    });
    const far = Math.max(...goals.map(([, x, y], k) => Math.sqrt((x - from[k]!.x) ** 2 + (y - from[k]!.y) ** 2)));
    const steps = Math.max(2, Math.ceil((far / speed) * STEPS_PER_SECOND));
    for (let k = 2; ; k += 2) {
      const share = minimumJerk(Math.min(1, k / steps));
      goals.forEach(([hand, x, y], n) => {
        this.send({ type: 'hand.move', hand, xMm: Math.round((from[n]!.x + (x - from[n]!.x) * share) * 1000), yMm: Math.round((from[n]!.y + (y - from[n]!.y) * share) * 1000) });
      });
      this.step();
      this.step();
      if (k >= steps) break;
    }
    return this.wait(0.25);
  }

  /** Moves the fingertips to (x, y), wherever the palm then is. */
  fingersTo(side: Side, x: number, y: number, speed = 0.25): this {
    const [c, s] = fingersDirection(side, this.run.room.hands[side].wishAngle);
    return this.palmTo(side, x - c * HAND.gripU, y - s * HAND.gripU, speed);
  }

  /** Through points of the fingertips, one after the other. */
  fingersVia(side: Side, points: readonly (readonly [number, number])[], speed = 0.25): this {
    for (const [x, y] of points) this.fingersTo(side, x, y, speed);
    return this;
  }

  turn(side: Side, degrees: number): this {
    this.send({ type: 'hand.turn', hand: side, angleDeg: degrees });
    return this.wait(Math.abs(degrees - (this.run.room.hands[side].targetAngle * 180) / PI) / 200 + 0.1);
  }

  grip(side: Side): this {
    return this.send({ type: 'hand.grip', hand: side }).wait(0.45);
  }

  release(side: Side): this {
    return this.send({ type: 'hand.release', hand: side }).wait(0.3);
  }

  use(side: Side, seconds: number): this {
    this.send({ type: 'hand.use', hand: side, on: true }).wait(seconds);
    return this.send({ type: 'hand.use', hand: side, on: false }).wait(0.1);
  }

  /** Takes a thing from above. Throws when the fingers did not get it, so that a script cannot go on without. */
  take(side: Side, id: string, above = 0.16): this {
    const { x, y } = this.thing(id);
    this.fingersTo(side, x, y + above).fingersTo(side, x, y + 0.014, 0.12).grip(side);
    if (this.holds(side) !== id) throw new Error(`the ${side} hand holds ${this.holds(side) ?? 'nothing'} instead of ${id}`);
    return this;
  }

  /** Moves the hand so that the working end of what it holds comes to (x, y). */
  endTo(side: Side, x: number, y: number, speed = 0.2): this {
    const id = this.holds(side);
    if (!id) throw new Error(`the ${side} hand holds nothing`);
    const end = this.end(id);
    const palm = this.hand(side);
    return this.palmTo(side, palm.x + x - end.x, palm.y + y - end.y, speed);
  }

  /**
   * Moves the palm in the direction (dx, dy), slower the nearer it is, until what `gap` measures would come down to `wanted` metres
   * once the hand has caught up. Throws when it never does.
   */
  approach(side: Side, dx: number, dy: number, gap: () => number, wanted: number): this {
    let { wishX: x, wishY: y } = this.run.room.hands[side];
    for (let k = 0; k < FEEL_STEPS; k++) {
      const before = this.hand(side);
      const left = gap() - this.lag(side) - wanted;
      if (gap() - wanted < 0.0007 && left < 0) return this.wait(0.1);
      const stride = left < 0.0007 ? 0 : left > 0.03 ? 0.003 : 0.001;
      this.nudge(side, (x += dx * stride), (y += dy * stride));
      const now = this.hand(side);
      // Something holds the hand back (a cord, a sheet): it goes on in small steps.
      if (stride === 0 && Math.abs(now.x - before.x) + Math.abs(now.y - before.y) < STILL_M) this.nudge(side, (x += dx * 0.001), (y += dy * 0.001));
    }
    throw new Error(`the ${side} hand came no nearer than ${gap().toFixed(4)} m`);
  }

  /**
   * The same with something that follows the hand late and unevenly (a cord that slides, a sheet): a millimetre at a time, and a look
   * at what came of it before the next.
   */
  creep(side: Side, dx: number, dy: number, gap: () => number, wanted: number): this {
    let { wishX: x, wishY: y } = this.run.room.hands[side];
    for (let k = 0; k < FEEL_STEPS / 3; k++) {
      if (gap() <= wanted) return this;
      this.nudge(side, (x += dx * 0.001), (y += dy * 0.001));
      this.wait(LOOK_S);
    }
    throw new Error(`the ${side} hand came no nearer than ${gap().toFixed(4)} m`);
  }

  /** Moves the palm in the direction (dx, dy) until `gap` says that there is a touch, and holds still there for a moment. */
  touch(side: Side, dx: number, dy: number, gap: () => number): this {
    let { wishX: x, wishY: y } = this.run.room.hands[side];
    for (let k = 0; k < FEEL_STEPS; k++) {
      if (gap() <= 0.0005) return this.wait(0.1);
      this.nudge(side, (x += dx * 0.001), (y += dy * 0.001));
    }
    throw new Error(`the ${side} hand touched nothing: ${gap().toFixed(4)} m are left`);
  }

  finish(): this {
    return this.send({ type: 'run.end' }).wait(1 / STEPS_PER_SECOND);
  }

  /** How far the hand is behind where it was sent, in metres. */
  private lag(side: Side): number {
    const { x, y } = this.hand(side);
    const { wishX, wishY } = this.run.room.hands[side];
    return Math.sqrt((wishX - x) ** 2 + (wishY - y) ** 2);
  }

  private nudge(side: Side, x: number, y: number): void {
    this.send({ type: 'hand.move', hand: side, xMm: Math.round(x * 1000), yMm: Math.round(y * 1000) });
    this.step();
    this.step();
  }

  private indexOf(id: string): number {
    const k = this.run.room.scene.things.findIndex((thing) => thing.id === id);
    if (k < 0) throw new Error(`there is no ${id}`);
    return k;
  }

  private step(): void {
    const commands = this.queued;
    this.queued = [];
    for (const command of commands) this.commands.push({ step: this.run.stepCount, command });
    this.run.step(commands);
    for (const { of, seen } of this.watches) seen.least = Math.min(seen.least, of());
  }
}
