import { ASSISTANT, outstretched } from './assistantBody.ts';
import type { BringingState } from './bringingState.ts';
import type { RestOfCord } from './RestOfCord.ts';

/** How far aside of the holder the shoulder is, and of the first hand while the other goes down at the machine, before the body (m). */
const AT_HOLDER_M = 0.12;
const CLOSE_M = 0.3;

/** Where to stand, and how far to bend, with the first hand at (x, y): else so far aside that the arm comes from the side, over the operator's arms (m). */
export function bringingStance({ goesFor, phase, way }: BringingState, { goesDown }: RestOfCord, x: number, y: number): { readonly x: number; readonly stoop: number } {
  const aside = (m: number): number => x + way * (m + ASSISTANT.shoulderHalfWidthM);
  const stance = outstretched(x, y, way);
  if (goesDown) return { x: aside(CLOSE_M), stoop: stance.stoop };
  // At the holder both hands are needed close to each other.
  const atHolder = goesFor === 'probe' && (phase === 'coming' || phase === 'reaching' || phase === 'lifting');
  return atHolder ? { x: aside(AT_HOLDER_M), stoop: stance.stoop } : stance;
}
