import type { SolverState } from './solverState.ts';

const WINDOW = 15; // steps between two looks at what has moved
const SMOOTHING = 0.08; // per step, a mean over about 0.1 s

/** Wakes a body with all that lay in contact with it. */
export function wakeBody(state: SolverState, b: number): void {
  const { bodies } = state;
  state.quietSeconds = 0;
  if (bodies.isDriven(b)) {
    if (bodies.awake[b] === 0) state.stale = true;
    bodies.awake[b] = 1;
    bodies.calm[b] = 0;
    return;
  }
  if (!bodies.isDynamic(b) || bodies.enabled[b] === 0) return;
  bodies.calm[b] = 0;
  if (bodies.awake[b] === 0) wakeIsland(state, bodies.island[b]);
}

export function wakeStrand(state: SolverState, q: number): void {
  const strand = state.strands[q]!;
  state.quietSeconds = 0;
  strand.calm = 0;
  if (!strand.awake) wakeIsland(state, strand.island);
}

function wakeIsland(state: SolverState, island: number): void {
  const { bodies, strands } = state;
  for (let b = 0; b < bodies.count; b++) {
    if (bodies.island[b] !== island || bodies.awake[b] === 1 || !bodies.isDynamic(b) || bodies.enabled[b] === 0) continue;
    bodies.awake[b] = 1;
    bodies.calm[b] = 0;
  }
  for (const strand of strands) {
    if (strand.island !== island || strand.awake) continue;
    strand.awake = true;
    strand.calm = 0;
  }
  state.stale = true;
  state.someAsleep = strands.some((strand) => !strand.awake) || bodies.awake.some((awake, b) => awake === 0 && bodies.isDynamic(b));
}

/** Wakes whatever sleeps in the way of a body that appears, vanishes or begins to move. */
export function wakeAround(state: SolverState, b: number): void {
  const { shapes, strands, nodes, settings } = state;
  const margin = settings.margin;
  for (let shape = shapes.firstOfBody[b]; shape < shapes.firstOfBody[b + 1]; shape++) {
    const minX = shapes.box[4 * shape] - margin;
    const minY = shapes.box[4 * shape + 1] - margin;
    const maxX = shapes.box[4 * shape + 2] + margin;
    const maxY = shapes.box[4 * shape + 3] + margin;
    strands.forEach((strand, q) => {
      for (let i = strand.start; i < strand.end && !strand.awake; i++) {
        const slack = strand.linkM;
        if (nodes.x[i] > minX - slack && nodes.x[i] < maxX + slack && nodes.y[i] > minY - slack && nodes.y[i] < maxY + slack) wakeStrand(state, q);
      }
    });
    for (let other = 0; other < shapes.count; other++) {
      const o = 4 * other;
      if (shapes.box[o] < maxX && shapes.box[o + 2] > minX && shapes.box[o + 1] < maxY && shapes.box[o + 3] > minY) wakeBody(state, shapes.body[other]);
    }
  }
  for (const node of state.held) if (nodes.holder[node] === b) wakeStrand(state, nodes.strand[node]);
  for (const weld of state.welds) if (weld.a === b || weld.b === b) wakeBody(state, weld.a === b ? weld.b : weld.a);
}

/** A changed force wakes the body it acts on. */
export function wakeOnForce(state: SolverState): void {
  const { bodies, knownForce, settings } = state;
  for (let b = 0; b < bodies.count; b++) {
    if (!bodies.isDynamic(b)) continue;
    const dx = knownForce[3 * b] - bodies.forceX[b];
    const dy = knownForce[3 * b + 1] - bodies.forceY[b];
    const dt = knownForce[3 * b + 2] - bodies.torque[b];
    if (dx * dx + dy * dy > settings.noticeForce * settings.noticeForce) state.quietSeconds = 0;
    if (bodies.awake[b] === 0 && dx * dx + dy * dy <= 1e-8 && Math.abs(dt) <= 1e-6) continue;
    knownForce[3 * b] = bodies.forceX[b];
    knownForce[3 * b + 1] = bodies.forceY[b];
    knownForce[3 * b + 2] = bodies.torque[b];
    if (bodies.awake[b] === 0) wakeBody(state, b);
  }
}

