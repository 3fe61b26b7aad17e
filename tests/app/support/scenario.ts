import { scenarioSchema, type Scenario, type ScenarioSource } from '../../../src/core/scenario/schema.ts';

/** A scenario for tests of the page; `parts` replace its defaults. */
export const scenarioWith = (parts: Partial<ScenarioSource> = {}): Scenario =>
  scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'test', title: 'Test room', summary: 'For tests.', seed: 1, station: 'field', ...parts });

/** A scenario of sheathing the probe that has all that the field needs, and a spare packet. */
export const LOADING: Scenario = scenarioWith({
  station: 'sheath',
  items: [
    { id: 'sheathGel', kind: 'gelPacket', xM: -1.1 },
    { id: 'bandA', kind: 'band', xM: -1.0 },
    { id: 'bandB', kind: 'band', xM: -0.94 },
    { id: 'gel', kind: 'gelPacket', xM: -0.31, rubbish: true },
    { id: 'anaesthetic', kind: 'syringe', xM: 0.32 },
    { id: 'needle', kind: 'needleSyringe', xM: -0.22 },
    { id: 'spareBand', kind: 'band', xM: -0.86, spare: true },
  ],
});
