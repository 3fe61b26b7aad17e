import { applyChain } from './chainApply.ts';
import { beginContactStates, reviseContactStates } from './chainContacts.ts';
import { describeLinks, describeNodes } from './chainNodes.ts';
import { finishFronts, yieldFronts } from './peelFront.ts';
import type { SolverState } from './solverState.ts';
import type { Strand } from './strands.ts';

/**
 * Restores the lengths of all links of a strand at once: (J W Jᵀ + l/(EA h²)) λ = −(C + J c), a tridiagonal system solved directly,
 * so that a chain does not stretch at any ratio of masses. W is the answer of each node to a force: w·1 when free, the point
 * matrix of the body when held, none along what the node sticks to. Whether a touching node is free, sticks or slides is found
 * by solving again until the assumed states agree with the result (active set); otherwise a taut cord ignores friction.
 */
export function solveChain(state: SolverState, strand: Strand): void {
  const { settings } = state;
  describeLinks(state, strand);
  let touches = beginContactStates(state, strand);
  eliminate(state, strand, 0);
  for (let round = 1; touches; round++) {
    const changed = reviseContactStates(state, strand, round <= settings.tightenRounds);
    if (changed < 0) break;
    if (round === settings.stateRounds) { // not settled: solve without contact states, but keep them as the next guess
      touches = false;
      describeNodes(state, strand);
      eliminate(state, strand, 0);
    } else eliminate(state, strand, Math.max(0, changed - 1));
  }
  const yields = state.fronts.length > 0 && yieldFronts(state, strand);
  if (yields) eliminate(state, strand, 0);
  applyChain(state, strand, touches);
  if (yields) finishFronts(state, strand);
}

/**
 * Thomas elimination of the rows from `from` on (those before are still right) and back substitution of all. Row k is
 * link k; nodes k and k + 1 make up its entries. A yielding link carries exactly its yield tension.
 */
function eliminate(state: SolverState, strand: Strand, from: number): void {
  const { excess, before, after, lower, upper, shiftBefore, shiftAfter, pivot, forward, multiplier, yieldTension } = state.chain;
  const { compliance } = strand;
  const mayYield = state.fronts.length > 0;
  const links = strand.size - 1;
  let inverse = from > 0 ? pivot[from - 1] : 0;
  let value = from > 0 ? forward[from - 1] : 0;
  lower[0] = upper[0] = 0;
  for (let k = from; k < links; k++) {
    if (mayYield && yieldTension[k] >= 0) {
      inverse = 1;
      value = -yieldTension[k] * state.h * state.h;
      upper[k + 1] = 0; // its tension does not depend on the next link's
    } else {
      const factor = lower[k] * inverse;
      value = shiftAfter[k] + shiftBefore[k + 1] - excess[k] - factor * value;
      inverse = 1 / (compliance + after[k] + before[k + 1] - factor * upper[k]);
    }
    pivot[k] = inverse;
    forward[k] = value;
  }
  value = forward[links - 1] * pivot[links - 1];
  multiplier[links - 1] = value;
  for (let k = links - 2; k >= 0; k--) {
    value = (forward[k] - upper[k + 1] * value) * pivot[k];
    multiplier[k] = value;
  }
}
