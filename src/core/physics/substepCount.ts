import { length } from '../base/portableMath.ts';
import type { SolverState } from './solverState.ts';

/** Greatest T h² / (m l): a taut chain is unstable above about a third. */
const STABLE = 0.22;
/** Greatest T h² / m (m): a body that presses on a taut chain stretches each link at the place by about this much, since contacts come after the chain. */
const STRETCH_M = 0.0016;
/** Farthest way (m) that a body may go in a sub-step. */
const STRIDE_M = 0.0013;
/** While a scene settles before it sleeps: what remains of stretch and overlap then is frozen. */
const WHILE_SETTLING = 12;
const PATIENCE = 8;

/** Chooses the number of sub-steps for the coming step: more at once when a strand is taut, fewer only after a while. */
export function chooseSubsteps(state: SolverState): void {
  const { settings, strands, bodies } = state;
  let need = state.settleDrag > 0 ? Math.max(settings.minSubsteps, WHILE_SETTLING) : settings.minSubsteps;
  for (const strand of strands) {
    if (!strand.awake) continue;
    const limit = Math.min(STABLE * strand.linkM, STRETCH_M);
    need = Math.max(need, settings.dt * Math.sqrt(strand.tension / (strand.nodeMass * limit)));
  }
  for (let b = 0; b < bodies.count; b++) {
    if (bodies.awake[b] === 1) need = Math.max(need, (settings.dt * length(bodies.vx[b], bodies.vy[b])) / STRIDE_M);
  }
  let count = settings.minSubsteps;
  while (count < need && count < settings.maxSubsteps) count += count < 16 ? 2 : 8;
  count = Math.min(count, settings.maxSubsteps);
  if (count >= state.substeps) state.quietSteps = 0;
  else if (++state.quietSteps <= PATIENCE) return;
  state.quietSteps = 0;
  if (count !== state.substeps) state.setSubsteps(count);
}
