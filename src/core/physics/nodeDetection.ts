import { fileHeldContact, keyOfNode } from './heldContacts.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Finds contacts of nodes with the shapes they are near. Moving shapes first: contacts with fixed ones are solved last. */
export function detectNodeContacts(state: SolverState): void {
  const { candidates, shapes } = state;
  for (let shape = shapes.count - 1; shape >= 0; shape--) {
    if (candidates.nodeRun[shape + 1] === candidates.nodeRun[shape]) continue;
    if (shapes.first[shape + 1] - shapes.first[shape] > 2) detectOnPolygon(state, shape);
    else detectOnRound(state, shape);
  }
}

function detectOnPolygon(state: SolverState, shape: number): void {
  const { candidates, shapes, nodes, strands, bodies, settings, fixed, soft } = state;
  const { node, nodeFace, nodeDue, nodeRun } = candidates;
  const { vx, vy, nx, ny } = shapes;
  const { x, y, strand: strandOf } = nodes;
  const { slack } = settings;
  const first = shapes.first[shape];
  const end = shapes.first[shape + 1];
  const body = shapes.body[shape];
  const isFixed = bodies.inverseMass[body] === 0;
  const target = isFixed ? fixed : soft;
  let member = -1;
  let strand = strands[0]!;
  let travelled = 0;
  let reach = 0;
  for (let c = nodeRun[shape], last = nodeRun[shape + 1]; c < last; c++) {
    const i = node[c];
    if (strandOf[i] !== member) { // candidates of one strand follow each other
      member = strandOf[i];
      strand = strands[member]!;
      travelled = strand.travel + bodies.travel[body] + soft.shoved;
      reach = shapes.radius[shape] + (isFixed ? strand.radiusOnStatic : strand.radius);
    }
    if (travelled < nodeDue[c]) continue;
    const px = x[i];
    const py = y[i];
    let face = first + nodeFace[c]; // the face of the last time rejects most nodes at once
    let depth = (px - vx[face]) * nx[face] + (py - vy[face]) * ny[face];
    if (depth - reach <= slack) {
      for (let v = first; v < end; v++) {
        const d = (px - vx[v]) * nx[v] + (py - vy[v]) * ny[v];
        if (d > depth) {
          depth = d;
          face = v;
        }
      }
      nodeFace[c] = face - first;
    }
    if (depth - reach > slack) {
      nodeDue[c] = depth - reach - slack - travelled;
      continue;
    }
    const next = face + 1 === end ? first : face + 1;
    const ex = vx[next] - vx[face];
    const ey = vy[next] - vy[face];
    const t = (px - vx[face]) * ex + (py - vy[face]) * ey;
    const n = target.count;
    if (depth <= 0 || (t >= 0 && t <= ex * ex + ey * ey)) {
      target.nx[n] = nx[face];
      target.ny[n] = ny[face];
      target.gap[n] = depth - reach;
    } else {
      const corner = t < 0 ? face : next;
      const ux = px - vx[corner];
      const uy = py - vy[corner];
      const d = Math.sqrt(ux * ux + uy * uy);
      if (d - reach > slack) {
        nodeDue[c] = d - reach - slack - travelled;
        continue;
      }
      if (d <= 1e-9) continue;
      target.nx[n] = ux / d;
      target.ny[n] = uy / d;
      target.gap[n] = d - reach;
    }
    if (isFixed) fileOnFixed(state, i, shape, strand);
    else fileOnMoving(state, i, shape, strand);
  }
}

