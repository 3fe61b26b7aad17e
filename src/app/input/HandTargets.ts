import type { Command } from '../../core/commands/command.ts';
import type { Side } from '../../core/base/side.ts';

const SIDES: readonly Side[] = ['right', 'left'];
const TURN_LIMIT_DEG = 120;
/** Room in which a hand can be sent, in metres: between the walls. */
const REACH = { xMin: -2.2, xMax: 2.2, yMin: 0.05, yMax: 2.2 };

interface Target {
  x: number;
  y: number;
  angleDeg: number;
}

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/**
 * Where each hand is asked to be, in metres and degrees. Turns that into commands in whole millimetres and degrees: a move at
 * most every second step, and nothing at all while nothing changed, so that recordings stay small.
 */
export class HandTargets {
  private readonly wanted: Record<Side, Target>;
  private readonly sent: Record<Side, { xMm: number; yMm: number; angleDeg: number }>;

  constructor(start: Readonly<Record<Side, { readonly x: number; readonly y: number; readonly angleDeg: number }>>) {
    this.wanted = { left: { ...start.left }, right: { ...start.right } };
    this.sent = { left: inWholeUnits(this.wanted.left), right: inWholeUnits(this.wanted.right) };
  }

  at(side: Side): Readonly<Target> {
    return this.wanted[side];
  }

  moveTo(side: Side, x: number, y: number): void {
    this.wanted[side].x = clamp(x, REACH.xMin, REACH.xMax);
    this.wanted[side].y = clamp(y, REACH.yMin, REACH.yMax);
  }

  /** The hand goes on from there: nothing is sent before it is moved. */
  goOnFrom(side: Side, x: number, y: number): void {
    this.moveTo(side, x, y);
    const { xMm, yMm } = inWholeUnits(this.wanted[side]);
    this.sent[side] = { ...this.sent[side], xMm, yMm };
  }

  turnBy(side: Side, degrees: number): void {
    this.wanted[side].angleDeg = clamp(this.wanted[side].angleDeg + degrees, -TURN_LIMIT_DEG, TURN_LIMIT_DEG);
  }

  /** Commands due at this step: none on odd steps. */
  commandsFor(step: number): Command[] {
    if (step % 2 !== 0) return [];
    return SIDES.flatMap((side) => this.changesOf(side));
  }

  private changesOf(hand: Side): Command[] {
    const now = inWholeUnits(this.wanted[hand]);
    const before = this.sent[hand];
    this.sent[hand] = now;
    const changes: Command[] = [];
    if (now.xMm !== before.xMm || now.yMm !== before.yMm) changes.push({ type: 'hand.move', hand, xMm: now.xMm, yMm: now.yMm });
    if (now.angleDeg !== before.angleDeg) changes.push({ type: 'hand.turn', hand, angleDeg: now.angleDeg });
    return changes;
  }
}

function inWholeUnits(target: Target): { xMm: number; yMm: number; angleDeg: number } {
  return { xMm: Math.round(target.x * 1000), yMm: Math.round(target.y * 1000), angleDeg: Math.round(target.angleDeg) };
}
