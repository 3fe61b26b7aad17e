import type { Scenario } from '../../scenario/schema.ts';
import { POLICY_TABLE, type PolicyRow } from './policyTable.ts';
import { RULE_BOOK } from './ruleBook.ts';
import type { Mark, Source } from './sources.ts';

/** A setting of a scenario that lies outside what is published: allowed, but said wherever the scenario's results are shown. */
export interface PolicyFlag {
  /** Place in the scenario file. */
  readonly path: string;
  readonly setting: string;
  /** What the scenario says, in words: "6 cm". */
  readonly value: string;
  /** What is published, in words. */
  readonly published: string;
  readonly source: Source;
  readonly mark: Mark;
}

/** Everything in which a scenario leaves published practice: settings out of range, and rules that it does not judge. */
export const policyFlags = (scenario: Scenario): readonly PolicyFlag[] => [...settingFlags(scenario), ...ruleFlags(scenario)];

const settingFlags = (scenario: Scenario): readonly PolicyFlag[] =>
  POLICY_TABLE.filter(({ read, within }) => !within(read(scenario))).map(({ path, setting, published, source, mark, read, unit }) => ({ path, setting, value: policyValueWords(read(scenario), unit), published, source, mark }));

function ruleFlags({ rulesOff }: Scenario): readonly PolicyFlag[] {
  return rulesOff.flatMap((id, k) => {
    const rule = RULE_BOOK.find((one) => one.id === id);
    if (!rule) return [];
    return [{ path: `rulesOff[${k}]`, setting: rule.title, value: 'not judged', published: rule.statement, source: rule.source, mark: rule.mark }];
  });
}

/** A value of the policy as a person reads it: lengths in centimetres. */
export function policyValueWords(value: number | string, unit: PolicyRow['unit']): string {
  if (unit === 'm') return `${Math.round(Number(value) * 10000) / 100} cm`;
  if (unit === '°') return `${value} degrees`;
  return VALUE_WORDS[String(value)] ?? String(value);
}

const VALUE_WORDS: Readonly<Record<string, string>> = { field: 'the field, and the waist beside it', waist: 'the waist', always: 'always a break', touchOnly: 'only with a touch' };
