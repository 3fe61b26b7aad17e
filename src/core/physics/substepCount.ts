import type { SolverState } from './solverState.ts';

/** Share of the stability limit of a taut chain that is used: T h² / (m l) must stay below about a third. */
const TAUT_LIMIT = 0.25;
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
