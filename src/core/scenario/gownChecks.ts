import { standing } from './layout.ts';
import { metresText, problem, type Problem } from './problem.ts';
import type { Scenario } from './schema.ts';
import { gownsFirst } from './station.ts';

/** Walls of the room, in metres from the patient's midline. */
const WALL_M = 2.2;
/** Room that a person needs to either side to stand at all, in metres. */
const STANDING_M = 0.2;

/** Whether gown and gloves can be put on where the scenario says. */
export function gownChecks(scenario: Scenario): readonly Problem[] {
  const { table, standXM, sleeveM, knitM } = scenario.gown;
  const inWall = Math.abs(table.xM) + table.widthM / 2 > WALL_M + 1e-9;
  const wall = inWall ? [problem('gown.table.xM', metresText(table.xM), `within the walls, which are ${metresText(WALL_M)} to either side`)] : [];
  const stands = gownsFirst(scenario) && standing(scenario).find(({ low, high }) => standXM > low - STANDING_M && standXM < high + STANDING_M);
  const place = stands ? [problem('gown.standXM', metresText(standXM), `${metresText(STANDING_M)} or more beside ${stands.path}, which stands from ${metresText(stands.low)} to ${metresText(stands.high)}`)] : [];
  const cuff = knitM > sleeveM / 4 ? [problem('gown.knitM', metresText(knitM), 'at most a quarter of the sleeve')] : [];
  return [...wall, ...place, ...cuff];
}
