import { limb, type WidePoint } from '../pen/curves.ts';
import type { PathData } from '../pen/pathData.ts';
import { FINGERS, type Finger, type HandShape } from './poses.ts';

/** Thickness of a glove as a factor on the half width of a finger. */
const GLOVE = 1.05;

/** Samples per stretch of a finger's centre line. */
const PIECES = 2;

/** Outlines of the fingers of a shape, in millimetres. */
export type Outlines = Readonly<Record<Finger, PathData>>;

const known = new Map<HandShape, Map<boolean, Outlines>>();

/** Outlines of the four poses are kept; those of a blend are made for it. */
export function outlinesOf(shape: HandShape, gloved: boolean): Outlines {
  const kept = known.get(shape)?.get(gloved);
  if (kept !== undefined) return kept;
  const factor = gloved ? GLOVE : 1;
  const widened = (line: readonly WidePoint[]): WidePoint[] => line.map(([x, y, r]) => [x, y, r * factor]);
  const outlines = Object.fromEntries(FINGERS.map((finger) => [finger, limb(widened(shape.fingers[finger]), PIECES)])) as unknown as Outlines;
  if (shape.creases.length > 0) known.set(shape, new Map([...(known.get(shape) ?? []), [gloved, outlines]]));
  return outlines;
}
