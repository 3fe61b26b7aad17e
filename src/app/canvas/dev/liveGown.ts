import type { Side } from '../../../core/base/side.ts';
import type { Command } from '../../../core/commands/command.ts';
import { HAND } from '../../../core/room/handShape.ts';
import type { RoomPicture } from '../../../core/room/picture.ts';
import { Run } from '../../../core/run/run.ts';
import { scenarioSchema } from '../../../core/scenario/schema.ts';

/** When each thing is done, in seconds. */
type Script = Readonly<Record<number, (picture: RoomPicture) => Command[]>>;

const X = -1.26;
const palm = (hand: Side, x: number, y: number): Command => ({ type: 'hand.move', hand, xMm: Math.round((X + x) * 1000), yMm: Math.round(y * 1000) });
/** Fingers level: the palm beside what the fingertips go to. */
const tips = (hand: Side, x: number, y: number): Command => ({ type: 'hand.move', hand, xMm: Math.round((x + (hand === 'left' ? 1 : -1) * HAND.gripU) * 1000), yMm: Math.round(y * 1000) });
const grip = (hand: Side): Command => ({ type: 'hand.grip', hand });
const release = (hand: Side): Command => ({ type: 'hand.release', hand });
const use = (hand: Side, on: boolean): Command => ({ type: 'hand.use', hand, on });
const turn = (hand: Side, angleDeg: number): Command => ({ type: 'hand.turn', hand, angleDeg });
const item = ({ items }: RoomPicture, id: string): RoomPicture['items'][number] => items.find((one) => one.id === id)!;
const strand = ({ strands }: RoomPicture, id: string): RoomPicture['strands'][number] => strands.find((one) => one.id === id)!;

const SCRIPT: Script = {
  0.1: (picture) => [tips('right', item(picture, 'gownPacket').x, 1.2)],
  2: (picture) => [turn('right', -35), tips('right', item(picture, 'gownPacket').x + 0.015, item(picture, 'gownPacket').y + 0.09)],
  3: () => [grip('right')],
  3.5: (picture) => [tips('right', item(picture, 'gownPacket').x, 1.45), turn('right', -10)],
  5: () => [palm('right', -0.12, 1.45), palm('left', 0.2, 1.4)],
  7: () => [use('right', true)],
  7.2: () => [use('right', false)],
  8.5: (picture) => [tips('left', strand(picture, 'gown.left').x[0]!, strand(picture, 'gown.left').y[0]!)],
  9.5: () => [grip('left')],
  10: () => [turn('left', 60), turn('right', 60), palm('right', -0.18, 1.42), palm('left', 0.18, 1.42)],
  12: () => [use('right', true), use('left', true)],
  12.2: () => [use('right', false), use('left', false)],
  12.5: () => [palm('right', -0.17, 1.75), palm('left', 0.17, 1.75)],
  14: () => [palm('right', -0.18, 1.4), palm('left', 0.18, 1.4)],
  15: () => [palm('right', -0.17, 1.7), palm('left', 0.17, 1.7)],
  16: () => [grip('left'), grip('right')],
  17: () => [palm('right', -0.2, 1.36), palm('left', 0.2, 1.36), { type: 'ask', request: 'tieBack' }],
  29: () => [release('left'), release('right'), turn('left', -35), turn('right', -35)],
  29.5: (picture) => [palm('right', -0.25, 1.29), { type: 'hand.move', hand: 'left', xMm: Math.round((item(picture, 'gloveRight').x + 0.17) * 1000), yMm: 1200 }],
  32: (picture) => [{ type: 'hand.move', hand: 'left', xMm: Math.round((item(picture, 'gloveRight').x + 0.17) * 1000), yMm: 977 }],
  33.5: () => [grip('left')],
  34: (picture) => [{ type: 'hand.move', hand: 'left', xMm: Math.round((item(picture, 'gloveRight').x + 0.17) * 1000), yMm: 1250 }, turn('left', 0), turn('right', 0)],
  35: () => [palm('right', -0.15, 1.29), palm('left', 0.15, 1.29)],
  37: () => [palm('left', -0.15 + 2 * HAND.gripU, 1.31)],
  38: () => [grip('right')],
  39: () => [release('left'), palm('left', -0.15 + 2 * HAND.gripU, 1.31)],
  39.5: () => [grip('left')],
  40: () => [palm('left', -0.28 + 2 * HAND.gripU, 1.31)],
};

/** Pictures of a real run: gown on, first glove drawn over its cuff. */
export function playGowning(seconds: number): RoomPicture[] {
  const run = new Run(scenarioSchema.parse({
    format: 'sterile-field-scenario', version: 1, id: 'dev-gown', title: 'Dev', summary: 'For pictures', seed: 1, station: 'gown', items: [],
    room: { pole: { xM: 1.6 }, kitTable: { xM: -0.67, widthM: 0.3 }, bin: { xM: 0.72, widthM: 0.3 }, assistantXM: 0.85 },
  }));
  const pictures: RoomPicture[] = [run.picture()];
  const script = new Map(Object.entries(SCRIPT).map(([at, act]) => [Math.round(Number(at) * 120), act]));
  for (let step = 0; step < seconds * 120; step++) {
    run.step(script.get(step)?.(run.picture()) ?? []);
    if (step % 2 === 1) pictures.push(run.picture());
  }
  return pictures;
}
