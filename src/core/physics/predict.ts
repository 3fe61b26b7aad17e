import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Moves everything by its velocity, gravity, forces and bending, as if nothing touched. `left` counts the sub-steps still to do, this one included. */
export function predict(state: SolverState, left: number): void {
  predictBodies(state, left);
  for (const strand of state.strands) if (strand.awake) predictNodes(state, strand);
  movePins(state, left);
  placeHeldNodes(state);
  for (const strand of state.strands) if (strand.awake) bend(state, strand);
}

function predictBodies(state: SolverState, left: number): void {
  const { bodies, settings, h } = state;
  const { dx, dy, turn, vx, vy, omega, inverseMass, inverseInertia, forceX, forceY, torque, gravityScale } = bodies;
  const cap = settings.speedCap * h;
  for (let b = 0; b < bodies.count; b++) {
    if (bodies.isDriven(b)) {
      driveBody(state, b, left);
      continue;
    }
    if (!bodies.isDynamic(b)) continue;
    if (bodies.awake[b] === 0) {
      dx[b] = dy[b] = turn[b] = 0;
      continue;
    }
    let ux = h * vx[b];
    let uy = h * vy[b];
    const way = Math.sqrt(ux * ux + uy * uy);
    if (way > cap) {
      ux *= cap / way;
      uy *= cap / way;
    }
    dx[b] = ux + h * h * forceX[b] * inverseMass[b];
    dy[b] = uy + h * h * (forceY[b] * inverseMass[b] + settings.gravity * gravityScale[b]);
    turn[b] = h * (omega[b] + h * torque[b] * inverseInertia[b]);
    state.shapes.poseBody(bodies, b);
  }
}

/** Displacement and turn that bring a driven body to its target in the sub-steps left. */
function driveBody(state: SolverState, b: number, left: number): void {
  const { bodies } = state;
  const { x, y, c, s, targetX, targetY, targetC, targetS, dx, dy, turn } = bodies;
  dx[b] = (targetX[b] - x[b]) / left;
  dy[b] = (targetY[b] - y[b]) / left;
  const cosine = c[b] * targetC[b] + s[b] * targetS[b];
  const sine = c[b] * targetS[b] - s[b] * targetC[b];
  turn[b] = cosine > -0.9 ? (2 * sine) / (1 + cosine) / left : sine / left; // tangent of half the angle, doubled
  if (bodies.awake[b] === 1) state.shapes.poseBody(bodies, b);
}

function predictNodes(state: SolverState, strand: Strand): void {
  const { nodes, settings, h } = state;
  const { x, y, prevX, prevY, inverseMass, holder, forceX, forceY } = nodes;
  const drag = 1 / (1 + h * (strand.airDrag + state.settleDrag));
  const fall = h * h * settings.gravity * drag;
  const cap = settings.speedCap * h;
  const { start, end, hasForces } = strand;
  for (let i = start; i < end; i++) {
    const px = x[i];
    const py = y[i];
    let ux = px - prevX[i];
    let uy = py - prevY[i];
    prevX[i] = px;
    prevY[i] = py;
    const w = inverseMass[i];
    if (w === 0 || holder[i] >= 0) continue;
    const u2 = ux * ux + uy * uy;
    if (u2 > cap * cap) { // only the inherited speed is capped: a cap on the force term would clip end loads
      const scale = cap / Math.sqrt(u2);
      ux *= scale;
      uy *= scale;
    }
    ux *= drag;
    uy = uy * drag + fall;
    if (hasForces) {
      ux += h * h * w * forceX[i];
      uy += h * h * w * forceY[i];
    }
    x[i] = px + ux;
    y[i] = py + uy;
  }
}

/**
 * Bending as an explicit force: minus stiffness times the fourth difference of the positions at the start of the sub-step; and
 * damping of curvature in the same form, on the displacements. Neither acts on a strand that moves or turns as a whole.
 */
function bend(state: SolverState, strand: Strand): void {
  const { x, y, prevX, prevY, inverseMass, holder } = state.nodes;
  const { start, end, curlDamping } = strand;
  const stiffness = strand.bendFactor - curlDamping; // times prevX; the damping acts on x − prevX
  let prevX0 = prevX[start]; // 0, 1 and 2: the node after i and the two that follow it
  let prevY0 = prevY[start];
  let prevX1 = prevX[start + 1];
  let prevY1 = prevY[start + 1];
  let x0 = x[start];
  let y0 = y[start];
  let x1 = x[start + 1];
  let y1 = y[start + 1];
  let beforeX = 0;
  let beforeY = 0;
  let hereX = 0;
  let hereY = 0;
  let afterX = 0;
  let afterY = 0;
  for (let i = start - 1; i < end; i++) {
    if (i >= start && holder[i] < 0) {
      const f = -inverseMass[i];
      x[i] += f * (beforeX - 2 * hereX + afterX);
      y[i] += f * (beforeY - 2 * hereY + afterY);
    }
    beforeX = hereX;
    beforeY = hereY;
    hereX = afterX;
    hereY = afterY;
    const last = i + 3;
    if (last >= end) {
      afterX = afterY = 0;
      continue;
    }
    const prevX2 = prevX[last];
    const prevY2 = prevY[last];
    const x2 = x[last];
    const y2 = y[last];
    afterX = stiffness * (prevX0 - 2 * prevX1 + prevX2) + curlDamping * (x0 - 2 * x1 + x2);
    afterY = stiffness * (prevY0 - 2 * prevY1 + prevY2) + curlDamping * (y0 - 2 * y1 + y2);
    prevX0 = prevX1;
    prevY0 = prevY1;
    prevX1 = prevX2;
    prevY1 = prevY2;
    x0 = x1;
    y0 = y1;
    x1 = x2;
    y1 = y2;
  }
}

function movePins(state: SolverState, left: number): void {
  const { x, y, pinX, pinY, pinMoves } = state.nodes;
  for (let i = 0; i < pinMoves.length; i++) {
    if (pinMoves[i] === 0) continue;
    x[i] += (pinX[i] - x[i]) / left;
    y[i] += (pinY[i] - y[i]) / left;
  }
}

/** Puts held nodes where their bodies are after the displacement of the sub-step so far. */
export function placeHeldNodes(state: SolverState): void {
  const { nodes, bodies, held } = state;
  for (let k = 0; k < held.length; k++) {
    const i = held[k]!;
    const b = nodes.holder[i];
    const armX = bodies.c[b] * nodes.localX[i] - bodies.s[b] * nodes.localY[i];
    const armY = bodies.s[b] * nodes.localX[i] + bodies.c[b] * nodes.localY[i];
    nodes.x[i] = bodies.x[b] + armX + bodies.dx[b] - bodies.turn[b] * armY;
    nodes.y[i] = bodies.y[b] + armY + bodies.dy[b] + bodies.turn[b] * armX;
  }
}
