import { linksCross } from './segments.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

const RUN = 6;

/** A place where two strands cross. `at` and `otherAt` are node numbers with fractions; the signs tell the side that each comes from. */
interface Crossing {
  readonly link: number;
  readonly otherLink: number;
  readonly at: number;
  readonly otherAt: number;
  readonly sideBefore: number;
  readonly otherSideBefore: number;
}

/**
 * Two strands in a plane may not intersect. Once per step: walks along the reference strand from its start and counts crossings;
 * after an odd number it is on the wrong side. Near each crossing the right side is imposed on the wrong nodes, so that the
 * ordinary contacts push them back and the loop unzips from its ends.
 */
export function undoCrossings(state: SolverState): void {
  const { strands, nodes, pairs } = state;
  if (strands.length < 2) return;
  const imposed = new Map<number, number>();
  let found = 0;
  for (let p = 0; p < strands.length; p++) {
    for (let q = p + 1; q < strands.length; q++) {
      const startsPinned = nodes.inverseMass[strands[q]!.start] === 0;
      const a = strands[startsPinned ? q : p]!;
      const b = strands[startsPinned ? p : q]!;
      if ((!a.awake && !b.awake) || (a.collides & b.collidesWith) === 0 || (b.collides & a.collidesWith) === 0) continue;
      const crossings = findCrossings(state, a, b);
      found += crossings.length;
      imposeSides(state, a, b, crossings, imposed);
    }
  }
  if (found > 0 || state.crossings > 0) {
    for (let k = 0; k < pairs.count; k++) {
      const side = imposed.get(pairs.node[k] * nodes.count + pairs.link[k]);
      if (side !== undefined) pairs.side[k] = 2 * side;
      else if (pairs.side[k] === 2 || pairs.side[k] === -2) pairs.side[k] = pairs.side[k] / 2;
      pairs.due[k] = 0;
    }
  }
  if (found > 0 && state.crossings === 0) state.stale = true;
  state.crossings = found;
}

function findCrossings(state: SolverState, a: Strand, b: Strand): Crossing[] {
  const { runBox } = state.candidates;
  const margin = state.settings.margin;
  const crossings: Crossing[] = [];
  for (let p = a.firstBox; p < a.endBox; p++) {
    for (let q = b.firstBox; q < b.endBox; q++) {
      if (runBox[4 * p] - margin > runBox[4 * q + 2] || runBox[4 * q] - margin > runBox[4 * p + 2]) continue;
      if (runBox[4 * p + 1] - margin > runBox[4 * q + 3] || runBox[4 * q + 1] - margin > runBox[4 * p + 3]) continue;
      collectCrossings(state, a, b, a.start + RUN * (p - a.firstBox), b.start + RUN * (q - b.firstBox), crossings);
    }
  }
  return crossings.sort((one, two) => one.at - two.at);
}

function collectCrossings(state: SolverState, a: Strand, b: Strand, fromA: number, fromB: number, crossings: Crossing[]): void {
  const { x, y } = state.nodes;
  const toA = Math.min(fromA + RUN, a.end - 1);
  const toB = Math.min(fromB + RUN, b.end - 1);
  for (let i = fromA; i < toA; i++) {
    for (let j = fromB; j < toB; j++) {
      if (!linksCross(x, y, i, x, y, j)) continue;
      const ex = x[i + 1] - x[i];
      const ey = y[i + 1] - y[i];
      const fx = x[j + 1] - x[j];
      const fy = y[j + 1] - y[j];
      const area = ex * fy - ey * fx;
      const s = ((x[j] - x[i]) * fy - (y[j] - y[i]) * fx) / area;
      const r = ((x[j] - x[i]) * ey - (y[j] - y[i]) * ex) / area;
      // Side of the start of link i relative to link j, and the other way round.
      crossings.push({ link: i, otherLink: j, at: i + s, otherAt: j + r, sideBefore: area > 0 ? 1 : -1, otherSideBefore: area < 0 ? 1 : -1 });
    }
  }
}

function imposeSides(state: SolverState, a: Strand, b: Strand, crossings: readonly Crossing[], imposed: Map<number, number>): void {
  const { count } = state.nodes;
  const impose = (node: number, strand: Strand, link: number, side: number): void => {
    if (link >= strand.start && link < strand.end - 1) imposed.set(node * count + link, side);
  };
  crossings.forEach((crossing, k) => {
    const isOdd = k % 2 === 0;
    const mate = isOdd ? crossings[k + 1] : crossings[k - 1];
    const isUnpaired = isOdd && mate === undefined;
    const tail = Math.min(crossing.otherAt - b.start, b.end - 1 - crossing.otherAt) * b.linkM;
    const ownTail = (a.end - 1 - crossing.at) * a.linkM;
    // The right side of a's nodes is where a came from (odd) or goes to (even). An unpaired crossing moves the shorter tail.
    if (!(isUnpaired && tail < ownTail)) {
      const side = isOdd ? crossing.sideBefore : -crossing.sideBefore;
      for (let d = 0; d < 3; d++) {
        const node = isOdd ? crossing.link + 1 + d : crossing.link - d;
        if (node < a.start || node >= a.end) break;
        if (mate !== undefined && (isOdd ? node > mate.link : node < mate.link + 1)) break;
        for (let link = crossing.otherLink - 2; link <= crossing.otherLink + 2; link++) impose(node, b, link, side);
      }
    }
    if (isUnpaired && tail >= ownTail) return;
    const direction = mate === undefined ? (crossing.otherAt - b.start < b.end - 1 - crossing.otherAt ? -1 : 1) : mate.otherAt > crossing.otherAt ? 1 : -1;
    const side = direction > 0 ? crossing.otherSideBefore : -crossing.otherSideBefore;
    for (let d = 0; d < 3; d++) {
      const node = direction > 0 ? crossing.otherLink + 1 + d : crossing.otherLink - d;
      if (node < b.start || node >= b.end) break;
      if (mate !== undefined && (direction > 0 ? node > mate.otherLink : node < mate.otherLink + 1)) break;
      for (let link = crossing.link - 2; link <= crossing.link + 2; link++) impose(node, a, link, side);
    }
  });
}
