import { segmentsCross } from './segments.ts';
import type { SolverState } from './solverState.ts';

/** Cosine of the turn up to which a corner counts as part of a curve. */
const BLUNT = 0.75;

/** Finds contacts of links with corners and round ends of shapes, and links caught across the axis of a post. */
export function detectLinkContacts(state: SolverState): void {
  const { candidates, shapes, nodes, strands, bodies, settings } = state;
  const { link, linkVertex, linkDue } = candidates;
  const { vx, vy, first } = shapes;
  const { x, y } = nodes;
  for (let c = 0, n = candidates.linkCount; c < n; c++) {
    const i = link[c];
    const strand = strands[nodes.strand[i]]!;
    const v = linkVertex[c];
    const shape = shapes.shapeOfVertex[v];
    const body = shapes.body[shape];
    const travelled = strand.travel + bodies.travel[body];
    if (travelled < linkDue[c]) continue;
    const ex = x[i + 1] - x[i];
    const ey = y[i + 1] - y[i];
    const t = ((vx[v] - x[i]) * ex + (vy[v] - y[i]) * ey) / (ex * ex + ey * ey);
    const reach = shapes.radius[shape] + (bodies.inverseMass[body] === 0 ? strand.radiusOnStatic : strand.radius);
    const k = t < 0 ? 0 : t > 1 ? 1 : t;
    const ux = x[i] + k * ex - vx[v];
    const uy = y[i] + k * ey - vy[v];
    const d2 = ux * ux + uy * uy;
    const near = reach + settings.slack;
    if (d2 > near * near) {
      linkDue[c] = Math.sqrt(d2) - near - travelled;
      continue;
    }
    if (t <= 0 || t >= 1) continue;
    if (first[shape + 1] - first[shape] > 2) touchCorner(state, i, v, shape, t, ex, ey, reach);
    else touchRound(state, i, v, shape, t, ux, uy, d2, reach);
  }
  detectAxisCrossings(state);
}

/**
 * A corner of a polygon against a link: the normal is that of the link, if this corner is the one that sticks out most along it.
 * Over a blunt corner, one of many that make up a curve, a link whose ends lie on both sides may cut l/4 · sin(turn): the nodes
 * carry there, so that friction and tension are solved together; two contacts on one curve would share the load at random.
 */
function touchCorner(state: SolverState, i: number, v: number, shape: number, t: number, ex: number, ey: number, reach: number): void {
  const { vx, vy, nx: faceX, ny: faceY, first } = state.shapes;
  const length = Math.sqrt(ex * ex + ey * ey);
  let nx = -ey / length;
  let ny = ex / length;
  const before = v === first[shape] ? first[shape + 1] - 1 : v - 1; // the faces `before` and `v` meet at vertex v
  const after = v + 1 === first[shape + 1] ? first[shape] : v + 1;
  if ((faceX[before] + faceX[v]) * nx + (faceY[before] + faceY[v]) * ny < 0) {
    nx = -nx;
    ny = -ny;
  }
  const height = vx[v] * nx + vy[v] * ny;
  if (vx[before] * nx + vy[before] * ny > height + 1e-9 || vx[after] * nx + vy[after] * ny > height + 1e-9) return;
  const isBlunt = faceX[before] * faceX[v] + faceY[before] * faceY[v] > BLUNT;
  const turn = Math.abs(faceX[before] * faceY[v] - faceY[before] * faceX[v]);
  const bulge = isBlunt ? 0.25 * state.strands[state.nodes.strand[i]]!.linkM * turn + 0.0003 : 0;
  const sep = (state.nodes.x[i] - vx[v]) * nx + (state.nodes.y[i] - vy[v]) * ny - reach + bulge;
  if (sep <= state.settings.slack && sep >= -reach - 0.012) addLinkContact(state, i, v, shape, t, nx, ny, sep);
}

/** A round end against a link. Links short against the curve are left to their nodes, but for more than their bulge. */
function touchRound(state: SolverState, i: number, v: number, shape: number, t: number, ux: number, uy: number, d2: number, reach: number): void {
  const { linkM } = state.strands[state.nodes.strand[i]]!;
  const limit = linkM < 1.6 * reach ? Math.sqrt(reach * reach - 0.25 * linkM * linkM) - state.settings.sagitta : reach;
  const d = Math.sqrt(d2);
  if (d - limit <= state.settings.slack && d > 1e-8) addLinkContact(state, i, v, shape, t, ux / d, uy / d, d - limit);
}

function addLinkContact(state: SolverState, i: number, v: number, shape: number, t: number, nx: number, ny: number, sep: number): void {
  const { shapes, nodes, strands, soft, h } = state;
  const r = shapes.radius[shape];
  const body = shapes.body[shape];
  const friction = strands[nodes.strand[i]]!.bodyFriction[body];
  soft.add(state, h, i, i + 1, -1, 1 - t, t, 0, body, shape, shapes.vx[v] + r * nx, shapes.vy[v] + r * ny, nx, ny, sep, friction);
}

/** Pushes a link that crosses the axis of a fixed post towards the upper end of the post. */
function detectAxisCrossings(state: SolverState): void {
  const { candidates, shapes, nodes, strands, soft, h } = state;
  const { vx, vy, first } = shapes;
  const { x, y } = nodes;
  for (let c = 0; c < candidates.axisCount; c++) {
    const i = candidates.axisLink[c];
    const shape = candidates.axisShape[c];
    const v = first[shape];
    if (!segmentsCross(x[i], y[i], x[i + 1], y[i + 1], vx[v], vy[v], vx[v + 1], vy[v + 1])) continue;
    const top = vy[v + 1] > vy[v] ? v + 1 : v;
    const bottom = top === v ? v + 1 : v;
    const axisX = vx[top] - vx[bottom];
    const axisY = vy[top] - vy[bottom];
    const axis = Math.sqrt(axisX * axisX + axisY * axisY);
    const from = axisX * (y[i] - vy[bottom]) - axisY * (x[i] - vx[bottom]);
    const to = axisX * (y[i + 1] - vy[bottom]) - axisY * (x[i + 1] - vx[bottom]);
    const t = from / (from - to);
    const nx = axisX / axis;
    const ny = axisY / axis;
    const below = (vx[top] - x[i] - t * (x[i + 1] - x[i])) * nx + (vy[top] - y[i] - t * (y[i + 1] - y[i])) * ny;
    const sep = -(below + shapes.radius[shape] + strands[nodes.strand[i]]!.radiusOnStatic);
    soft.add(state, h, i, i + 1, -1, 1 - t, t, 0, shapes.body[shape], shape, vx[top], vy[top], nx, ny, sep, 0);
  }
}
