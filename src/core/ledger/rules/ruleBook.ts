import { assert } from '../../base/assert.ts';
import type { Scenario } from '../../scenario/schema.ts';
import { BODY_RULES } from './bodyRules.ts';
import { CORD_RULES } from './cordRules.ts';
import { DRAPE_RULES } from './drapeRules.ts';
import { FIXED_THING_RULES } from './fixedThingRules.ts';
import { GOWN_RULES } from './gownRules.ts';
import { PLACE_RULES } from './placeRules.ts';
import type { Rule } from './rule.ts';
import { SHEATH_RULES } from './sheathRules.ts';

/** Rules by what they speak of. */
export const RULE_GROUPS: readonly { readonly words: string; readonly rules: readonly Rule[] }[] = [
  { words: 'Fixed things of the room', rules: FIXED_THING_RULES },
  { words: 'Bodies', rules: BODY_RULES },
  { words: 'Gown and gloves', rules: GOWN_RULES },
  { words: 'The cord of the probe', rules: CORD_RULES },
  { words: 'Loading the sheath', rules: SHEATH_RULES },
  { words: 'Drapes', rules: DRAPE_RULES },
  { words: 'Places and use', rules: PLACE_RULES },
];

/** Every rule that the ledger knows. */
export const RULE_BOOK: readonly Rule[] = RULE_GROUPS.flatMap(({ rules }) => rules);

const byId = new Map(RULE_BOOK.map((rule) => [rule.id, rule]));

/** The rule of that id; asking for one that does not exist is our own bug. */
export function ruleById(id: string): Rule {
  const rule = byId.get(id);
  assert(rule !== undefined, `a rule "${id}" in the rule book`);
  return rule;
}

/**
 * The rules that a scenario judges. A rule that is switched off, by its id or by the policy, neither judges nor spoils: what it
 * speaks of is then harmless. Ids that no rule has change nothing.
 */
export const rulesInForce = (scenario: Pick<Scenario, 'rulesOff' | 'policy'>): readonly Rule[] =>
  RULE_BOOK.filter(({ id, policy }) => !scenario.rulesOff.includes(id) && (policy?.offWhen === undefined || scenario.policy[policy.key] !== policy.offWhen));
