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
  const { settings, chain } = state;
  describeLinks(state, strand);
  let touches = beginContactStates(state, strand);
  eliminate(state, strand, 0, strand.size);
  for (let round = 1; touches; round++) {
    const changed = reviseContactStates(state, strand, round <= settings.tightenRounds);
    if (changed === 0) break;
    if (round === settings.stateRounds) { // not settled: solve without contact states, but keep them as the next guess
      touches = false;
      describeNodes(state, strand);
      eliminate(state, strand, 0, strand.size);
    } else eliminate(state, strand, Math.max(0, chain.changed[0] - strand.start - 1), chain.changed[changed - 1] - strand.start);
  }
  const yields = state.fronts.length > 0 && yieldFronts(state, strand);
  if (yields) eliminate(state, strand, 0, strand.size);
  applyChain(state, strand, touches);
  if (yields) finishFronts(state, strand);
}

/**
 * Thomas elimination and back substitution. Row k is link k; nodes k and k + 1 make up its entries. Rows below `from` and above
 * `last` have not changed since the strand was last solved, so that both passes end there as soon as they meet what they found then:
 * a node that sticks cuts the chain in two. A yielding link carries exactly its yield tension.
 */
function eliminate(state: SolverState, strand: Strand, from: number, last: number): void {
  const { chain } = state;
  const { excess, before, after, lower, upper, shiftBefore, shiftAfter, pivot, forward, multiplier, yieldTension } = chain;
  const { compliance } = strand;
  const mayYield = state.fronts.length > 0;
  const links = strand.size - 1;
  let inverse = from > 0 ? pivot[from - 1] : 0;
  let value = from > 0 ? forward[from - 1] : 0;
  lower[0] = upper[0] = 0;
  let k = from;
  for (; k < links; k++) {
    if (mayYield && yieldTension[k] >= 0) {
      inverse = 1;
      value = -yieldTension[k] * state.h * state.h;
      upper[k + 1] = 0; // its tension does not depend on the next link's
    } else {
      const factor = lower[k] * inverse;
      value = shiftAfter[k] + shiftBefore[k + 1] - excess[k] - factor * value;
      inverse = 1 / (compliance + after[k] + before[k + 1] - factor * upper[k]);
    }
    if (k > last && inverse === pivot[k] && value === forward[k]) break;
    pivot[k] = inverse;
    forward[k] = value;
  }
  chain.solvedTo = k;
  if (k === links) {
    k--;
    multiplier[k] = forward[k] * pivot[k];
  }
  value = multiplier[k];
  for (k--; k >= 0; k--) {
    value = (forward[k] - upper[k + 1] * value) * pivot[k];
    if (k < from && value === multiplier[k]) break;
    multiplier[k] = value;
  }
  chain.solvedFrom = k + 1;
}