function detectOnRound(state: SolverState, shape: number): void {
  const { candidates, shapes, nodes, strands, bodies, settings, fixed, soft } = state;
  const { node, nodeDue, nodeRun } = candidates;
  const { vx, vy } = shapes;
  const { x, y, strand: strandOf } = nodes;
  const { slack } = settings;
  const first = shapes.first[shape];
  const isCapsule = shapes.first[shape + 1] - first === 2;
  const body = shapes.body[shape];
  const isFixed = bodies.inverseMass[body] === 0;
  const target = isFixed ? fixed : soft;
  const sx = vx[first];
  const sy = vy[first];
  const ex = isCapsule ? vx[first + 1] - sx : 0;
  const ey = isCapsule ? vy[first + 1] - sy : 0;
  const axis2 = isCapsule ? ex * ex + ey * ey : 1;
  let member = -1;
  let strand = strands[0]!;
  let travelled = 0;
  let reach = 0;
  for (let c = nodeRun[shape], last = nodeRun[shape + 1]; c < last; c++) {
    const i = node[c];
    if (strandOf[i] !== member) { // candidates of one strand follow each other
      member = strandOf[i];
      strand = strands[member]!;
      travelled = strand.travel + bodies.travel[body] + soft.shoved;
      reach = shapes.radius[shape] + (isFixed ? strand.radiusOnStatic : strand.radius);
    }
    if (travelled < nodeDue[c]) continue;
    let ux = x[i] - sx;
    let uy = y[i] - sy;
    const t = (ux * ex + uy * ey) / axis2;
    const k = t < 0 ? 0 : t > 1 ? 1 : t;
    ux -= k * ex;
    uy -= k * ey;
    const d = Math.sqrt(ux * ux + uy * uy);
    if (d - reach > slack) {
      nodeDue[c] = d - reach - slack - travelled;
      continue;
    }
    if (d <= 1e-8) continue;
    const n = target.count;
    target.nx[n] = ux / d;
    target.ny[n] = uy / d;
    target.gap[n] = d - reach;
    if (isFixed) fileOnFixed(state, i, shape, strand);
    else fileOnMoving(state, i, shape, strand);
  }
}

/** Files a node's contact with something that moves, of which normal and separation (as gap) stand in the next free columns. */
function fileOnMoving(state: SolverState, i: number, shape: number, strand: Strand): void {
  const { shapes, nodes, soft } = state;
  const body = shapes.body[shape];
  const k = soft.count;
  soft.friction[k] = strand.bodyFriction[body];
  soft.armX[k] = nodes.x[i] - strand.radius * soft.nx[k];
  soft.armY[k] = nodes.y[i] - strand.radius * soft.ny[k];
  if (nodes.holder[i] >= 0) {
    fileHeldContact(state, i, body, shape, keyOfNode(state, i, shape));
    return;
  }
  soft.open(i, -1, -1, body, shape);
  soft.shareA[k] = 1;
  soft.close(state);
}

/** The same for something fixed or driven; contacts of free nodes with those are solved last. */
function fileOnFixed(state: SolverState, i: number, shape: number, strand: Strand): void {
  const { shapes, nodes, bodies, fixed, soft } = state;
  const body = shapes.body[shape];
  const n = fixed.count;
  const pointX = nodes.x[i] - strand.radiusOnStatic * fixed.nx[n];
  const pointY = nodes.y[i] - strand.radiusOnStatic * fixed.ny[n];
  if (nodes.holder[i] >= 0) {
    const k = soft.count;
    soft.nx[k] = fixed.nx[n];
    soft.ny[k] = fixed.ny[n];
    soft.gap[k] = fixed.gap[n];
    soft.armX[k] = pointX;
    soft.armY[k] = pointY;
    soft.friction[k] = strand.bodyFriction[body];
    fileHeldContact(state, i, body, shape, keyOfNode(state, i, shape));
    return;
  }
  if (nodes.inverseMass[i] === 0) return;
  const turn = bodies.turn[body];
  fixed.surfaceX[n] = bodies.dx[body] - turn * (pointY - bodies.y[body] - bodies.dy[body]);
  fixed.surfaceY[n] = bodies.dy[body] + turn * (pointX - bodies.x[body] - bodies.dx[body]);
  fixed.friction[n] = strand.bodyFriction[body];
  fixed.close(state, i, shape);
}
