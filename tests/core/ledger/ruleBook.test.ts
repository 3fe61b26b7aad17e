import { describe, expect, it } from 'vitest';
import { allowedTouch } from '../../../src/core/ledger/rules/ruleIndex.ts';
import { KEPT, NEVER_STERILE, SHEATH } from '../../../src/core/ledger/rules/kinds.ts';
import type { Trigger } from '../../../src/core/ledger/rules/rule.ts';
import { RULE_BOOK, ruleById } from '../../../src/core/ledger/rules/ruleBook.ts';
import { sourceWords } from '../../../src/core/ledger/rules/sourceWords.ts';
import { PLAYABLE_STATIONS } from '../../../src/core/ledger/rules/station.ts';
import { scenarioSchema } from '../../../src/core/scenario/schema.ts';

const touchKeys = RULE_BOOK.flatMap(({ id, triggers }) =>
  triggers
    .filter((trigger): trigger is Extract<Trigger, { kind: 'touch' }> => trigger.kind === 'touch')
    .flatMap(({ surfaces, against, because }) => surfaces.flatMap((kept) => against.map((met) => ({ id, key: `${kept} ${met} ${because}` })))),
);

describe('the rule book', () => {
  it('has one row per id', () => {
    expect(new Set(RULE_BOOK.map(({ id }) => id)).size).toBe(RULE_BOOK.length);
  });

  it('says what a rule rests on: a source, or common practice', () => {
    for (const { id, source } of RULE_BOOK) {
      if (source === 'common practice') continue;
      expect(source.title.length, id).toBeGreaterThan(5);
      expect(source.body.length, id).toBeGreaterThan(2);
      expect(source.year === null || (source.year > 1990 && source.year < 2030), id).toBe(true);
    }
  });

  it('does not claim more of a source than was read of it', () => {
    for (const { id, source, mark } of RULE_BOOK) {
      if (source === 'common practice') expect(mark, id).not.toBe('looked-up');
      else if (mark === 'looked-up') expect(['text', 'quoted'], id).toContain(source.seen);
    }
  });

  it('tells a source with how far it was checked', () => {
    const words = (id: string): string => sourceWords(ruleById(id).source, ruleById(id).mark);
    expect(words('glove-on-margin')).toBe('Sterile-technique study guides, teaching texts that follow AORN. Read where others repeat it, not in the standard itself.');
    expect(words('glove-on-rail')).toBe('Common breaks in sterile technique (91: 350–364), AORN Journal, 2010. Title and abstract read, not the text. This statement is from memory.');
    expect(words('glove-on-sheath-tail')).toBe('Common practice; no published source.');
    expect(words('prepared-skin-touched')).toMatch(/2011, Hand hygiene and aseptic technique.* From memory, not read for this book\.$/);
  });

  it('names the stations in which a rule can be broken, all of them playable', () => {
    for (const { id, stations } of RULE_BOOK) {
      expect(stations.length, id).toBeGreaterThan(0);
      for (const station of stations) expect(PLAYABLE_STATIONS, id).toContain(station);
    }
  });

  it('gives each rule a title, a statement that ends, a sentence and a remedy', () => {
    for (const { id, title, statement, sentence, remedies } of RULE_BOOK) {
      expect(title, id).toMatch(/^[A-Z].{8,70}[^.]$/);
      expect(statement, id).toMatch(/^[A-Z].{30,}\.$/);
      expect(sentence, id).toMatch(/\{surface\}.*\.$/);
      expect(remedies.length, id).toBeGreaterThan(0);
    }
  });

  it('gives one verdict on every meeting of a kind that must be sterile with one that never is: a rule or a permission', () => {
    const ruled = new Map<string, number>();
    for (const { key } of touchKeys) ruled.set(key, (ruled.get(key) ?? 0) + 1);
    for (const [key, rules] of ruled) expect(rules, key).toBe(1);
    for (const kept of KEPT)
      for (const met of NEVER_STERILE) {
        const permitted = allowedTouch(kept, met) !== undefined;
        expect(ruled.has(`${kept} ${met} nature`) !== permitted, `${kept} and ${met}`).toBe(true);
      }
  });

  // A sheath that comes down comes down with its closed end: that is a break of its own, and no other stands in for it.
  it('lets the inside of a sheath meet anything, and its outside not the bare probe that goes into it', () => {
    for (const kept of KEPT) expect(allowedTouch('sheathInside', kept), kept).toEqual({ leaves: null });
    for (const kept of SHEATH) expect(allowedTouch('bareProbe', kept), kept).toBeUndefined();
    expect(ruleById('sheath-below-field').triggers).toContainEqual({ kind: 'zone', zone: 'belowField', surfaces: SHEATH, loses: 'thing' });
  });

  it('takes its figures from the scenario’s policy, whose defaults they are', () => {
    const policy = scenarioSchema.shape.policy.parse({});
    const figures = RULE_BOOK.flatMap(({ id, values }) => values.map((value) => ({ id, value })));
    expect(figures.length).toBeGreaterThan(8);
    for (const { id, value } of figures) expect(policy[value.policy], id).toBe(value.value);
  });

  it('stops at an id that does not exist', () => {
    expect(() => ruleById('glove-on-moon')).toThrow('a rule "glove-on-moon"');
  });
});

