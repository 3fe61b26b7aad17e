import { Rng } from '../../../../src/core/base/rng.ts';
import { SIDES, type Side } from '../../../../src/core/base/side.ts';
import { PI, sin } from '../../../../src/core/base/portableMath.ts';
import { STEPS_PER_SECOND } from '../../../../src/core/base/time.ts';
import type { Command } from '../../../../src/core/commands/command.ts';

const STEPS_PER_POINTER_EVENT = 2;
const TREMOR_HZ = 9;

/** One hand on its way: minimum-jerk reaches between places in reach, with short rests, and physiological tremor on top. */
class ReachingHand {
  private readonly rng: Rng;
  private from: readonly [number, number];
  private to: readonly [number, number];
  private startS = 0;
  private endS = 0;
  private readonly tremorMm: number;

  constructor(seed: number) {
    this.rng = new Rng(seed);
    this.from = this.somewhere();
    this.to = this.from;
    this.tremorMm = this.rng.between(0.4, 1.2);
  }

  /** Position in millimetres at a time in seconds; times rise from call to call. */
  at(timeS: number): readonly [number, number] {
    if (timeS >= this.endS) this.nextReach(timeS);
    const part = Math.min(1, (timeS - this.startS) / (this.endS - this.startS));
    const way = part ** 3 * (10 - 15 * part + 6 * part ** 2);
    const tremor = this.tremorMm * sin(2 * PI * TREMOR_HZ * timeS) + this.rng.between(-0.4, 0.4);
    return [this.from[0] + way * (this.to[0] - this.from[0]) + tremor, this.from[1] + way * (this.to[1] - this.from[1]) + 0.7 * tremor];
  }

  /** A reach at about 0.4 m/s on average, or one time in four a rest in place. */
  private nextReach(timeS: number): void {
    this.from = this.to;
    const rests = this.rng.next() < 0.25;
    this.to = rests ? this.from : this.somewhere();
    const distanceM = Math.hypot(this.to[0] - this.from[0], this.to[1] - this.from[1]) / 1000;
    this.startS = timeS;
    this.endS = timeS + (rests ? this.rng.between(0.3, 1.5) : Math.max(0.3, distanceM / 0.4));
  }

  private somewhere(): readonly [number, number] {
    return [this.rng.between(-700, 700), this.rng.between(1000, 1500)];
  }
}

/**
 * Commands of busy work: both hands move without pause, told 60 times a second each, one turns now and then, and every few
 * seconds something is gripped or let go.
 */
export function busyHands(seconds: number, seed: number): Map<number, Command[]> {
  const hands: Record<Side, ReachingHand> = { right: new ReachingHand(seed), left: new ReachingHand(seed + 1) };
  const rng = new Rng(seed + 2);
  const commands = new Map<number, Command[]>();
  const last: Record<Side, string> = { right: '', left: '' };
  for (let step = 0; step < seconds * STEPS_PER_SECOND; step += STEPS_PER_POINTER_EVENT) {
    const now: Command[] = [];
    for (const hand of SIDES) {
      const [xMm, yMm] = hands[hand].at(step / STEPS_PER_SECOND).map(Math.round) as [number, number];
      if (last[hand] !== `${xMm} ${yMm}`) now.push({ type: 'hand.move', hand, xMm, yMm });
      last[hand] = `${xMm} ${yMm}`;
      if (rng.next() < 0.02) now.push({ type: 'hand.turn', hand, angleDeg: Math.round(rng.between(-60, 60)) });
      if (rng.next() < 0.005) now.push({ type: rng.next() < 0.5 ? 'hand.grip' : 'hand.release', hand });
    }
    if (now.length > 0) commands.set(step, now);
  }
  return commands;
}
