import { assert } from '../../base/assert.ts';
import { signOf, type Side } from '../../base/side.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { THING_SHAPES } from '../itemShapes.ts';
import type { Point } from '../layout.ts';
import { atEqualSteps } from '../layPaths.ts';

/** How far the probe hangs beside the outlet, toward the bed, and over it (m); common practice. */
const BESIDE_M = 0.14;
const OVER_M = 0.08;
/** Points of the loop, and how deep it is tried (m). */
const PIECES = 120;
const DEEPEST_M = 2.5;

/** The bare probe in its holder at the machine, face down. */
export function holderAt({ room }: Scenario): { readonly x: number; readonly y: number; readonly c: number; readonly s: number } {
  const side: Side = room.machine.outletXM >= 0 ? 'left' : 'right';
  return { x: room.machine.outletXM - signOf(side) * BESIDE_M, y: room.machine.outletYM + OVER_M, c: 0, s: -1 };
}

/** Pose of the probe in the frame of its holder. */
export const HELD_AT = { x: 0, y: 0, c: 0, s: -1 } as const;

/** The cord from the tail of the probe in its holder in one loop to the outlet: as deep as its length asks for. */
export function hangingPath(scenario: Scenario): Point[] {
  const { machine } = scenario.room;
  const { lengthM, linkM } = scenario.cord;
  const { x, y } = holderAt(scenario);
  const tail: Point = [x, y + THING_SHAPES.probe.halfLength];
  const end: Point = [machine.outletXM, machine.outletYM];
  const count = Math.round(lengthM / linkM) + 1;
  const way = end[0] > tail[0] ? 1 : -1;
  const pathAt = (sag: number): Point[] => {
    const loop = Array.from({ length: PIECES }, (_, k): Point => {
      const t = (k + 1) / PIECES;
      return [tail[0] + (end[0] - tail[0]) * t, tail[1] + (end[1] - tail[1]) * t - 4 * sag * t * (1 - t)];
    });
    return atEqualSteps([tail, ...loop, [end[0] + way * 0.5, end[1]]], linkM, count);
  };
  let low = 0;
  let high = DEEPEST_M;
  const pastOutlet = (path: readonly Point[]): boolean => (path[count - 1]![0] - end[0]) * way > 1e-6;
  assert(pastOutlet(pathAt(low)), 'the cord is long enough to reach the holder');
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (pastOutlet(pathAt(middle))) low = middle;
    else high = middle;
  }
  const path = pathAt(low);
  path[count - 1] = end;
  return path;
}
