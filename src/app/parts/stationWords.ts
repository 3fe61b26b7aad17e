import { STATION_WORDS } from '../../core/ledger/rules/station.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { stationsOf } from '../../core/scenario/station.ts';

/** The stations of a run in words: "sheath the probe, then work the field". */
export const stationWords = (scenario: Pick<Scenario, 'station' | 'followedBy'>): string => stationsOf(scenario).map((station) => STATION_WORDS[station].toLowerCase()).join(', then ');
