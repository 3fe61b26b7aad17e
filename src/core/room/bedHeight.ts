import { STEP_SECONDS } from '../base/time.ts';
import { layoutOf } from './layout.ts';
import type { Scene } from './scene.ts';

/** A bed goes up and down at 1 to 3 cm/s, common practice (m/s). */
const BED_MPS = 0.02;
/** Lowest and highest top of a mattress that a bed brings it to (m), common practice. */
const LOWEST_M = 0.7;
const HIGHEST_M = 1.1;

/** How far up the bed is when it has gone `metres` more (below 0: down), as far as it goes at all. Metres above where the scenario has it. */
export function bedGoal({ scenario, layout }: Scene, metres: number): number {
  const { adjustable, mattressTopM } = scenario.room.bed;
  if (!adjustable) return layout.bedUpM;
  const wanted = layout.bedUpM + metres;
  // A bed that stands beyond its range goes back into it, and no farther out.
  return metres > 0 ? Math.max(layout.bedUpM, Math.min(wanted, HIGHEST_M - mattressTopM)) : Math.min(layout.bedUpM, Math.max(wanted, LOWEST_M - mattressTopM));
}

/** Moves mattress and rails toward `goalM` for one step, with all that lies on them; the patient follows the layout. */
export function moveBed(scene: Scene, goalM: number): void {
  const { bedUpM } = scene.layout;
  if (bedUpM === goalM) return;
  const most = BED_MPS * STEP_SECONDS;
  takeHeight(scene, bedUpM + Math.min(most, Math.max(-most, goalM - bedUpM)));
  for (const body of scene.bed) scene.world.driveBody(body, 0, scene.layout.bedUpM, 1, 0);
}

/** Puts mattress and rails back at once to where the scenario has them. */
export function bedBack(scene: Scene): void {
  if (scene.layout.bedUpM === 0) return;
  takeHeight(scene, 0);
  for (const body of scene.bed) scene.world.teleportBody(body, 0, 0, 1, 0);
}

/** Brings the layout to a height of the bed; everything else looks there. */
export function takeHeight({ scenario, layout }: Scene, bedUpM: number): void {
  if (layout.bedUpM !== bedUpM) Object.assign(layout, layoutOf(scenario, bedUpM));
}
