import type { Severity } from '../../core/ledger/break.ts';
import { policyValueWords } from '../../core/ledger/rules/policyFlags.ts';
import { POLICY_TABLE } from '../../core/ledger/rules/policyTable.ts';
import { REMEDY_TABLE } from '../../core/ledger/rules/remedyTable.ts';
import type { Rule } from '../../core/ledger/rules/rule.ts';
import { rulesInForce } from '../../core/ledger/rules/ruleBook.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';
import { STATION_WORDS } from '../../core/ledger/rules/station.ts';
import { triggerWords } from '../../core/ledger/rules/triggerWords.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { REMEDY_ADVICE } from '../run/words.ts';
import { settingsOf } from './ruleFilter.ts';
import { USUAL } from './usualScenario.ts';

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  minor: 'Minor: risk rises without contact. Major or critical once it reaches more.',
  major: 'Major: a barrier is broken. Critical once it reaches what goes into the patient, or the site.',
  critical: 'Critical: it reaches the site, or could no longer be kept from it.',
};

/** One rule with everything that the book holds about it. */
export function RuleDetail({ rule, scenario }: { readonly rule: Rule; readonly scenario: Scenario | null }) {
  return (
    <article class="rule-detail" aria-labelledby="rule-title">
      <h2 id="rule-title">{rule.title}</h2>
      {scenario && !rulesInForce(scenario).includes(rule) && <p class="rule-off">“{scenario.title}” does not judge this rule.</p>}
      <p class="rule-text">{rule.statement}</p>
      <dl class="rule-facts">
        <dt>Broken when</dt>
        {rule.triggers.map((trigger) => (
          <dd key={triggerWords(trigger)}>{triggerWords(trigger)}</dd>
        ))}
        <dt>Severity</dt>
        <dd>{SEVERITY_WORDS[rule.severity]}</dd>
        <dt>Answered by</dt>
        <RemedyAnswers rule={rule} />
        <Settings rule={rule} scenario={scenario} />
        <dt>Source</dt>
        <dd>{sourceWords(rule.source, rule.mark)}</dd>
        <dt>Station</dt>
        <dd>{rule.stations.map((id) => STATION_WORDS[id]).join(', ')}</dd>
        <dt>Name in scenario files</dt>
        <dd>
          <code>{rule.id}</code>
        </dd>
      </dl>
    </article>
  );
}

function RemedyAnswers({ rule }: { readonly rule: Rule }) {
  const row = REMEDY_TABLE.find(({ practised }) => 'rules' in practised && practised.rules.includes(rule.id));
  return (
    <>
      {row && <dd>{row.asked}</dd>}
      <dd class="small">Remedies in a run: {rule.remedies.map((remedy) => REMEDY_ADVICE[remedy]).join('; ')}.</dd>
    </>
  );
}

/** Figures and choices of local policy, with what is published and what the scenario says. */
function Settings({ rule, scenario }: { readonly rule: Rule; readonly scenario: Scenario | null }) {
  const rows = POLICY_TABLE.filter(({ path }) => settingsOf(rule).includes(path));
  if (rows.length === 0) return null;
  return (
    <>
      <dt>Local policy</dt>
      {rows.map(({ path, setting, read, unit, published, within }) => {
        const value = scenario && read(scenario);
        return (
          <dd key={path}>
            {setting}: {policyValueWords(read(USUAL), unit)} by default. Published: {published}.
            {value !== null && value !== read(USUAL) && <span class={within(value) ? '' : 'rule-outside'}> Here: {policyValueWords(value, unit)}.</span>}
          </dd>
        );
      })}
    </>
  );
}