/** Driven bodies that are about to move wake their surroundings; those that stand still may sleep. */
export function wakeOnDrive(state: SolverState): void {
  const { bodies } = state;
  for (let b = 0; b < bodies.count; b++) {
    if (!bodies.isDriven(b)) continue;
    const moves = bodies.x[b] !== bodies.targetX[b] || bodies.y[b] !== bodies.targetY[b] || bodies.c[b] !== bodies.targetC[b] || bodies.s[b] !== bodies.targetS[b];
    if (moves) {
      wakeBody(state, b);
      wakeAround(state, b);
    } else if (bodies.awake[b] === 1) {
      bodies.awake[b] = 0;
      bodies.stop(b);
      state.stale = true;
    }
  }
}

/** Lets drag grow while nothing acts on the world from outside. Off when sleeping is. */
export function settle(state: SolverState): void {
  const { settings } = state;
  state.quietSeconds += settings.dt;
  const over = settings.sleep ? state.quietSeconds - settings.settleAfter : 0;
  state.settleDrag = over > 0 ? Math.min(settings.settleLimit, settings.settleRate * over * over) : 0;
}

/** After a sub-step: what sleeps and was pushed by something awake wakes up. */
export function wakeOnContact(state: SolverState): void {
  const { soft, rigid, nodes, strands, bodies } = state;
  for (let k = 0; k < soft.count; k++) {
    if (soft.load[k] <= 0) continue;
    const a = nodes.strand[soft.nodeA[k]];
    const b = soft.body[k];
    const c = soft.nodeC[k];
    if (b >= 0) {
      if (!strands[a]!.awake && bodies.awake[b] === 1) wakeIsland(state, strands[a]!.island);
      else if (strands[a]!.awake && bodies.isDynamic(b) && bodies.awake[b] === 0) wakeIsland(state, bodies.island[b]);
    } else if (c >= 0 && strands[a]!.awake !== strands[nodes.strand[c]]!.awake) {
      wakeIsland(state, strands[strands[a]!.awake ? nodes.strand[c] : a]!.island);
    }
  }
  for (let k = 0; k < rigid.count; k++) {
    if (rigid.load[k] <= 0) continue;
    const a = rigid.a[k];
    const b = rigid.b[k];
    if (bodies.isDynamic(a) && bodies.isDynamic(b) && bodies.awake[a] !== bodies.awake[b]) wakeIsland(state, bodies.island[bodies.awake[a] === 1 ? b : a]);
  }
}

/** At the end of a step: islands of touching things that have all been calm for long enough stop exactly. */
export function fallAsleep(state: SolverState): void {
  const { settings, stepCount } = state;
  if (!settings.sleep) return;
  smoothPositions(state);
  if (stepCount % WINDOW !== 0) return;
  if (!measureCalm(state)) return;
  const island = joinIslands(state);
  const { bodies, strands } = state;
  const restless = new Set<number>();
  const mayMove = (k: number): boolean => (k < bodies.count ? bodies.isDynamic(k) && bodies.enabled[k] === 1 : true);
  const isAwake = (k: number): boolean => (k < bodies.count ? bodies.awake[k] === 1 : strands[k - bodies.count]!.awake);
  const calm = (k: number): number => (k < bodies.count ? bodies.calm[k] : strands[k - bodies.count]!.calm);
  for (let k = 0; k < island.length; k++) {
    const drivenAwake = k < bodies.count && bodies.isDriven(k) && bodies.awake[k] === 1;
    if (drivenAwake || (mayMove(k) && (!isAwake(k) || calm(k) < settings.sleepAfter))) restless.add(island[k]!);
  }
  for (let k = 0; k < island.length; k++) {
    if (!mayMove(k) || !isAwake(k) || restless.has(island[k]!)) continue;
    const id = stepCount * 256 + island[k]!;
    if (k < bodies.count) {
      bodies.awake[k] = 0;
      bodies.island[k] = id;
      bodies.stop(k);
    } else {
      const strand = strands[k - bodies.count]!;
      strand.awake = false;
      strand.island = id;
      for (let i = strand.start; i < strand.end; i++) state.nodes.stop(i);
    }
    state.someAsleep = true;
    state.stale = true;
  }
}

