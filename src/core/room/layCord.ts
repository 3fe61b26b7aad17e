import { assert } from '../base/assert.ts';
import { cos, length, PI, sin } from '../base/portableMath.ts';
import { signOf, type Side } from '../base/side.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { Layout, Point } from './layout.ts';
import { atEqualSteps } from './layPaths.ts';

/** Distance at which the cord is laid above the sheet before it settles (m). */
const LIFT_M = 0.012;
/** Radius of a turn that the cord's stiffness allows without springing up (m). */
const TURN_M = 0.028;
/** How much the cord rises before it turns back, so that it clears the sheet on the patient (m). */
const RISE_M = 0.015;
/** Most turns that the slack is laid in. */
const TURNS_MAX = 5;
/** Step in which the width of the folds is fitted to the slack (m). */
const FIT_M = 0.005;

/**
 * Path of the cord from the tail of the probe: slack laid in a turn on the field, up the sheet and over the rail toward the
 * machine, and hanging in a loop to its outlet. `sheet` is the settled drape on that side, the edge of the opening first.
 */
export function cordPath(scenario: Scenario, layout: Layout, tail: Point, sheet: readonly Point[]): Point[] {
  const { outletXM, outletYM } = scenario.room.machine;
  const side: Side = outletXM >= 0 ? 'left' : 'right';
  const sign = signOf(side);
  const { lengthM, linkM } = scenario.cord;
  const count = Math.round(lengthM / linkM) + 1;
  const top = [tail, ...foldedSlack(scenario.cord.slackM, layout, side, sheet, tail)];
  const [fx, fy] = top[top.length - 1]!;
  let low = 0;
  let high = 1.2;
  const pathAt = (sag: number): Point[] => atEqualSteps([...top, ...hangingLoop(fx, fy, outletXM, outletYM, sag)], linkM, count);
  // The loop hangs as deep as the length of the cord asks for: the last node has to come to the outlet.
  const pastOutlet = (path: readonly Point[]): boolean => (path[count - 1]![0] - outletXM) * sign > 0;
  assert(pastOutlet(pathAt(low)), 'the cord is long enough to reach the machine');
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (pastOutlet(pathAt(middle))) low = middle;
    else high = middle;
  }
  const path = pathAt(low);
  path[count - 1] = [outletXM, outletYM];
  return path;
}

/**
 * Turns of slack, one above the other between patient and rail, then up and over the edge: inward from the probe's tail and back, as
 * often and in the last turn as far as the slack asks for.
 */
function foldedSlack(slackM: number, layout: Layout, side: Side, sheet: readonly Point[], tail: Point): Point[] {
  const sign = signOf(side);
  const goal = pathLength([tail, ...overTheEdge(layout, side, sheet, tail)]) + slackM;
  const row = (k: number): number => tail[1] + RISE_M + TURN_M * (2 * k + 1);
  const inward = (k: number): number => patientLimit(sheet, row(k) - TURN_M) + sign * (TURN_M + LIFT_M);
  const outward = (k: number): number => railLimit(sheet, row(k) - TURN_M, sign) - sign * (TURN_M + LIFT_M);
  let path: Point[] = [];
  for (let last = 0; last < TURNS_MAX; last += 2) {
    const before: Point[] = [];
    for (let k = 0; k < last; k++) before.push(...(k % 2 === 0 ? turn(inward(k), row(k), -sign) : turn(outward(k), row(k), sign)));
    for (let back = Math.min(sign * outward(last), sign * tail[0]); back >= sign * inward(last); back -= FIT_M) {
      const turned = [...before, ...turn(sign * back, row(last), -sign)];
      path = [...turned, ...overTheEdge(layout, side, sheet, turned[turned.length - 1]!)];
      if (pathLength([tail, ...path]) >= goal) return path;
    }
  }
  return path;
}

/** Half a circle from below to above (x, y), bulging toward `way`. */
function turn(x: number, y: number, way: number): Point[] {
  return Array.from({ length: 9 }, (_, k): Point => {
    const angle = -PI / 2 + (PI * k) / 8;
    return [x + way * TURN_M * cos(angle), y + TURN_M * sin(angle)];
  });
}

function pathLength(points: readonly Point[]): number {
  let sum = 0;
  for (let k = 1; k < points.length; k++) sum += length(points[k]![0] - points[k - 1]![0], points[k]![1] - points[k - 1]![1]);
  return sum;
}

/** Where the sheet on the patient reaches height y, or its inner edge when it is lower. */
function patientLimit(sheet: readonly Point[], y: number): number {
  const lowest = sheet.reduce((best, p, k) => (p[1] < sheet[best]![1] && k < sheet.length * 0.7 ? k : best), 0);
  for (let k = lowest; k > 0; k--) if (sheet[k]![1] <= y && sheet[k - 1]![1] > y) return sheet[k]![0];
  return sheet[0]![0];
}

/** Where the sheet that rises to the rail reaches height y, or its outer end when it is lower. */
function railLimit(sheet: readonly Point[], y: number, sign: number): number {
  let limit = sheet[sheet.length - 1]![0];
  for (const [px, py] of sheet) if (py >= y && sign * px > 0.25 && sign * px < sign * limit) limit = px;
  return limit;
}

/** Up along the sheet, or up the bare rail, over the edge of the bed and a little down outside. */
function overTheEdge(layout: Layout, side: Side, sheet: readonly Point[], [, fromY]: Point): Point[] {
  const sign = signOf(side);
  const rail = layout.rails[side];
  const crest = layout.crest[side];
  const points: Point[] = [];
  const radius = rail.radius + 2 * LIFT_M;
  for (const [x, y] of sheet) {
    if (y > fromY + 0.01 && y < crest.y - 0.02 && sign * x > Math.abs(crest.x) - 0.2 && sign * x < Math.abs(crest.x) - radius + LIFT_M) points.push([x - sign * LIFT_M, y + LIFT_M / 2]);
  }
  const centreY = rail.up ? rail.topCentre : crest.y - radius + LIFT_M;
  for (let k = 0; k <= 8; k++) {
    const angle = PI * (1 - k / 8);
    points.push([crest.x + sign * radius * cos(angle), centreY + radius * sin(angle)]);
  }
  points.push([crest.x + sign * (radius + 0.01), crest.y - 0.12]);
  return points;
}

/** A parabola from (ax, ay) to (bx, by) that sags by `sag` under the straight line: close to a catenary, before it settles. */
function hangingLoop(ax: number, ay: number, bx: number, by: number, sag: number): Point[] {
  const points: Point[] = [];
  const pieces = Math.max(12, Math.ceil(length(bx - ax, by - ay) / 0.02));
  for (let k = 1; k <= pieces; k++) {
    const t = k / pieces;
    points.push([ax + (bx - ax) * t, ay + (by - ay) * t - 4 * sag * t * (1 - t)]);
  }
  points.push([bx + (bx - ax) * 0.5, by]);
  return points;
}
