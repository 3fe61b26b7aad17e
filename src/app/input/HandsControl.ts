import type { Command } from '../../core/commands/command.ts';
import { SIDES, signOf, type Side } from '../../core/base/side.ts';
import { CommandQueue } from './CommandQueue.ts';
import type { Point } from './followPointer.ts';
import type { HandTargets } from './HandTargets.ts';
import type { InputMode } from './InputMode.ts';
import type { Leader } from './inputMachine.ts';
import { distance } from './RoomView.ts';

/** How long a hand may be closed on nothing before it opens again: a fifth of a second. */
const EMPTY_STEPS = 24;
/** A hand that nobody moved for so long, and that is so far from where it was sent, came along with the body: half a second, and in metres. */
const IDLE_STEPS = 60;
const ALONG_M = 0.3;

/**
 * What every control (mouse, finger, key, stick, button on the screen) does to the hands; the one way from a person to commands.
 * Nothing passes while the run is paused or a dialog is open.
 */
export class HandsControl {
  private readonly queue = new CommandQueue();
  private readonly closed: Record<Side, boolean>;
  private readonly emptySince: Record<Side, number | null> = { left: null, right: null };
  private readonly held: Record<Side, boolean> = { left: false, right: false };
  private step = 0;
  private readonly movedStep: Record<Side, number> = { left: 0, right: 0 };
  private readonly using: Record<Side, boolean> = { left: false, right: false };

  constructor(
    readonly mode: InputMode,
    private readonly targets: HandTargets,
    closed: Readonly<Record<Side, boolean>>,
    private readonly handAt: (side: Side) => Point,
  ) {
    this.closed = { ...closed };
  }

  get active(): Side {
    return this.mode.context.active;
  }

  /** Commands for the next step. */
  take(step: number): readonly Command[] {
    this.step = step;
    return [...this.targets.commandsFor(step), ...this.queue.take()];
  }

  /** Where a hand is sent; one that came along while the other led goes on from where it is. */
  targetOf(side: Side): Point {
    const sent = this.targets.at(side);
    const is = this.handAt(side);
    if (this.step - this.movedStep[side] > IDLE_STEPS && distance(sent, is) > ALONG_M) this.targets.goOnFrom(side, is.x, is.y);
    return this.targets.at(side);
  }

  led(leader: Leader): void {
    if (this.mode.context.leader !== leader) this.mode.send({ type: 'leader.used', leader });
  }

  choose(side: Side): void {
    if (this.active !== side) this.mode.send({ type: 'hand.choose', side });
  }

  swap(): void {
    this.mode.send({ type: 'hand.swap' });
  }

  moveTo(side: Side, x: number, y: number): void {
    if (!this.mode.playing) return;
    this.movedStep[side] = this.step;
    this.targets.moveTo(side, x, y);
  }

  moveBy(side: Side, dx: number, dy: number): void {
    const { x, y } = this.targetOf(side);
    this.moveTo(side, x + dx, y + dy);
  }

  /** Raises the fingertips. */
  turnBy(side: Side, degrees: number): void {
    if (this.mode.playing) this.targets.turnBy(side, degrees);
  }

  /** Turns the hand as it is seen on the screen, anticlockwise. */
  rotateBy(side: Side, degrees: number): void {
    this.turnBy(side, -signOf(side) * degrees);
  }

  isClosed(side: Side): boolean {
    return this.closed[side];
  }

  setGrip(side: Side, closed: boolean): void {
    if (!this.mode.playing || this.closed[side] === closed) return;
    this.closed[side] = closed;
    this.queue.push({ type: closed ? 'hand.grip' : 'hand.release', hand: side });
  }

  flipGrip(side: Side): void {
    this.setGrip(side, !this.closed[side]);
  }

  /**
   * The run says which hands really hold something. A hand that stays closed on nothing opens after a moment, so that the next press
   * closes it again. Gives the hands that opened, and whether they had held something.
   */
  settleGrips(holds: Readonly<Record<Side, boolean>>, step: number): readonly { readonly side: Side; readonly held: boolean }[] {
    const opened: { side: Side; held: boolean }[] = [];
    for (const side of SIDES) {
      const empty = this.closed[side] && !holds[side];
      if (!empty) {
        this.emptySince[side] = null;
        this.held[side] = holds[side];
        continue;
      }
      const since = (this.emptySince[side] ??= step);
      if (step - since < EMPTY_STEPS) continue;
      opened.push({ side, held: this.held[side] });
      this.closed[side] = false;
      this.emptySince[side] = null;
      this.queue.push({ type: 'hand.release', hand: side });
    }
    return opened;
  }

  use(side: Side, on: boolean): void {
    if (this.using[side] === on || (on && !this.mode.playing)) return;
    this.using[side] = on;
    this.queue.push({ type: 'hand.use', hand: side, on });
  }

  /** Anything but hands: notice, remedies, requests, pace, the end. */
  order(command: Command): void {
    this.queue.push(command);
  }
}
