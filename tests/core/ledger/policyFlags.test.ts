import { describe, expect, it } from 'vitest';
import { policyFlags, policyValueWords } from '../../../src/core/ledger/rules/policyFlags.ts';
import { POLICY_TABLE } from '../../../src/core/ledger/rules/policyTable.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { scenarioSchema, type Scenario } from '../../../src/core/scenario/schema.ts';
import { shippedScenarios } from '../scenario/shipped.ts';

const HEAD = { format: 'sterile-field-scenario', version: 1, id: 'policy', title: 'Policy', summary: 'For tests.', seed: 1, station: 'field' } as const;
const withPolicy = (policy: Partial<Scenario['policy']>): Scenario => scenarioSchema.parse({ ...HEAD, policy });
const paths = (scenario: Scenario): string[] => policyFlags(scenario).map(({ path }) => path);

describe('the policy table', () => {
  it('has a row for every entry of a scenario’s policy', () => {
    const keys = Object.keys(scenarioSchema.parse(HEAD).policy).map((key) => `policy.${key}`);
    expect(POLICY_TABLE.map(({ path }) => path).filter((path) => path.startsWith('policy.')).sort()).toEqual(keys.sort());
  });

  it('reads the place that it names', () => {
    const scenario = scenarioSchema.parse(HEAD);
    const plain = POLICY_TABLE.filter(({ path }) => path !== 'room.assistantXM');
    for (const { path, read } of plain) expect(read(scenario), path).toBe(path.split('.').reduce<unknown>((part, key) => (part as Record<string, unknown>)[key], scenario));
  });
});

describe('a setting outside what is published', () => {
  it('is none by default, nor in what is shipped', () => {
    expect(policyFlags(scenarioSchema.parse(HEAD))).toEqual([]);
    for (const text of Object.values(shippedScenarios())) {
      const read = parseScenario(text);
      expect(read.ok && policyFlags(read.value)).toEqual([]);
    }
  });

  // The last value inside and the first outside. Margin 2.5 to 5 cm, sleeve to 5 cm, sheath tail to 30 cm: ranges seen in teaching
  // texts and local policies; drift and time of remedies: our own limits, said as such in the table.
  it.each([
    ['marginM', 0.025, 0.024],
    ['marginM', 0.05, 0.051],
    ['sheathTailM', 0.3, 0.31],
    ['sleeveAboveElbowM', 0.05, 0.06],
    ['sleeveAboveElbowM', 0, 0.1],
    ['driftTowardSiteM', 0.01, 0.011],
    ['remedySeconds', 1, 0.9],
    ['remedySeconds', 2, 0.1],
  ] as const)('%s: %d is not, %d is', (key, inside, outside) => {
    expect(paths(withPolicy({ [key]: inside }))).toEqual([]);
    expect(paths(withPolicy({ [key]: outside }))).toEqual([`policy.${key}`]);
  });

  it.each([
    ['lowerLimit', 'waist'],
    ['lowerLimit', 'field'],
    ['reachOver', 'touchOnly'],
    ['reachOver', 'always'],
  ] as const)('%s %s is seen in practice', (key, value) => {
    expect(paths(withPolicy({ [key]: value }))).toEqual([]);
  });

  it('is said of sheath, tilt and where the assistant stands as well', () => {
    // Sheaths of 30 to 244 cm are sold; tilts up to 15 degrees are in use; 30 cm (12 in) from the field.
    expect(paths(scenarioSchema.parse({ ...HEAD, cord: { coveredM: 0.25 } }))).toEqual(['cord.coveredM']);
    expect(paths(scenarioSchema.parse({ ...HEAD, room: { bed: { headDownDeg: 16 } } }))).toEqual(['room.bed.headDownDeg']);
    expect(paths(scenarioSchema.parse({ ...HEAD, room: { assistantXM: -0.8 } }))).toEqual(['room.assistantXM']);
    expect(paths(scenarioSchema.parse({ ...HEAD, room: { assistantXM: -0.81 } }))).toEqual([]);
  });

  it('is a rule that the scenario does not judge', () => {
    const [flag, ...others] = policyFlags(scenarioSchema.parse({ ...HEAD, rulesOff: ['hand-on-face'] }));
    expect(others).toEqual([]);
    expect(flag).toMatchObject({ path: 'rulesOff[0]', value: 'not judged', setting: 'A gloved hand on mask or face' });
  });

  it('is told with its value, what is published and from where', () => {
    expect(policyFlags(withPolicy({ marginM: 0.06 }))).toEqual([
      { path: 'policy.marginM', setting: 'Margin of a sterile surface', value: '6 cm', published: '2.5 cm (1 in); 5 cm in some places', source: expect.objectContaining({ title: 'Sterile-technique study guides' }), mark: 'looked-up' },
    ]);
    expect(policyValueWords(0.025, 'm')).toBe('2.5 cm');
    expect(policyValueWords('touchOnly', '')).toBe('only with a touch');
  });
});
