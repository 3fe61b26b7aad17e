import type { SolverState } from './solverState.ts';

/**
 * Greatest T h² / (m l). A taut chain is unstable above about a third; below that, a body pressing on it stretches each link
 * at the place by about this share, because contacts are solved after the chain.
 */
const TAUT_LIMIT = 0.08;
const PATIENCE = 20;

/** Chooses the number of sub-steps for the coming step: more at once when a strand is taut, fewer only after a while. */
export function chooseSubsteps(state: SolverState): void {
  const { settings, strands, h } = state;
  let need = settings.minSubsteps;
  for (const strand of strands) {
    if (!strand.awake) continue;
    need = Math.max(need, settings.dt * Math.sqrt(strand.tension / (TAUT_LIMIT * strand.tensionScale * h * h)));
  }
  let count = settings.minSubsteps;
  while (count < need && count < settings.maxSubsteps) count += count < 16 ? 2 : 8;
  count = Math.min(count, settings.maxSubsteps);
  if (count >= state.substeps) state.quietSteps = 0;
  else if (++state.quietSteps <= PATIENCE) return;
  state.quietSteps = 0;
  if (count !== state.substeps) state.setSubsteps(count);
}
