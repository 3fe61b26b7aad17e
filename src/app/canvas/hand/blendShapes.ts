import type { WidePoint } from '../pen/curves.ts';
import type { PathData } from '../pen/pathData.ts';
import { FINGERS, type Finger, type HandShape } from './poses.ts';

const mix = (a: number, b: number, t: number): number => a + (b - a) * t;

/** The shape between two poses; order, creases and tool change over half way. */
export function blendShapes(from: HandShape, to: HandShape, t: number): HandShape {
  if (t <= 0) return from;
  if (t >= 1) return to;
  const nearer = t < 0.5 ? from : to;
  const fingers = Object.fromEntries(FINGERS.map((finger) => [finger, blendLine(from.fingers[finger], to.fingers[finger], t)])) as Record<Finger, WidePoint[]>;
  return {
    ...nearer,
    palm: blendPath(from.palm, to.palm, t),
    fingers,
    grip: [mix(from.grip[0], to.grip[0], t), mix(from.grip[1], to.grip[1], t)],
    creases: [],
  };
}

const blendLine = (from: readonly WidePoint[], to: readonly WidePoint[], t: number): WidePoint[] =>
  from.map((point, i) => [mix(point[0], to[i]![0], t), mix(point[1], to[i]![1], t), mix(point[2], to[i]![2], t)]);

const blendPath = (from: PathData, to: PathData, t: number): PathData => ({ ops: from.ops, xy: from.xy.map((value, i) => mix(value, to.xy[i]!, t)) });
