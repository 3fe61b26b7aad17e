/** Every switch that the address may carry. Anything else in it is ignored. */
export interface QuerySwitches {
  /** Puts `window.trainer` in place, for browser tests. */
  readonly test: boolean;
  /** Which way the room is drawn; null leaves it to the stage. */
  readonly renderer: 'canvas' | 'webgl' | null;
  /** Id of the scenario that is chosen beforehand. */
  readonly scenario: string | null;
  /** Seed instead of the scenario's own. */
  readonly seed: number | null;
}

const SEED_MAX = 4294967295;

/** Reads the switches of an address such as `?test&renderer=canvas&seed=7`. */
export function readQuerySwitches(search: string): QuerySwitches {
  const query = new URLSearchParams(search);
  const renderer = query.get('renderer');
  const scenario = query.get('scenario');
  const seed = Number(query.get('seed') ?? NaN);
  return {
    test: query.has('test'),
    renderer: renderer === 'canvas' || renderer === 'webgl' ? renderer : null,
    scenario: scenario !== null && /^[a-z][a-z0-9-]{0,39}$/.test(scenario) ? scenario : null,
    seed: Number.isInteger(seed) && seed >= 0 && seed <= SEED_MAX ? seed : null,
  };
}
