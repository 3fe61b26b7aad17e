import { scenarioSchema, type Scenario } from '../../core/scenario/schema.ts';

/** A scenario in which everything is as usual, to show defaults from. */
export const USUAL: Scenario = scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'usual', title: 'Usual', summary: 'Usual', seed: 0, station: 'field' });
