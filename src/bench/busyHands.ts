import { Rng } from '../core/base/rng.ts';
import { SIDES } from '../core/base/side.ts';
import type { Command } from '../core/commands/command.ts';

/** How often a hand gets a new goal, and how often it closes or opens, in steps. */
const GOAL_STEPS = 96;
const GRIP_STEPS = 240;

/** Seeded hands that work over the whole field at once, with commands by step. */
export class BusyHands {
  private readonly chance: Rng;

  constructor(seed: number) {
    this.chance = new Rng(seed);
  }

  at(step: number): Command[] {
    return SIDES.flatMap((hand, k): Command[] => {
      const own = step + k * 41;
      const commands: Command[] = [];
      if (own % GOAL_STEPS === 0) {
        const [xMm, yMm] = [Math.round(this.chance.between(-450, 450)), Math.round(this.chance.between(1080, 1350))];
        commands.push({ type: 'hand.move', hand, xMm, yMm }, { type: 'hand.turn', hand, angleDeg: Math.round(this.chance.between(-60, 10)) });
      }
      if (own % GRIP_STEPS === 0) commands.push({ type: this.chance.next() < 0.5 ? 'hand.grip' : 'hand.release', hand });
      return commands;
    });
  }
}
