import type { Side } from '../../../core/base/side.ts';
import type { Command } from '../../../core/commands/command.ts';
import { HAND } from '../../../core/room/handShape.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { Run } from '../../../core/run/run.ts';
import { scenarioSchema } from '../../../core/scenario/schema.ts';

/** When each thing is done, in seconds. */
type Script = Readonly<Record<number, (picture: RoomPicture) => Command[]>>;

/** Where the middle of the palm must be for the fingertips to be at (x, y), in metres. */
const tipsTo = (hand: Side, x: number, y: number): Command => ({ type: 'hand.move', hand, xMm: Math.round((x + (hand === 'left' ? 1 : -1) * HAND.gripU) * 1000), yMm: Math.round(y * 1000) });
const grip = (hand: Side): Command => ({ type: 'hand.grip', hand });
const roll = ({ items }: RoomPicture): RoomPicture['items'][number] => items.find(({ kind }) => kind === 'sheathRoll')!;

/** Hands go over the rails, not through them. */
const SCRIPT: Script = {
  0.1: () => [tipsTo('right', -0.6, 1.42)],
  1: (picture) => [tipsTo('right', roll(picture).x - 0.02, roll(picture).y + 0.15)],
  2: (picture) => [tipsTo('right', roll(picture).x - 0.02, roll(picture).y + 0.01)],
  3: () => [grip('right')],
  3.4: () => [tipsTo('right', -0.6, 1.44)],
  4.4: () => [tipsTo('right', -0.1, 1.4)],
  6: (picture) => [tipsTo('left', roll(picture).x + roll(picture).c * 0.05, roll(picture).y + roll(picture).s * 0.05)],
  7.2: () => [grip('left')],
  7.6: () => [tipsTo('left', 0.055, 1.36), tipsTo('right', -0.055, 1.36), { type: 'ask', request: 'bringProbe' }],
  18: () => [{ type: 'ask', request: 'lower' }],
  25: () => [{ type: 'hand.release', hand: 'left' }],
  26: () => [tipsTo('left', 0.25, 1.3)],
};

/** Pictures of a real run: the sheath is opened and the probe lowered into it. */
export function playLoading(seconds: number): RoomPicture[] {
  const run = new Run(scenarioSchema.parse({
    format: 'sterile-field-scenario', version: 1, id: 'dev-loading', title: 'Dev', summary: 'For pictures', seed: 1, station: 'sheath',
    items: [{ id: 'gel', kind: 'gelPacket', xM: -0.9 }, { id: 'bandOne', kind: 'band', xM: -1.15 }, { id: 'bandTwo', kind: 'band', xM: -1.11 }, { id: 'bottle', kind: 'gelBottle', xM: 1.25 }],
  }));
  const pictures: RoomPicture[] = [run.picture()];
  const script = new Map(Object.entries(SCRIPT).map(([at, act]) => [Math.round(Number(at) * 120), act]));
  for (let step = 0; step < seconds * 120; step++) {
    run.step(script.get(step)?.(run.picture()) ?? []);
    if (step % 2 === 1) pictures.push(run.picture());
  }
  return pictures;
}
