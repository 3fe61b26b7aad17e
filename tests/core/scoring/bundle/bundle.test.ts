import { describe, expect, it } from 'vitest';
import { insertionBundle, type BundleElementId, type BundleInputs } from '../../../../src/core/scoring/bundle/bundle.ts';
import { scenarioSchema } from '../../../../src/core/scenario/schema.ts';

/** Everything as a careful operator leaves it: an adult, chlorhexidine, dry, five barriers. */
const PERFECT: BundleInputs = scenarioSchema.parse({ format: 'sterile-field-scenario', version: 1, id: 'b', title: 'Bundle', summary: 'For tests.', seed: 1, station: 'field' }).before;

const pvi = ['povidoneIodine'] as const;
const row = (id: string, change: Partial<BundleInputs>, prep: boolean, met: boolean): [string, Partial<BundleInputs>, boolean, boolean] => [id, change, prep, met];

/**
 * The published rule (CDC NHSN, form 57.125 and the answers to questions on it): four elements, each a clear yes; chlorhexidine from
 * 60 days of age unless a contraindication is documented; emergencies are not exempt. T18, T19 and the unknowns are interpretations.
 */
const ROWS = [
  row('T01 everything done', {}, true, true),
  row('T02 no hand hygiene', { handHygiene: 'no' }, true, false),
  row('T03 hand hygiene unknown', { handHygiene: 'unknown' }, true, false),
  row('T04 not dry', { dry: 'no' }, true, false),
  row('T05 no mask', { mask: 'no' }, true, false),
  row('T06 no gown', { gown: 'no' }, true, false),
  row('T07 no gloves', { gloves: 'no' }, true, false),
  row('T08 no cap', { cap: 'no' }, true, false),
  row('T09 half a sheet', { drapeWholeBody: 'no' }, true, false),
  row('T10 povidone-iodine', { antiseptics: [...pvi] }, false, false),
  row('T11 povidone-iodine, contraindication', { antiseptics: [...pvi], contraindication: 'yes' }, true, true),
  row('T12 povidone-iodine, contraindication unknown', { antiseptics: [...pvi], contraindication: 'unknown' }, false, false),
  row('T13a alcohol', { antiseptics: ['alcohol'] }, false, false),
  row('T13b other', { antiseptics: ['other'] }, false, false),
  row('T14 alcohol, contraindication', { antiseptics: ['alcohol'], contraindication: 'yes' }, true, true),
  row('T15 other, contraindication', { antiseptics: ['other'], contraindication: 'yes' }, true, true),
  row('T16 chlorhexidine and povidone-iodine', { antiseptics: ['chlorhexidine', 'povidoneIodine'] }, true, true),
  row('T17 chlorhexidine and alcohol', { antiseptics: ['chlorhexidine', 'alcohol'] }, true, true),
  row('T18 nothing', { antiseptics: [] }, false, false),
  row('T19 nothing, contraindication', { antiseptics: [], contraindication: 'yes' }, false, false),
  row('T20 59 days, povidone-iodine', { ageDays: 59, antiseptics: [...pvi] }, true, true),
  row('T21 59 days, alcohol', { ageDays: 59, antiseptics: ['alcohol'] }, true, true),
  row('T22 59 days, other', { ageDays: 59, antiseptics: ['other'] }, true, true),
  row('T23 59 days, nothing', { ageDays: 59, antiseptics: [] }, false, false),
  row('T24 60 days, povidone-iodine', { ageDays: 60, antiseptics: [...pvi] }, false, false),
  row('T25 60 days, povidone-iodine, contraindication', { ageDays: 60, antiseptics: [...pvi], contraindication: 'yes' }, true, true),
  row('T26 59 days, povidone-iodine, not dry', { ageDays: 59, antiseptics: [...pvi], dry: 'no' }, true, false),
  row('T27 59 days, no cap', { ageDays: 59, cap: 'no' }, true, false),
  row('T28 emergency, no drape', { emergency: true, drapeWholeBody: 'no' }, true, false),
  row('T29 chlorhexidine despite a contraindication', { contraindication: 'yes' }, true, true),
];

