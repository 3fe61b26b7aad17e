import { Rng } from '../../../src/core/base/rng.ts';
import { SIDES, signOf } from '../../../src/core/base/side.ts';
import { STEPS_PER_SECOND } from '../../../src/core/base/time.ts';
import type { Command } from '../../../src/core/commands/command.ts';
import type { Mark } from '../../../src/core/ledger/Ledger.ts';
import { Recorder } from '../../../src/core/recording/Recorder.ts';
import { runHeader, type RunFile } from '../../../src/core/recording/recording.ts';
import type { Clearances } from '../../../src/core/room/clearance.ts';
import type { RoomPicture } from '../../../src/core/room/picture.ts';
import { QUICK_REMEDIES } from '../../support/rooms.ts';
import { freshRun } from '../../support/runOperator.ts';

/** What the run itself showed once a step was done. */
export interface Shown {
  readonly picture: RoomPicture;
  readonly marks: ReadonlyMap<string, Mark>;
  readonly clearances: Clearances;
}

/** Steps of the whole run and of a brief one. */
export const WHOLE_STEPS = 8 * STEPS_PER_SECOND + 3;
export const BRIEF_STEPS = 2 * STEPS_PER_SECOND + 3;

/**
 * A run of eight seconds, or the beginning of it, in which both hands go about at random, close and open, break something, then stand still and clear while the
 * left glove is changed. With it what the run showed after each step.
 */
export function tracedRun(steps = WHOLE_STEPS): { readonly file: RunFile; readonly shown: readonly Shown[] } {
  const run = freshRun(QUICK_REMEDIES);
  const recorder = new Recorder(runHeader({ runId: 'traced', engine: 'test', scenario: QUICK_REMEDIES, seed: QUICK_REMEDIES.seed, startedAt: '2026-01-01T00:00:00.000Z' }));
  const chance = new Rng(5);
  const shown: Shown[] = [];
  for (let step = 0; !run.finished; step++) {
    const commands = step === steps - 1 ? [{ type: 'run.end' } as const] : commandsAt(step, chance);
    run.step(commands);
    recorder.played(commands, run);
    shown.push({ picture: run.picture(), marks: run.ledger.marks(), clearances: run.room.clearances() });
  }
  return { file: recorder.finish(run), shown };
}

const BUSY_STEPS = 3 * STEPS_PER_SECOND;

function commandsAt(step: number, chance: Rng): Command[] {
  if (step < BUSY_STEPS) {
    if (step % 45 !== 0) return [];
    return SIDES.flatMap((hand): Command[] => [
      { type: 'hand.move', hand, xMm: Math.round(chance.between(-450, 450)), yMm: Math.round(chance.between(900, 1250)) },
      { type: 'hand.turn', hand, angleDeg: Math.round(chance.between(-60, 10)) },
      { type: chance.next() < 0.6 ? 'hand.grip' : 'hand.release', hand },
    ]);
  }
  if (step === BUSY_STEPS) return SIDES.flatMap((hand): Command[] => [{ type: 'hand.release', hand }, { type: 'hand.move', hand, xMm: signOf(hand) * 270, yMm: 1300 }]);
  if (step === BUSY_STEPS + 30) return [{ type: 'notice' }];
  if (step === BUSY_STEPS + 60) return [{ type: 'remedy.start', remedy: 'changeGlove', thing: 'left' }];
  return [];
}
