import { describe, expect, it } from 'vitest';
import { scenarioSpecials } from '../../../src/app/start/scenarioSpecials.ts';
import { LOADING, scenarioWith } from '../support/scenario.ts';

describe('what is special in a scenario', () => {
  it('is nothing in the usual room', () => {
    expect(scenarioSpecials(scenarioWith())).toEqual([]);
  });

  it('names bed, rails, sheath and adhesive, and counts events without giving them away', () => {
    const scenario = scenarioWith({
      room: { bed: { headDownDeg: 15 }, rails: { left: { topAboveMattressM: 0.4 }, right: { up: false } } },
      cord: { coveredM: 0.75 },
      drape: { left: { reach: 'inside', lengthM: 0.5, peelNPerM: 20 } },
      cues: [
        { atS: 5, kind: 'itch' },
        { atS: 9, kind: 'cough' },
      ],
    });
    expect(scenarioSpecials(scenario)).toEqual(['head down 15°', 'one rail down', 'high rails', 'bare rails', 'sheath of 75 cm', 'weak adhesive', '2 events on the way']);
  });

  it('names the station when it is not the field, and the sheath that is to be put on', () => {
    expect(scenarioSpecials(LOADING)).toEqual(['sheath the probe']);
    expect(scenarioSpecials({ ...LOADING, followedBy: ['field'] })).toEqual(['sheath the probe, then work the field']);
    expect(scenarioSpecials(scenarioWith({ station: 'sheath', sheath: { form: 'loose', lengthM: 0.91 }, cord: { coveredM: 0.5 } }))).toEqual(['sheath the probe', 'sheath of 91 cm', 'loose sheath']);
  });
});
