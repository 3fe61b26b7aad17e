import { policyFlags, policyValueWords } from '../../core/ledger/rules/policyFlags.ts';
import { LOCAL_DIFFERENCES } from '../../core/ledger/rules/localDifferences.ts';
import { POLICY_TABLE } from '../../core/ledger/rules/policyTable.ts';
import { sourceWords } from '../../core/ledger/rules/sourceWords.ts';
import { STATION_WORDS } from '../../core/ledger/rules/station.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { USUAL } from './usualScenario.ts';

/** Settings of a scenario with what is published, and what this scenario says; what leaves the published range is marked. */
export function PolicyTable({ scenario }: { readonly scenario: Scenario | null }) {
  const off = scenario ? policyFlags(scenario).filter(({ path }) => path.startsWith('rulesOff')) : [];
  return (
    <section class="rules-part" aria-labelledby="policy-head">
      <h2 id="policy-head">What a scenario sets</h2>
      <p class="rules-principle">A scenario may leave what is published. The start page, this page and the report then say so.</p>
      <table class="table rules-table">
        <caption class="unseen">Settings of a scenario and what is published</caption>
        <thead>
          <tr>
            <th scope="col">Setting</th>
            <th scope="col">Published</th>
            <th scope="col">By default</th>
            {scenario && <th scope="col">In this scenario</th>}
            <th scope="col">Source</th>
          </tr>
        </thead>
        <tbody>
          {POLICY_TABLE.map(({ path, setting, published, read, unit, within, source, mark }) => (
            <tr key={path}>
              <th scope="row">
                {setting}
                <code class="rule-path">{path}</code>
              </th>
              <td data-head="Published: ">{published}</td>
              <td data-head="By default: ">{policyValueWords(read(USUAL), unit)}</td>
              {scenario && (
                <td data-head="In this scenario: " class={within(read(scenario)) ? '' : 'rule-outside'}>
                  {policyValueWords(read(scenario), unit)}
                  {!within(read(scenario)) && ', outside what is published'}
                </td>
              )}
              <td class="small" data-head="Source: ">{sourceWords(source, mark)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {off.length > 0 && <p class="rule-off">Not judged in this scenario: {off.map(({ setting }) => setting).join('; ')}.</p>}
    </section>
  );
}

/** The rest of what differs between hospitals. */
export const DifferencesTable = () => (
  <section class="rules-part" aria-labelledby="differences-head">
    <h2 id="differences-head">What else differs between hospitals</h2>
    <table class="table rules-table">
      <caption class="unseen">Other points in which practice differs</caption>
      <thead>
        <tr>
          <th scope="col">Point</th>
          <th scope="col">Seen</th>
          <th scope="col">Here</th>
        </tr>
      </thead>
      <tbody>
        {LOCAL_DIFFERENCES.map(({ setting, seen, here }) => (
          <tr key={setting}>
            <th scope="row">{setting}</th>
            <td data-head="Seen: ">{seen}</td>
            <td data-head="Here: ">{'taken' in here ? here.taken : `Waits for the station “${STATION_WORDS[here.waitsFor]}”.`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </section>
);
