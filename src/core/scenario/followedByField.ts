import { crossChecks } from './crossChecks.ts';
import type { Scenario } from './schema.ts';

/** The same scenario going on into the field, or ending before it. */
export function withField(scenario: Scenario, goesOn: boolean): Scenario {
  if (goesOn === scenario.followedBy.includes('field')) return scenario;
  return { ...scenario, followedBy: goesOn ? ['field'] : [] };
}

/** Whether a run that begins with sheathing the probe can go on into the field: all that the field needs is there. */
export const canBeFollowedByField = (scenario: Scenario): boolean => scenario.station === 'sheath' && crossChecks(withField(scenario, true), null).length === 0;
