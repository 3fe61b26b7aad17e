import { describe, expect, it } from 'vitest';
import { scenarioSpecials } from '../../../src/app/start/scenarioSpecials.ts';
import { scenarioWith } from '../support/scenario.ts';

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
});
