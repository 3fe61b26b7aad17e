import { RULE_BOOK } from '../../core/ledger/rules/ruleBook.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';
import type { RuleWords } from '../services.ts';

const byId = new Map(RULE_BOOK.map((rule) => [rule.id, rule]));

/** A rule as it is told to a person; a rule of another version's book is told by its id alone. */
export function ruleWords(id: string): RuleWords {
  const rule = byId.get(id);
  if (!rule) return { title: id, statement: 'This rule is not in the rule book of this version.', sentence: '{surface} became unsterile.', source: 'unknown', remedies: [] };
  return { title: rule.title, statement: rule.statement, sentence: rule.sentence, source: sourceWords(rule.source, rule.mark), remedies: rule.remedies };
}
