import { describe, expect, it } from 'vitest';
import { filterRemedies, filterRules, NO_FILTER, ruleSettings, settingsOf, type RuleFilter } from '../../../src/app/rules/ruleFilter.ts';
import { USUAL } from '../../../src/app/rules/usualScenario.ts';
import { REMEDY_TABLE } from '../../../src/core/ledger/rules/remedyTable.ts';
import { RULE_BOOK, RULE_GROUPS, ruleById } from '../../../src/core/ledger/rules/ruleBook.ts';
import { scenarioWith } from '../support/scenario.ts';

const found = (filter: Partial<RuleFilter>, scenario = USUAL): string[] => filterRules(RULE_BOOK, { ...NO_FILTER, ...filter }, scenario).map(({ id }) => id);
const rows = (text: string, station: RuleFilter['station'] = ''): string[] => filterRemedies(REMEDY_TABLE, { text, station }).flatMap(({ row, id }) => row ?? id);

describe('Narrowing the rule book', () => {
  it('leaves everything in its order when nothing is asked for', () => {
    expect(found({})).toEqual(RULE_BOOK.map(({ id }) => id));
    expect(RULE_GROUPS.flatMap(({ rules }) => rules)).toEqual(RULE_BOOK);
  });

  it('finds every word anywhere in a rule, whatever its capitals', () => {
    expect(found({ text: 'GLOVE margin' })).toEqual(['glove-on-margin']);
    expect(found({ text: 'itches' })).toContain('hand-on-face');
    expect(found({ text: 'hand-on-face' })).toEqual(['hand-on-face']);
    expect(found({ text: 'AST 2008' })).toEqual(['drape-slid-toward-site', 'drape-slid-away']);
    expect(found({ text: 'no such word' })).toEqual([]);
  });

  it('by severity', () => {
    expect(found({ severity: 'critical' })).toEqual(['drape-slid-toward-site', 'unsterile-used-at-site']);
    expect(found({ severity: 'minor', text: 'sight' })).toEqual(['hand-out-of-sight']);
  });

  it('by station', () => {
    for (const station of ['sheath', 'field'] as const) expect(found({ station })).toEqual(RULE_BOOK.filter(({ stations }) => stations.includes(station)).map(({ id }) => id));
    expect(found({ station: 'sheath' })).toContain('sheath-torn');
    expect(found({ station: 'field' })).not.toContain('sheath-torn');
    expect(found({ station: 'setUp' })).toEqual([]);
  });

  it('by local policy: any, one setting, or what this scenario does not judge', () => {
    expect(found({ policy: 'policy.marginM' })).toEqual(['glove-on-margin', 'item-on-margin', 'sheath-on-margin']);
    expect(found({ policy: 'policy.reachOver' })).toEqual(['reach-over']);
    expect(found({ policy: 'differs' })).toEqual(RULE_BOOK.filter((rule) => settingsOf(rule).length > 0).map(({ id }) => id));
    expect(found({ policy: 'off' })).toEqual([]);
    expect(found({ policy: 'off' }, scenarioWith({ rulesOff: ['hand-on-face'], policy: { reachOver: 'touchOnly' } }))).toEqual(['hand-on-face', 'reach-over']);
    expect(settingsOf(ruleById('hand-below-field'))).toEqual(['policy.lowerLimit']);
  });

  it('offers the settings on which rules depend', () => {
    expect(ruleSettings(RULE_BOOK).map(({ path }) => path)).toEqual(['policy.marginM', 'policy.sheathTailM', 'policy.sleeveAboveElbowM', 'policy.lowerLimit', 'policy.reachOver', 'policy.driftTowardSiteM']);
  });
});

describe('Narrowing the remedies', () => {
  it('by words and by station', () => {
    expect(rows('')).toHaveLength(REMEDY_TABLE.length);
    expect(rows('guidewire')).toEqual(['B11']);
    expect(rows('', 'gown')).toEqual(['B01', 'B03', 'B04', 'B05', 'B07', 'skinOnOutside', 'tieCardTouched']);
    expect(rows('', 'field')).toEqual(expect.arrayContaining(['B01', 'B02', 'B27', 'sheathTouched']));
    expect(rows('B22')).toEqual(['B22']);
    expect(rows('B20', 'sheath')).toEqual(['B20']);
    expect(rows('B20', 'field')).toEqual([]);
  });
});
