import type { Severity } from '../../core/ledger/break.ts';
import { POLICY_TABLE } from '../../core/ledger/rules/policyTable.ts';
import type { RemedyRow } from '../../core/ledger/rules/remedyRow.ts';
import type { Rule } from '../../core/ledger/rules/rule.ts';
import { ruleById, rulesInForce } from '../../core/ledger/rules/ruleBook.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';
import type { StationId } from '../../core/ledger/rules/station.ts';
import { triggerWords } from '../../core/ledger/rules/triggerWords.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { REMEDY_ADVICE } from '../run/words.ts';

/** What narrows the rules; '' leaves a choice open. */
export interface RuleFilter {
  readonly text: string;
  readonly severity: Severity | '';
  readonly station: StationId | '';
  /** `differs`: local policy decides something in it; `off`: the scenario does not judge it; else the path of one setting. */
  readonly policy: string;
}

export const NO_FILTER: RuleFilter = { text: '', severity: '', station: '', policy: '' };

/** Settings on which a rule depends, as paths in a scenario file. */
export const settingsOf = ({ values, policy }: Rule): readonly string[] => [...new Set([...values.map((value) => `policy.${value.policy}`), ...(policy ? [`policy.${policy.key}`] : [])])];

/** Settings by which rules can be narrowed: those on which at least one rule of the list depends. */
export const ruleSettings = (rules: readonly Rule[]): readonly { readonly path: string; readonly words: string }[] =>
  POLICY_TABLE.filter(({ path }) => rules.some((rule) => settingsOf(rule).includes(path))).map(({ path, setting }) => ({ path, words: setting }));

/** Rules that the filter leaves, in their order. Every word of the text must occur somewhere in what is shown of a rule. */
export function filterRules(rules: readonly Rule[], filter: RuleFilter, scenario: Scenario | null): readonly Rule[] {
  const judged = scenario && rulesInForce(scenario);
  return rules.filter(
    (rule) =>
      (filter.severity === '' || rule.severity === filter.severity) &&
      (filter.station === '' || rule.stations.includes(filter.station)) &&
      fitsPolicy(rule, filter.policy, judged === null || judged.includes(rule)) &&
      hasWords(ruleText(rule), filter.text),
  );
}

function fitsPolicy(rule: Rule, policy: string, judged: boolean): boolean {
  if (policy === '') return true;
  if (policy === 'off') return !judged;
  return policy === 'differs' ? settingsOf(rule).length > 0 : settingsOf(rule).includes(policy);
}

/** Rows of the remedies that the filter leaves. */
export const filterRemedies = (rows: readonly RemedyRow[], { text, station }: Pick<RuleFilter, 'text' | 'station'>): readonly RemedyRow[] =>
  rows.filter((row) => (station === '' || stationsOfRow(row).includes(station)) && hasWords(remedyText(row), text));

/** Where a row can be practised: wherever one of its rules counts, or where it waits. */
const stationsOfRow = ({ practised }: RemedyRow): readonly StationId[] => ('rules' in practised ? practised.rules.flatMap((id) => ruleById(id).stations) : [practised.station]);

const ruleText = (rule: Rule): string =>
  [rule.id, rule.title, rule.statement, rule.severity, ...rule.triggers.map(triggerWords), ...rule.remedies.map((remedy) => REMEDY_ADVICE[remedy]), sourceWords(rule.source, rule.mark)].join(' ');

const remedyText = ({ row, broken, asked, practised, source, mark }: RemedyRow): string =>
  [row ?? '', broken, asked, ...('rules' in practised ? practised.remedies.map((remedy) => REMEDY_ADVICE[remedy]) : [practised.missing ?? '']), sourceWords(source, mark)].join(' ');

/** Whether every word of the search is in a text, whatever its capitals. */
function hasWords(text: string, search: string): boolean {
  const lower = text.toLowerCase();
  return search.toLowerCase().split(/\s+/).every((word) => lower.includes(word));
}
