import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../src/core/scenario/schema.ts';

/** A scenario for tests of the page; `parts` replace its defaults. */
export const scenarioWith = (parts: Partial<ScenarioSource> = {}): Scenario =>
  scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'test', title: 'Test room', summary: 'For tests.', seed: 1, station: 'field', ...parts });
