import { fileHeldContact, keyOfNodes } from './heldContacts.ts';
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
  const { pairs, nodes, settings, soft } = state;
  const { node, link, side, due, runStart } = pairs;
  const { x, y } = nodes;
  const { nx, ny, gap, shareB } = soft;
  const { slack, sideMemory } = settings;
  const reach = a.radius + b.radius;
  const travelled = a.travel + b.travel + soft.shoved;
  for (let k = runStart[run], end = runStart[run + 1]; k < end; k++) {
    if (travelled < due[k]) continue;
    const i = node[k];
    const j = link[k];
    const jx = x[j];
    const jy = y[j];
    const dx = x[i] - jx;
    const dy = y[i] - jy;
    const ex = x[j + 1] - jx;
    const ey = y[j + 1] - jy;
    const length2 = ex * ex + ey * ey;
    const along = dx * ex + dy * ey;
    if (along <= 0 || along >= length2) {
      touchEnd(state, k, along <= 0 ? 0 : 1, a, b);
      continue;
    }
    const sign = side[k] > 0 ? 1 : -1;
    const length = Math.sqrt(length2);
    const sep = ((ex * dy - ey * dx) * sign) / length - reach;
    if (sep > slack) {
      due[k] = sep - slack - travelled;
      continue;
    }
    const isImposed = side[k] === 2 || side[k] === -2;
    if (sep < -sideMemory && !isImposed) continue;
    const n = soft.count;
    nx[n] = (-ey / length) * sign;
    ny[n] = (ex / length) * sign;
    gap[n] = sep;
    shareB[n] = along / length2;
    filePairContact(state, i, j, a, b);
  }
}

/** A node near the end `t` (0 or 1) of a link. Its side is judged by the tangent averaged over the two links that meet there. */
function touchEnd(state: SolverState, k: number, t: number, a: Strand, b: Strand): void {
  const { pairs, nodes, settings, soft } = state;
  const { side } = pairs;
  const { x, y } = nodes;
  const i = pairs.node[k];
  const j = pairs.link[k];
  const reach = a.radius + b.radius;
  const v = j + t;
  const ux = x[i] - x[v];
  const uy = y[i] - y[v];
  const d2 = ux * ux + uy * uy;
  const isImposed = side[k] === 2 || side[k] === -2;
  const d = Math.sqrt(d2);
  if (d2 >= reach * reach && !isImposed) {
    // Apart: the side is judged anew by the link's own line, since the closest feature is what counts.
    side[k] = (x[j + 1] - x[j]) * (y[i] - y[j]) - (y[j + 1] - y[j]) * (x[i] - x[j]) >= 0 ? 1 : -1;
    const clear = d - reach - settings.slack;
    if (clear > 0) {
      pairs.due[k] = clear - a.travel - b.travel - soft.shoved;
      return;
    }
  }
  const before = v > b.start ? v - 1 : v;
  const after = v + 1 < b.end ? v + 1 : v;
  // The neighbouring link sees the same node pair: count it once.
  if (t === 1 && after !== v) return;
  if (t === 0 && before !== v && (x[i] - x[j]) * (x[j] - x[j - 1]) + (y[i] - y[j]) * (y[j] - y[j - 1]) < 0) return;
  if (d2 < 1e-16) return;
  const tx = x[after] - x[before];
  const ty = y[after] - y[before];
  const tangent = Math.sqrt(tx * tx + ty * ty);
  const sign = side[k] > 0 ? 1 : -1;
  const isOnWrongSide = ((tx * uy - ty * ux) / d) * sign < -0.5 * tangent;
  const n = soft.count;
  soft.nx[n] = isOnWrongSide ? (-ty / tangent) * sign : ux / d;
  soft.ny[n] = isOnWrongSide ? (tx / tangent) * sign : uy / d;
  soft.gap[n] = isOnWrongSide ? -d - reach : d - reach;
  soft.shareB[n] = t;
  filePairContact(state, i, j, a, b);
}

/**
 * Files a contact between strands, of which normal, separation (as gap) and place along the link (as share) stand in the next free
 * columns. A held node acts with the weight of its body.
 */
function filePairContact(state: SolverState, i: number, j: number, a: Strand, b: Strand): void {
  const { nodes, soft } = state;
  const { holder } = nodes;
  const { shareA, shareB, shareC, nx, ny } = soft;
  const k = soft.count;
  const t = shareB[k];
  const near = t < 0.5 ? j : j + 1;
  soft.friction[k] = a.friction < b.friction ? a.friction : b.friction;
  soft.armX[k] = nodes.x[i] - a.radius * nx[k];
  soft.armY[k] = nodes.y[i] - a.radius * ny[k];
  if (holder[i] >= 0 && holder[near] >= 0) {
    fileHeldContact(state, i, holder[near], -1, keyOfNodes(state, i, near));
    return;
  }
  if (holder[i] >= 0) {
    soft.open(j, j + 1, -1, holder[i], -1);
    shareA[k] = 1 - t;
    nx[k] = -nx[k];
    ny[k] = -ny[k];
  } else if (holder[near] >= 0) {
    soft.open(i, -1, -1, holder[near], -1);
    shareA[k] = 1;
  } else {
    soft.open(i, j, j + 1, -1, -1);
    shareA[k] = 1;
    shareB[k] = t - 1;
    shareC[k] = -t;
  }
  soft.point[k] = i;
  soft.link[k] = j;
  soft.close(state);
}
