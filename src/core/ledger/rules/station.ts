/** Parts of the procedure that can be practised alone. */
export type StationId = 'setUp' | 'gown' | 'prepAndDrape' | 'sheath' | 'field';

export const STATION_WORDS: Readonly<Record<StationId, string>> = {
  setUp: 'Set up',
  gown: 'Gown and glove',
  prepAndDrape: 'Prep and drape',
  sheath: 'Sheath the probe',
  field: 'Work the field',
};

/** Stations that can be played; rules and remedies of the others wait for them. */
export const PLAYABLE_STATIONS: readonly StationId[] = ['gown', 'sheath', 'field'];
