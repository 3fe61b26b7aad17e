import { cos, length, PI, sin } from '../base/portableMath.ts';
import { signOf, type Side } from '../base/side.ts';
import type { Scenario } from '../scenario/schema.ts';
import { skinHeight, type Layout, type Point } from './layout.ts';

/** Radius of the sheet's edge line in metres: half of the space that a folded non-woven sheet takes up. */
export const DRAPE_RADIUS_M = 0.0015;

/**
 * `count` points along a line through `corners`, each exactly `step` from the one before, measured straight; where the line is too
 * short the last direction goes on.
 */
export function atEqualSteps(corners: readonly Point[], step: number, count: number): Point[] {
  const points: Point[] = [corners[0]!];
  let next = 1;
  while (points.length < count) {
    const [x, y] = points[points.length - 1]!;
    while (next < corners.length && length(corners[next]![0] - x, corners[next]![1] - y) < step) next++;
    const [bx, by] = next < corners.length ? corners[next]! : beyond(corners);
    const [ax, ay] = corners[Math.min(next, corners.length) - 1]!;
    points.push(onLineAt(ax, ay, bx, by, x, y, step));
  }
  return points;
}

function beyond(corners: readonly Point[]): Point {
  const [ax, ay] = corners[corners.length - 2]!;
  const [bx, by] = corners[corners.length - 1]!;
  const d = length(bx - ax, by - ay) || 1;
  return [bx + ((bx - ax) / d) * 10, by + ((by - ay) / d) * 10];
}

/** Point on the line from a to b at distance r from (x, y), the later one (textbook: line and circle). */
function onLineAt(ax: number, ay: number, bx: number, by: number, x: number, y: number, r: number): Point {
  const ex = bx - ax;
  const ey = by - ay;
  const fx = ax - x;
  const fy = ay - y;
  const a = ex * ex + ey * ey;
  const b = ex * fx + ey * fy;
  const c = fx * fx + fy * fy - r * r;
  const t = (-b + Math.sqrt(Math.max(0, b * b - a * c))) / a;
  return [ax + ex * t, ay + ey * t];
}

/** Path of one side of the drape as it was laid: from the edge of the opening over the patient, the bed and the rail. */
export function drapePath(scenario: Scenario, layout: Layout, side: Side): Point[] {
  const sign = signOf(side);
  const { siteXM, openingM, widthM } = scenario.room.patient;
  const top = layout.mattress.top;
  const lift = DRAPE_RADIUS_M + 0.0005;
  const from = siteXM + (sign * openingM) / 2;
  const corners: Point[] = [];
  for (let x = sign * from; x < widthM / 2 - 0.012; x += 0.006) {
    const [nx, ny] = skinNormal(layout, sign * x);
    corners.push([sign * x + nx * lift, top + skinHeight(layout, sign * x) + ny * lift]);
  }
  const rail = layout.rails[side];
  const reach = scenario.drape[side].reach;
  const edge = layout.crest[side].x * sign;
  if (reach === 'inside' || !rail.up) {
    corners.push([sign * (widthM / 2 + 0.05), top + 0.03], [sign * (edge - 0.1), top + 0.012]);
    if (reach === 'inside') corners.push([sign * (edge - 0.012), top + lift + 0.004]);
    else corners.push([sign * (edge - 0.005), top + 0.006], [sign * (edge + 0.006), top - 0.006], [sign * (edge + 0.008), top - 1]);
  } else {
    corners.push([sign * (widthM / 2 + 0.06), top + 0.035], [sign * (edge - rail.radius - 0.05), top + 0.06]);
    const radius = rail.radius + lift;
    for (let k = 0; k <= 12; k++) {
      const angle = PI * (1 - k / 12);
      corners.push([sign * (edge + radius * cos(angle)), rail.topCentre + radius * sin(angle)]);
    }
    corners.push([sign * (edge + radius + 0.002), rail.topCentre - 1.5]);
  }
  const links = Math.max(8, Math.round(scenario.drape[side].lengthM / scenario.drape.linkM));
  return atEqualSteps(corners, scenario.drape.linkM, links + 1);
}

function skinNormal(layout: Layout, x: number): Point {
  const dy = skinHeight(layout, x + 0.003) - skinHeight(layout, x - 0.003);
  const l = length(0.006, dy);
  return [-dy / l, 0.006 / l];
}