/** A node pinched between two contacts may tremble by tenths of a millimetre; calm is judged by where it is on average. */
function smoothPositions(state: SolverState): void {
  const { nodes, strands, smoothX, smoothY } = state;
  for (const strand of strands) {
    if (!strand.awake) continue;
    for (let i = strand.start; i < strand.end; i++) {
      smoothX[i] += SMOOTHING * (nodes.x[i] - smoothX[i]);
      smoothY[i] += SMOOTHING * (nodes.y[i] - smoothY[i]);
    }
  }
}

/** Judges calm by real displacement over a window (a pinched node can carry a velocity without moving). True if anything is calm long enough. */
function measureCalm(state: SolverState): boolean {
  const { strands, bodies, settings, smoothX, smoothY, calmNodeX, calmNodeY, calmBody } = state;
  const time = WINDOW * settings.dt;
  const patience = Math.max(0, state.quietSeconds - settings.settleAfter - 1);
  const limit = settings.sleepSpeed * (1 + patience) * time; // the longer nothing acts, the less it takes
  let ready = false;
  for (const strand of strands) {
    if (!strand.awake) continue;
    let far2 = 0;
    for (let i = strand.start; i < strand.end; i++) {
      const dx = smoothX[i] - calmNodeX[i];
      const dy = smoothY[i] - calmNodeY[i];
      far2 = Math.max(far2, dx * dx + dy * dy);
      calmNodeX[i] = smoothX[i];
      calmNodeY[i] = smoothY[i];
    }
    strand.calm = far2 < limit * limit ? strand.calm + time : 0;
    if (strand.calm >= settings.sleepAfter) ready = true;
  }
  for (let b = 0; b < bodies.count; b++) {
    if (!bodies.isDynamic(b) || bodies.awake[b] === 0) continue;
    const dx = bodies.x[b] - calmBody[3 * b];
    const dy = bodies.y[b] - calmBody[3 * b + 1];
    const ds = (bodies.s[b] - calmBody[3 * b + 2]) * bodies.reach[b];
    calmBody[3 * b] = bodies.x[b];
    calmBody[3 * b + 1] = bodies.y[b];
    calmBody[3 * b + 2] = bodies.s[b];
    bodies.calm[b] = dx * dx + dy * dy + ds * ds < limit * limit ? bodies.calm[b] + time : 0;
    if (bodies.calm[b] >= settings.sleepAfter) ready = true;
  }
  return ready;
}

/** Island of each body (0 …) and strand (body count + …): what touches, is held or welded belongs together. Static bodies join nothing. */
function joinIslands(state: SolverState): number[] {
  const { bodies, strands, soft, rigid, nodes } = state;
  const parent = Array.from({ length: bodies.count + strands.length }, (_, k) => k);
  const root = (k: number): number => {
    let at = k;
    while (parent[at] !== at) at = parent[at]!;
    return at;
  };
  const join = (a: number, b: number): void => {
    const [ra, rb] = [root(a), root(b)];
    parent[Math.max(ra, rb)] = Math.min(ra, rb);
  };
  const moves = (b: number): boolean => bodies.isDynamic(b) || (bodies.isDriven(b) && bodies.awake[b] === 1);
  for (let k = 0; k < soft.count; k++) {
    const strand = bodies.count + nodes.strand[soft.nodeA[k]];
    if (soft.body[k] >= 0) {
      if (moves(soft.body[k])) join(strand, soft.body[k]);
    } else if (soft.nodeC[k] >= 0) join(strand, bodies.count + nodes.strand[soft.nodeC[k]]);
  }
  for (let k = 0; k < rigid.count; k++) if (moves(rigid.a[k]) && moves(rigid.b[k])) join(rigid.a[k], rigid.b[k]);
  for (const node of state.held) if (moves(nodes.holder[node])) join(bodies.count + nodes.strand[node], nodes.holder[node]);
  for (const weld of state.welds) if (moves(weld.a) && moves(weld.b)) join(weld.a, weld.b);
  return parent.map((_, k) => root(k));
}
