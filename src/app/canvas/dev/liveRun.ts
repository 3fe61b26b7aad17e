import { Run } from '../../../core/run/run.ts';
import type { Side } from '../../../core/base/side.ts';
import type { Command } from '../../../core/commands/command.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { scenarioSchema } from '../../../core/scenario/schema.ts';
import quietRoom from '../../../../scenarios/quiet-room.json';

/** Palm to fingertips, in millimetres. */
const REACH_MM = 85;

/** Pictures of a real run: both hands take their things and bring them to the site. */
export function playRun(seconds: number): RoomPicture[] {
  const run = new Run(scenarioSchema.parse(quietRoom));
  const pictures: RoomPicture[] = [run.picture()];
  const item = (id: string) => run.picture().items.find((one) => one.id === id)!;
  const [probe, needle] = [item('probe'), item('needle')];
  const move = (hand: Side, x: number, y: number): Command => ({ type: 'hand.move', hand, xMm: Math.round(x * 1000), yMm: Math.round(y * 1000) });
  const tips = (hand: Side) => ((hand === 'left' ? 1 : -1) * REACH_MM * 0.94) / 1000;
  const script: Record<number, Command[]> = {
    10: [move('left', probe.x + tips('left'), probe.y + 0.03), move('right', needle.x + tips('right'), needle.y + 0.03)],
    130: [{ type: 'hand.grip', hand: 'left' }, { type: 'hand.grip', hand: 'right' }],
    180: [move('left', 0.1, 1.24), move('right', -0.25, 1.23)],
    300: [move('left', 0.032, 1.172), { type: 'hand.turn', hand: 'left', angleDeg: -6 }],
  };
  for (let step = 0; step < seconds * 120; step++) {
    run.step(script[step] ?? []);
    if (step % 2 === 1) pictures.push(run.picture());
  }
  return pictures;
}
