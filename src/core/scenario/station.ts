import type { Scenario, StationName } from './schema.ts';

/** The stations of a run in their order, the one in which it begins first. */
export const stationsOf = ({ station, followedBy }: Pick<Scenario, 'station' | 'followedBy'>): readonly StationName[] => [station, ...followedBy];

/** Whether a probe is sheathed in the run; else it lies sheathed on the field from the start. */
export const loadsSheath = (scenario: Pick<Scenario, 'station' | 'followedBy'>): boolean => stationsOf(scenario).includes('sheath');

/** Whether the run begins with gowning and gloving; else the operator is gowned and gloved from the start. */
export const gownsFirst = ({ station }: Pick<Scenario, 'station'>): boolean => station === 'gown';

/** Whether gown and gloves are things of the room: they are put on in the run, or gloves are changed by hand. */
export const hasGownTable = (scenario: Pick<Scenario, 'station' | 'gown'>): boolean => gownsFirst(scenario) || scenario.gown.gloveChange === 'byHand';
