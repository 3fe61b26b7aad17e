import { HandsControl } from '../../../src/app/input/HandsControl.ts';
import { HandTargets } from '../../../src/app/input/HandTargets.ts';
import { InputMode } from '../../../src/app/input/InputMode.ts';
import type { Side } from '../../../src/core/base/side.ts';

/** Controls of two open hands at rest, which are where they are sent unless `handAt` says otherwise. */
export function restingHands(handAt?: (side: Side) => { readonly x: number; readonly y: number }): HandsControl {
  const targets = new HandTargets({ left: { x: 0.25, y: 1.25, angleDeg: -20 }, right: { x: -0.25, y: 1.25, angleDeg: -20 } });
  return new HandsControl(new InputMode(), targets, { left: false, right: false }, handAt ?? ((side) => targets.at(side)));
}
