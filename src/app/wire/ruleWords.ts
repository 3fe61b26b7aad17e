import type { PublishedSource, Rule } from '../../core/ledger/rules/rule.ts';
import { RULE_BOOK } from '../../core/ledger/rules/ruleBook.ts';
import type { RuleWords } from '../services.ts';

const byId = new Map(RULE_BOOK.map((rule) => [rule.id, rule]));

/** A rule as it is told to a person; a rule of another version's book is told by its id alone. */
export function ruleWords(id: string): RuleWords {
  const rule = byId.get(id);
  if (!rule) return { title: id, statement: 'This rule is not in the rule book of this version.', sentence: '{surface} became unsterile.', source: 'unknown', remedies: [] };
  return { title: rule.title, statement: rule.statement, sentence: rule.sentence, source: sourceText(rule), remedies: rule.remedies };
}

function sourceText({ source, mark }: Rule): string {
  if (source === 'common practice') return 'common practice. Your local policy comes first.';
  const how = mark === 'derived' ? ' Worked out from it.' : mark === 'memory' ? ' As generally known, not looked up word for word.' : '';
  return `${published(source)}.${how}`;
}

const published = ({ title, body, year, recommendation }: PublishedSource): string => [title, body, year, recommendation].filter((part) => part !== null && part !== undefined).join(', ');
