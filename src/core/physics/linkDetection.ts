import { fileHeldContact, keyOfLink } from './heldContacts.ts';
import { segmentsCross } from './segments.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Cosine of the turn up to which a corner counts as part of a curve. */
const BLUNT = 0.75;

/** Finds contacts of links with corners and round ends of shapes, and links caught across the axis of a post. */
export function detectLinkContacts(state: SolverState): void {
  const { candidates, shapes, nodes, strands, bodies, settings, soft } = state;
  const { link, linkVertex, linkDue } = candidates;
  const { vx, vy, first, shapeOfVertex, body: bodyOf } = shapes;
  const { x, y, strand: strandOf } = nodes;
  const { travel } = bodies;
  const { slack } = settings;
  let member = -1;
  let shape = -1;
  let strand = strands[0]!;
  let travelled = 0;
  let reach = 0;
  for (let c = 0, n = candidates.linkCount; c < n; c++) {
    const i = link[c];
    const v = linkVertex[c];
    if (shapeOfVertex[v] !== shape || strandOf[i] !== member) { // candidates of one strand and shape follow each other
      shape = shapeOfVertex[v];
      member = strandOf[i];
      strand = strands[member]!;
      travelled = strand.travel + travel[bodyOf[shape]] + soft.shoved;
      reach = reachOf(state, shape, strand);
    }
    if (travelled < linkDue[c]) continue;
    const px = x[i];
    const py = y[i];
    const ex = x[i + 1] - px;
    const ey = y[i + 1] - py;
    const t = ((vx[v] - px) * ex + (vy[v] - py) * ey) / (ex * ex + ey * ey);
    const k = t < 0 ? 0 : t > 1 ? 1 : t;
    const ux = px + k * ex - vx[v];
    const uy = py + k * ey - vy[v];
    const d2 = ux * ux + uy * uy;
    const near = reach + slack;
    if (d2 > near * near) {
      linkDue[c] = Math.sqrt(d2) - near - travelled;
      continue;
    }
    if (t <= 0 || t >= 1) continue;
    if (first[shape + 1] - first[shape] > 2) touchCorner(state, i, v, shape, strand);
    else touchRound(state, i, v, shape, strand);
  }
  detectAxisCrossings(state);
}

/**
 * A corner of a polygon against a link: the normal is that of the link, if this corner is the one that sticks out most along it.
 * Over a blunt corner, one of many that make up a curve, a link whose ends lie on both sides may cut l/4 · sin(turn): the nodes
 * carry there, so that friction and tension are solved together; two contacts on one curve would share the load at random.
 */
function touchCorner(state: SolverState, i: number, v: number, shape: number, strand: Strand): void {
  const { shapes, nodes, settings, soft } = state;
  const { vx, vy, nx: faceX, ny: faceY, first } = shapes;
  const { x, y } = nodes;
  const ex = x[i + 1] - x[i];
  const ey = y[i + 1] - y[i];
  const length2 = ex * ex + ey * ey;
  const length = Math.sqrt(length2);
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
  const bulge = isBlunt ? 0.25 * strand.linkM * turn + 0.0003 : 0;
  const reach = reachOf(state, shape, strand);
  const sep = (x[i] - vx[v]) * nx + (y[i] - vy[v]) * ny - reach + bulge;
  if (sep > settings.slack || sep < -reach - 0.012) return;
  const n = soft.count;
  soft.nx[n] = nx;
  soft.ny[n] = ny;
  soft.gap[n] = sep;
  soft.shareB[n] = ((vx[v] - x[i]) * ex + (vy[v] - y[i]) * ey) / length2;
  fileLinkContact(state, i, v, shape, strand);
}

/** A round end against a link. Links short against the curve are left to their nodes, but for more than their bulge. */
function touchRound(state: SolverState, i: number, v: number, shape: number, strand: Strand): void {
  const { shapes, nodes, settings, soft } = state;
  const { vx, vy } = shapes;
  const { x, y } = nodes;
  const ex = x[i + 1] - x[i];
  const ey = y[i + 1] - y[i];
  const t = ((vx[v] - x[i]) * ex + (vy[v] - y[i]) * ey) / (ex * ex + ey * ey);
  const ux = x[i] + t * ex - vx[v];
  const uy = y[i] + t * ey - vy[v];
  const { linkM } = strand;
  const reach = reachOf(state, shape, strand);
  const limit = linkM < 1.6 * reach ? Math.sqrt(reach * reach - 0.25 * linkM * linkM) - settings.sagitta : reach;
  const d = Math.sqrt(ux * ux + uy * uy);
  if (d - limit > settings.slack || d <= 1e-8) return;
  const n = soft.count;
  soft.nx[n] = ux / d;
  soft.ny[n] = uy / d;
  soft.gap[n] = d - limit;
  soft.shareB[n] = t;
  fileLinkContact(state, i, v, shape, strand);
}

const reachOf = ({ shapes, bodies }: SolverState, shape: number, strand: Strand): number =>
  shapes.radius[shape] + (bodies.inverseMass[shapes.body[shape]] === 0 ? strand.radiusOnStatic : strand.radius);

/** Files a contact of link i, of which normal, separation (as gap) and place along the link (as share) stand in the next free columns. */
function fileLinkContact(state: SolverState, i: number, v: number, shape: number, strand: Strand): void {
  const { shapes, soft } = state;
  const r = shapes.radius[shape];
  const k = soft.count;
  soft.friction[k] = strand.bodyFriction[shapes.body[shape]];
  soft.armX[k] = shapes.vx[v] + r * soft.nx[k];
  soft.armY[k] = shapes.vy[v] + r * soft.ny[k];
  closeLinkContact(state, i, v, shape);
}

/**
 * Completes a contact of link i with a shape. Where the nearer node cannot move by itself, what holds it takes the part of the link:
 * the far node alone would be thrown about, since it moves the place of contact the less the farther off it is.
 */
function closeLinkContact(state: SolverState, i: number, v: number, shape: number): void {
  const { shapes, nodes, soft } = state;
  const k = soft.count;
  const t = soft.shareB[k];
  const near = t < 0.5 ? i : i + 1;
  const body = shapes.body[shape];
  if (nodes.holder[near] >= 0) {
    fileHeldContact(state, near, body, shape, keyOfLink(state, near, near - i, v));
    return;
  }
  const isPinned = nodes.inverseMass[near] === 0;
  soft.open(isPinned ? near : i, isPinned ? -1 : i + 1, -1, body, shape);
  soft.shareA[k] = isPinned ? 1 : 1 - t;
  soft.close(state);
}

/** Pushes a link that crosses the axis of a fixed post towards the upper end of the post. */
function detectAxisCrossings(state: SolverState): void {
  const { candidates, shapes, nodes, strands, soft } = state;
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
    const k = soft.count;
    soft.shareB[k] = t;
    soft.friction[k] = 0;
    soft.nx[k] = nx;
    soft.ny[k] = ny;
    soft.gap[k] = -(below + shapes.radius[shape] + strands[nodes.strand[i]]!.radiusOnStatic);
    soft.armX[k] = vx[top];
    soft.armY[k] = vy[top];
    closeLinkContact(state, i, top, shape);
  }
}