const outcome = (change: Partial<BundleInputs>) => insertionBundle({ ...PERFECT, ...change });
const isMet = (change: Partial<BundleInputs>, id: BundleElementId): boolean => outcome(change).elements.find((element) => element.id === id)!.met;

describe('The insertion bundle', () => {
  it('has all 29 rows of the truth table here', () => {
    expect(new Set(ROWS.map(([id]) => id.slice(0, 3))).size).toBe(29);
  });

  it.each(ROWS)('%s', (_, change, prep, met) => {
    expect(isMet(change, 'skinPrep')).toBe(prep);
    expect(outcome(change).met).toBe(met);
  });

  it('judges each element by itself: only what was changed fails', () => {
    const failing = (change: Partial<BundleInputs>): string[] => outcome(change).elements.filter((element) => !element.met).map(({ id }) => id);
    expect(failing({ handHygiene: 'unknown' })).toEqual(['handHygiene']);
    expect(failing({ dry: 'unknown' })).toEqual(['dry']);
    for (const barrier of ['cap', 'mask', 'gown', 'gloves', 'drapeWholeBody'] as const) for (const answer of ['no', 'unknown'] as const) expect(failing({ [barrier]: answer }), barrier).toEqual(['barriers']);
    expect(failing({ handHygiene: 'no', dry: 'no', cap: 'no', antiseptics: [] })).toEqual(['handHygiene', 'skinPrep', 'dry', 'barriers']);
  });

  it('does not excuse an emergency in any element, nor count it as a fault', () => {
    for (const [, change] of ROWS) expect(outcome({ ...change, emergency: true }).met).toBe(outcome({ ...change, emergency: false }).met);
  });

  it('flags chlorhexidine despite a documented contraindication, at any age, beside passing it; nothing else', () => {
    for (const [id, change] of ROWS) expect(outcome(change).safetyFlags.length, id).toBe(id.startsWith('T29') ? 1 : 0);
    expect(outcome({ contraindication: 'yes', ageDays: 30 }).safetyFlags).toHaveLength(1);
    expect(outcome({ contraindication: 'unknown' }).safetyFlags).toEqual([]);
  });

  // The rule in four lines, as the published answers put it, against every combination of answers at the ages around the boundary.
  it('is the published rule for every combination of answers', () => {
    const answers = ['yes', 'no', 'unknown'] as const;
    const sets = [[], ['chlorhexidine'], ['povidoneIodine'], ['alcohol', 'other'], ['povidoneIodine', 'chlorhexidine']] as const;
    let met = 0;
    for (const ageDays of [59, 60])
      for (const antiseptics of sets)
        for (const contraindication of answers)
          for (let n = 0; n < 3 ** 7; n++) {
            const [handHygiene, dry, cap, mask, gown, gloves, drapeWholeBody] = Array.from({ length: 7 }, (_, k) => answers[Math.floor(n / 3 ** k) % 3]!);
            const inputs = { ...PERFECT, ageDays, antiseptics: [...antiseptics], contraindication, handHygiene, dry, cap, mask, gown, gloves, drapeWholeBody } as BundleInputs;
            const prep = ageDays >= 60 ? antiseptics.some((one) => one === 'chlorhexidine') || (contraindication === 'yes' && antiseptics.length > 0) : antiseptics.length > 0;
            const rest = [handHygiene, dry, cap, mask, gown, gloves, drapeWholeBody].every((answer) => answer === 'yes');
            if (insertionBundle(inputs).met !== (prep && rest)) expect.fail(JSON.stringify(inputs));
            met += Number(prep && rest);
          }
    // Only all seven "yes" (1 of 3^7) can be met: below 60 days 4 of 5 sets, from there 2 of 5, and 4 of 5 with a contraindication.
    expect(met).toBe(4 * 3 + (2 + 2 + 4));
  });

  it('says why in one sentence', () => {
    for (const [, change] of ROWS) for (const { why } of outcome(change).elements) expect(why).toMatch(/^[A-Z].*\.$/);
    expect(outcome({ cap: 'no', mask: 'unknown' }).elements[3]!.why).toBe('Missing: cap: no; mask: not known, which counts as no.');
  });
});
