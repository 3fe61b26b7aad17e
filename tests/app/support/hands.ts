import { HandsControl } from '../../../src/app/input/HandsControl.ts';
import { HandTargets } from '../../../src/app/input/HandTargets.ts';
import { InputMode } from '../../../src/app/input/InputMode.ts';

/** Controls of two open hands at rest. */
export function restingHands(): HandsControl {
  const start = { left: { x: 0.25, y: 1.25, angleDeg: -20 }, right: { x: -0.25, y: 1.25, angleDeg: -20 } };
  return new HandsControl(new InputMode(), new HandTargets(start), { left: false, right: false });
}
