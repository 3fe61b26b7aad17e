import { describe, expect, it } from 'vitest';
import { canBeFollowedByField } from '../../../src/core/scenario/followedByField.ts';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import type { Scenario } from '../../../src/core/scenario/schema.ts';
import { loadsSheath, stationsOf } from '../../../src/core/scenario/station.ts';
import { fileWith } from './source.ts';

const BANDS = [{ id: 'bandA', kind: 'band', xM: -1.0 }, { id: 'bandB', kind: 'band', xM: -0.94 }];
const SHEATH_GEL = { id: 'sheathGel', kind: 'gelPacket', xM: -1.1 };
const FIELD = [{ id: 'gel', kind: 'gelPacket', xM: -0.3 }, { id: 'anaesthetic', kind: 'syringe', xM: 0.32 }, { id: 'needle', kind: 'needleSyringe', xM: -0.22 }];

type Changes = Parameters<typeof fileWith>[0];
function taken(changes: Changes): Scenario {
  const result = parseScenario(fileWith(changes));
  if (!result.ok) throw new Error(result.error.message);
  return result.value;
}
const loading = (changes: Changes = {}): Scenario => taken({ station: 'sheath', items: [SHEATH_GEL, ...BANDS], ...changes });

describe('A scenario of sheathing', () => {
  it('needs gel and two bands, and none of the things of the field', () => {
    expect(loading().sheath).toMatchObject({ form: 'telescoped', lengthM: 1.22, xM: -0.8 });
  });

  it('reads neither where the probe lies nor how the cord was laid', () => {
    expect(() => loading({ 'probe.xM': 0.47, 'cord.slackM': 0.8, 'cord.lengthM': 1.4, 'cord.coveredM': 2.5 })).not.toThrow();
    expect(() => taken({ 'probe.xM': 0.47 })).toThrow('probe.xM');
  });

  it('may have spare packets on the kit table and an unsterile bottle on the machine', () => {
    const items = [SHEATH_GEL, { ...BANDS[0]!, spare: true }, BANDS[1]!, { id: 'bottle', kind: 'gelBottle', xM: 1.2 }];
    expect(loading({ items }).items.map(({ spare }) => spare)).toEqual([false, true, false, false]);
  });

  it('counts a spare packet as one that is there', () => {
    expect(() => loading({ items: [{ ...SHEATH_GEL, spare: true }, ...BANDS] })).not.toThrow();
  });
});

describe('The stations of a run', () => {
  it('come in their order', () => {
    expect(stationsOf(taken({}))).toEqual(['field']);
    expect(stationsOf(loading())).toEqual(['sheath']);
    expect(stationsOf(loading({ followedBy: ['field'], items: [SHEATH_GEL, ...BANDS, ...FIELD] }))).toEqual(['sheath', 'field']);
  });

  it('say whether a probe is sheathed', () => {
    expect([loadsSheath(taken({})), loadsSheath(loading())]).toEqual([false, true]);
  });
});

describe('Going on into the field', () => {
  it('needs what the field needs, and a gel packet more', () => {
    expect(canBeFollowedByField(loading())).toBe(false);
    expect(canBeFollowedByField(loading({ items: [SHEATH_GEL, ...BANDS, ...FIELD] }))).toBe(true);
    for (const { id } of FIELD) expect(canBeFollowedByField(loading({ items: [SHEATH_GEL, ...BANDS, ...FIELD.filter((item) => item.id !== id)] })), id).toBe(false);
  });

  it('stays possible where the file says so', () => {
    expect(canBeFollowedByField(loading({ followedBy: ['field'], items: [SHEATH_GEL, ...BANDS, ...FIELD] }))).toBe(true);
  });

  it('is nothing for a run that begins there', () => {
    expect(canBeFollowedByField(taken({}))).toBe(false);
  });
});
