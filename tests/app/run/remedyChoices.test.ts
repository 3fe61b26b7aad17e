import { describe, expect, it } from 'vitest';
import { remedyChoices } from '../../../src/app/run/remedyChoices.ts';
import { scenarioWith } from '../support/scenario.ts';

describe('what a remedy is meant for', () => {
  it('is asked for gloves and sides of the drape', () => {
    expect(remedyChoices('changeGlove', scenarioWith()).map(({ thing }) => thing)).toEqual(['right', 'left']);
    expect(remedyChoices('coverDrape', scenarioWith()).map(({ thing }) => thing)).toEqual(['right', 'left']);
  });

  it('is not asked where there is only one', () => {
    expect(remedyChoices('newSheath', scenarioWith())).toEqual([]);
  });

  it('names items by what they are and numbers those alike', () => {
    const items = [
      { id: 'gel', kind: 'gelPacket' as const, xM: 0 },
      { id: 'one', kind: 'gauze' as const, xM: 0.1 },
      { id: 'two', kind: 'gauze' as const, xM: 0.2 },
    ];
    expect(remedyChoices('replaceItem', scenarioWith({ items })).map(({ words }) => words)).toEqual(['Gel packet', 'Gauze 1', 'Gauze 2']);
  });
});
