import type { SolverState } from './solverState.ts';

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
  const { candidates, shapes, nodes, strands, bodies, settings } = state;
  const { node, nodeFace, nodeDue, nodeRun } = candidates;
  const { vx, vy, nx, ny } = shapes;
  const { x, y, strand: strandOf } = nodes;
  const first = shapes.first[shape];
  const end = shapes.first[shape + 1];
  const body = shapes.body[shape];
  const isFixed = bodies.inverseMass[body] === 0;
  const bodyTravel = bodies.travel[body];
  for (let c = nodeRun[shape], last = nodeRun[shape + 1]; c < last; c++) {
    const i = node[c];
    const strand = strands[strandOf[i]]!;
    const travelled = strand.travel + bodyTravel;
    if (travelled < nodeDue[c]) continue;
    const px = x[i];
    const py = y[i];
    const reach = shapes.radius[shape] + (isFixed ? strand.radiusOnStatic : strand.radius);
    let face = first + nodeFace[c]; // the face of the last time rejects most nodes at once
    let depth = (px - vx[face]) * nx[face] + (py - vy[face]) * ny[face];
    if (depth - reach <= settings.slack) {
      for (let v = first; v < end; v++) {
        const d = (px - vx[v]) * nx[v] + (py - vy[v]) * ny[v];
        if (d > depth) {
          depth = d;
          face = v;
        }
      }
      nodeFace[c] = face - first;
    }
    if (depth - reach > settings.slack) {
      nodeDue[c] = depth - reach - settings.slack - travelled;
      continue;
    }
    const next = face + 1 === end ? first : face + 1;
    const ex = vx[next] - vx[face];
    const ey = vy[next] - vy[face];
    const t = (px - vx[face]) * ex + (py - vy[face]) * ey;
    if (depth <= 0 || (t >= 0 && t <= ex * ex + ey * ey)) {
      addNodeContact(state, i, shape, nx[face], ny[face], depth - reach);
      continue;
    }
    const corner = t < 0 ? face : next;
    const ux = px - vx[corner];
    const uy = py - vy[corner];
    const d = Math.sqrt(ux * ux + uy * uy);
    if (d - reach > settings.slack) nodeDue[c] = d - reach - settings.slack - travelled;
    else if (d > 1e-9) addNodeContact(state, i, shape, ux / d, uy / d, d - reach);
  }
}

function detectOnRound(state: SolverState, shape: number): void {
  const { candidates, shapes, nodes, strands, bodies, settings } = state;
  const { node, nodeDue, nodeRun } = candidates;
  const { vx, vy } = shapes;
  const { x, y, strand: strandOf } = nodes;
  const first = shapes.first[shape];
  const isCapsule = shapes.first[shape + 1] - first === 2;
  const body = shapes.body[shape];
  const isFixed = bodies.inverseMass[body] === 0;
  const bodyTravel = bodies.travel[body];
  const ex = isCapsule ? vx[first + 1] - vx[first] : 0;
  const ey = isCapsule ? vy[first + 1] - vy[first] : 0;
  const axis2 = isCapsule ? ex * ex + ey * ey : 1;
  for (let c = nodeRun[shape], last = nodeRun[shape + 1]; c < last; c++) {
    const i = node[c];
    const strand = strands[strandOf[i]]!;
    const travelled = strand.travel + bodyTravel;
    if (travelled < nodeDue[c]) continue;
    const reach = shapes.radius[shape] + (isFixed ? strand.radiusOnStatic : strand.radius);
    let ux = x[i] - vx[first];
    let uy = y[i] - vy[first];
    const t = (ux * ex + uy * ey) / axis2;
    const k = t < 0 ? 0 : t > 1 ? 1 : t;
    ux -= k * ex;
    uy -= k * ey;
    const d = Math.sqrt(ux * ux + uy * uy);
    if (d - reach > settings.slack) nodeDue[c] = d - reach - settings.slack - travelled;
    else if (d > 1e-8) addNodeContact(state, i, shape, ux / d, uy / d, d - reach);
  }
}

/** Files a node's contact where it belongs: held nodes act for their body, nodes on fixed things are solved last. */
function addNodeContact(state: SolverState, i: number, shape: number, nx: number, ny: number, sep: number): void {
  const { shapes, nodes, strands, bodies, settings, fixed, soft, rigid, h } = state;
  const body = shapes.body[shape];
  const strand = strands[nodes.strand[i]]!;
  const friction = strand.bodyFriction[body];
  const x = nodes.x[i];
  const y = nodes.y[i];
  if (bodies.inverseMass[body] > 0) {
    soft.add(state, h, i, -1, -1, 1, 0, 0, body, shape, x - strand.radius * nx, y - strand.radius * ny, nx, ny, sep, friction);
    return;
  }
  const px = x - strand.radiusOnStatic * nx;
  const py = y - strand.radiusOnStatic * ny;
  const holder = nodes.holder[i];
  if (holder >= 0) {
    rigid.add(bodies, holder, body, -1, shape, -1 - i * shapes.count - shape, -nx, -ny, px, py, px, py, sep, friction, settings.recovery * h, settings.rigidRest);
    return;
  }
  if (nodes.inverseMass[i] === 0) return;
  const armX = px - bodies.x[body] - bodies.dx[body];
  const armY = py - bodies.y[body] - bodies.dy[body];
  const surfaceX = bodies.dx[body] - bodies.turn[body] * armY;
  const surfaceY = bodies.dy[body] + bodies.turn[body] * armX;
  fixed.add(nodes, i, shape, nx, ny, sep, friction, surfaceX, surfaceY, settings.recoveryFixed * h);
}
