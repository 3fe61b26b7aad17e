import { describe, expect, it } from 'vitest';
import { flagWords } from '../../../src/app/parts/flagWords.ts';
import { policyFlags } from '../../../src/core/ledger/rules/policyFlags.ts';
import { RULE_BOOK, ruleById } from '../../../src/core/ledger/rules/ruleBook.ts';
import { triggerWords } from '../../../src/core/ledger/rules/triggerWords.ts';
import { scenarioWith } from '../support/scenario.ts';

const told = (id: string): string[] => ruleById(id).triggers.map(triggerWords);

describe('What sets a rule off', () => {
  it.each([
    ['glove-on-rail', ['A glove touches a bed rail.']],
    ['sleeve-on-floor', ['A gown sleeve, the gown front or a knit cuff touches the floor.']],
    ['sheath-on-margin', ['The sheath over the probe touches the margin of the top of a drape, a cover, the kit table or the opened wrapper.']],
    // Loaded in the run, the sheath may still be folded, with neither cord nor probe in it.
    ['sheath-on-bare-probe', ['The sheath along the cord or the sheath over the probe touches the bare probe.']],
    ['hand-out-of-sight', ['A glove cannot be seen.']],
    ['reach-over', ['An unsterile arm or thing is held over the field.']],
    ['drape-slid-away', ['A laid drape moves away from the site until unprepared skin lies bare.']],
    ['unsterile-thing-touched', ['Anything that must be sterile touches such a thing that never was sterile.']],
    ['cord-hung-below-returned', [
      'The top of a drape, a cover, the kit table, the opened wrapper, the sheath along the cord or the sheath over the probe touches the sheath along the cord or the sheath over the probe that had left the field, once that is back on it.',
      'A glove, a gown sleeve, the gown front, a knit cuff, an item, a needle, prepared skin or the site touches the sheath along the cord or the sheath over the probe that had left the field.',
    ]],
  ])('%s', (id, sentences) => {
    expect(told(id)).toEqual(sentences);
  });

  it('is one sentence for every trigger of the book', () => {
    for (const { id } of RULE_BOOK) for (const sentence of told(id)) expect(sentence, id).toMatch(/^[A-Z][^.]+\.$/);
  });
});

describe('A setting outside what is published', () => {
  it('is told in one sentence', () => {
    const told = policyFlags(scenarioWith({ policy: { marginM: 0.06 }, rulesOff: ['hand-on-face'] })).map(flagWords);
    expect(told).toEqual(['Local setting: margin of a sterile surface 6 cm; published: 2.5 cm (1 in); 5 cm in some places.', 'Not judged here: a gloved hand on mask or face.']);
  });
});
