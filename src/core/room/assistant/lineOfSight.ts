import type { Point } from '../layout.ts';
import type { Scene } from '../scene.ts';

/** Where eyes are and how the two bodies stand now, in metres. */
export interface Looking {
  readonly eyeX: number;
  readonly eyeY: number;
  readonly operatorX: number;
  readonly humpX: number;
  readonly humpY: number;
}

/** A point this near to what hides it lies on its surface, not behind it (m). */
const ON_SURFACE_M = 0.015;

/**
 * Whether eyes see the point (x, y): not through the patient's hump, the mattress or the table top, and not through the
 * operator. The operator stands behind the plane of bed and field, so only what lies beyond the body is hidden by it, not what the
 * hands do before it. Pole and machine stand behind the plane as well.
 */
export function canSee(scene: Scene, { eyeX, eyeY, operatorX, humpX, humpY }: Looking, x: number, y: number): boolean {
  const { layout, scenario } = scene;
  const { mattress, kitTable } = layout;
  const eye: Point = [eyeX, eyeY];
  // Seen from just before the point, so that its own surface does not hide it.
  const back = ON_SURFACE_M / Math.max(Math.sqrt((eyeX - x) * (eyeX - x) + (eyeY - y) * (eyeY - y)), ON_SURFACE_M);
  const at: Point = [x + (eyeX - x) * back, y + (eyeY - y) * back];
  const box = (left: number, bottom: number, right: number, top: number): Point[] => [[left, bottom], [right, bottom], [right, top], [left, top]];
  const solid = [
    layout.hump.map(([px, py]): Point => [px + humpX, py + humpY]),
    box(-mattress.halfWidth, mattress.bottom, mattress.halfWidth, mattress.top),
    box(kitTable.left, kitTable.top - 0.03, kitTable.right, kitTable.top),
  ];
  if (solid.some((outline) => crosses(eye, at, outline))) return false;
  const way = eyeX >= operatorX ? 1 : -1;
  const half = scenario.operator.shoulderHalfWidthM;
  if (way * (x - operatorX) > -half) return true;
  return !crosses(eye, at, box(operatorX - half, scenario.operator.waistM - BELOW_WAIST_M, operatorX + half, scenario.operator.faceM + HEAD_M));
}

/** The gown hangs so far below the waist before the bed hides it, and the head rises so far over the middle of the face (m). */
const BELOW_WAIST_M = 0.25;
const HEAD_M = 0.12;

/** Whether the line from `a` to `b` meets a side of the outline. */
function crosses(a: Point, b: Point, outline: readonly Point[]): boolean {
  return outline.some((p, k) => {
    const q = outline[(k + 1) % outline.length]!;
    return side(a, b, p) * side(a, b, q) < 0 && side(p, q, a) * side(p, q, b) < 0;
  });
}

const side = (a: Point, b: Point, p: Point): number => (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
