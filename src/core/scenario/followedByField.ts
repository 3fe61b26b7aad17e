import { crossChecks } from './crossChecks.ts';
import type { Scenario } from './schema.ts';

/** Whether a run that begins with sheathing the probe can go on into the field: all that the field needs is there. */
export const canBeFollowedByField = (scenario: Scenario): boolean => scenario.station === 'sheath' && crossChecks({ ...scenario, followedBy: ['field'] }, null).length === 0;
