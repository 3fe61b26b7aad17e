import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/** Finds contacts between strands: a node against a link, on the side that the pair remembers. */
export function detectSideContacts(state: SolverState): void {
  const { pairs, strands } = state;
  for (let r = 0; r < pairs.runCount; r++) {
    if (pairs.runStart[r + 1] > pairs.runStart[r]) detectRun(state, r, strands[pairs.runStrand[r]]!, strands[pairs.runOther[r]]!);
  }
}

function detectRun(state: SolverState, run: number, a: Strand, b: Strand): void {
  const { pairs, nodes, settings } = state;
  const { node, link, side, due, runStart } = pairs;
  const { x, y } = nodes;
  const { slack } = settings;
  const reach = a.radius + b.radius;
  const travelled = a.travel + b.travel;
  for (let k = runStart[run], end = runStart[run + 1]; k < end; k++) {
    if (travelled < due[k]) continue;
    const i = node[k];
    const j = link[k];
    const dx = x[i] - x[j];
    const dy = y[i] - y[j];
    const ex = x[j + 1] - x[j];
    const ey = y[j + 1] - y[j];
    const length2 = ex * ex + ey * ey;
    const along = dx * ex + dy * ey;
    const sign = side[k] > 0 ? 1 : -1;
    if (along <= 0 || along >= length2) {
      touchEnd(state, k, i, j, along <= 0 ? 0 : 1, a, b);
      continue;
    }
    const length = Math.sqrt(length2);
    const sep = ((ex * dy - ey * dx) * sign) / length - reach;
    if (sep > slack) {
      due[k] = sep - slack - travelled;
      continue;
    }
    const isImposed = side[k] === 2 || side[k] === -2;
    if (sep < -settings.sideMemory && !isImposed) continue;
    addPairContact(state, i, j, along / length2, (-ey / length) * sign, (ex / length) * sign, sep, a, b);
  }
}

/** A node near the end `t` (0 or 1) of a link. Its side is judged by the tangent averaged over the two links that meet there. */
function touchEnd(state: SolverState, k: number, i: number, j: number, t: number, a: Strand, b: Strand): void {
  const { pairs, nodes, settings } = state;
  const { x, y } = nodes;
  const reach = a.radius + b.radius;
  const v = j + t;
  const ux = x[i] - x[v];
  const uy = y[i] - y[v];
  const d2 = ux * ux + uy * uy;
  const isImposed = pairs.side[k] === 2 || pairs.side[k] === -2;
  if (d2 >= reach * reach && !isImposed) {
    // Apart: the side is judged anew by the link's own line, since the closest feature is what counts.
    pairs.side[k] = (x[j + 1] - x[j]) * (y[i] - y[j]) - (y[j + 1] - y[j]) * (x[i] - x[j]) >= 0 ? 1 : -1;
    const clear = Math.sqrt(d2) - reach - settings.slack;
    if (clear > 0) {
      pairs.due[k] = clear - a.travel - b.travel;
      return;
    }
  }
  const before = v > b.start ? v - 1 : v;
  const after = v + 1 < b.end ? v + 1 : v;
  // The neighbouring link sees the same node pair: count it once.
  if (t === 1 && after !== v) return;
  if (t === 0 && before !== v && (x[i] - x[j]) * (x[j] - x[j - 1]) + (y[i] - y[j]) * (y[j] - y[j - 1]) < 0) return;
  if (d2 < 1e-16) return;
  const d = Math.sqrt(d2);
  const tx = x[after] - x[before];
  const ty = y[after] - y[before];
  const tangent = Math.sqrt(tx * tx + ty * ty);
  const sign = pairs.side[k] > 0 ? 1 : -1;
  const isOnWrongSide = ((tx * uy - ty * ux) / d) * sign < -0.5 * tangent;
  if (isOnWrongSide) addPairContact(state, i, j, t, (-ty / tangent) * sign, (tx / tangent) * sign, -d - reach, a, b);
  else addPairContact(state, i, j, t, ux / d, uy / d, d - reach, a, b);
}

/** Files a contact between strands. A held node acts with the weight of its body. */
function addPairContact(state: SolverState, i: number, j: number, t: number, nx: number, ny: number, sep: number, a: Strand, b: Strand): void {
  const { nodes, soft, h } = state;
  const friction = a.friction < b.friction ? a.friction : b.friction;
  const px = nodes.x[i] - a.radius * nx;
  const py = nodes.y[i] - a.radius * ny;
  const near = t < 0.5 ? j : j + 1;
  const before = soft.count;
  if (nodes.holder[i] >= 0) soft.add(state, h, j, j + 1, -1, 1 - t, t, 0, nodes.holder[i], -1, px, py, -nx, -ny, sep, friction);
  else if (nodes.holder[near] >= 0) soft.add(state, h, i, -1, -1, 1, 0, 0, nodes.holder[near], -1, px, py, nx, ny, sep, friction);
  else soft.add(state, h, i, j, j + 1, 1, t - 1, -t, -1, -1, px, py, nx, ny, sep, friction);
  if (soft.count === before) return;
  soft.point[before] = i;
  soft.link[before] = j;
}