/** What published texts say, and the row that holds it. */
describe('figures and severities of the trade', () => {
  const figure = (id: string): number | undefined => ruleById(id).values[0]?.value;

  it.each([
    // Outer 2.5 cm (1 in) of a drape or opened wrapper: sterile-technique study guides.
    ['glove-on-margin', 0.025],
    ['item-on-margin', 0.025],
    ['sheath-on-margin', 0.025],
    // Sleeve sterile from 5 cm (2 in) above the elbow to the cuff: teaching texts on gown zones.
    ['glove-on-upper-sleeve', 0.05],
    ['body-on-field', 0.05],
    // Last part of the sheath that the assistant handled, 15 cm of 0 to 30 seen: common practice, no published length.
    ['glove-on-sheath-tail', 0.15],
    ['tail-on-field', 0.15],
    // A laid drape is not repositioned (AST Standards of Practice for Surgical Drapes, 2008); 1 cm is our own threshold for "moved".
    ['drape-slid-toward-site', 0.01],
  ])('%s: %d m', (id, metres) => {
    expect(figure(id)).toBe(metres);
  });

  it.each([
    // Contaminated drape: lay a new sterile one over it (AORN expert answers, 2022).
    ['cord-on-field', 'coverDrape'],
    // Drape slid toward the site: prepare, dry and drape anew (common practice on AST 2008).
    ['drape-slid-toward-site', 'prepAndDrape'],
    // Only the glove touched: change that glove (anaesthesia group's page on managing breaches).
    ['glove-on-rail', 'changeGlove'],
    // Sleeve touched: gown and gloves (common practice).
    ['sleeve-on-rail', 'changeGownAndGloves'],
    // Cover of the probe compromised: replace it at once (an ultrasound system's user manual).
    ['sheath-on-rail', 'newSheath'],
    // Hand below waist or out of view: change gloves (common practice).
    ['hand-below-field', 'changeGlove'],
    ['hand-out-of-sight', 'changeGlove'],
    // Dropped item stays out and is replaced (common practice).
    ['fallen-item-taken-back', 'replaceItem'],
  ])('%s is answered first by %s', (id, remedy) => {
    expect(ruleById(id).remedies[0]).toBe(remedy);
  });

  // Minor: risk without contact; critical: what reaches the site by itself; all else breaks a barrier (design of the severities).
  it('are minor only without contact and critical only at the site', () => {
    const ids = (severity: string): string[] => RULE_BOOK.filter((rule) => rule.severity === severity).map(({ id }) => id);
    expect(ids('minor').sort()).toEqual(['hand-below-field', 'hand-out-of-sight', 'reach-over']);
    expect(ids('critical').sort()).toEqual(['drape-slid-toward-site', 'unsterile-used-at-site']);
  });
});
