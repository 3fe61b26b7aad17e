import type { Side } from '../base/side.ts';
import { HAND } from './handShape.ts';
import type { Scene } from './scene.ts';

/** Fingertips of a hand, in metres. */
export function fingertips(scene: Scene, side: Side): readonly [number, number] {
  const { world } = scene;
  const b = scene.hands[side];
  return [world.bodyX[b]! + world.bodyC[b]! * HAND.gripU, world.bodyY[b]! + world.bodyS[b]! * HAND.gripU];
}
