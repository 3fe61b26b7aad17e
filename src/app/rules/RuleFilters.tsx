import type { Rule } from '../../core/ledger/rules/rule.ts';
import { STATION_WORDS, type StationId } from '../../core/ledger/rules/station.ts';
import { ruleSettings, type RuleFilter } from './ruleFilter.ts';

interface RuleFiltersProps {
  readonly filter: RuleFilter;
  readonly view: 'rules' | 'remedies' | 'policy';
  readonly rules: readonly Rule[];
  readonly hasScenario: boolean;
  /** How many are left, in words. */
  readonly found: string;
  readonly onChange: (filter: RuleFilter) => void;
}

/** Narrows what is shown by words, severity, station and local policy; only what the view can use. */
export function RuleFilters({ filter, view, rules, hasScenario, found, onChange }: RuleFiltersProps) {
  const set = (name: keyof RuleFilter) => (event: Event) => onChange({ ...filter, [name]: (event.currentTarget as HTMLInputElement | HTMLSelectElement).value });
  if (view === 'policy') return null;
  return (
    <search class="rules-filters">
      <label class="rules-find">
        Find
        <input type="search" value={filter.text} onInput={set('text')} />
      </label>
      {view === 'rules' && (
        <label>
          Severity
          <select value={filter.severity} onChange={set('severity')}>
            <option value="">all</option>
            <option value="critical">critical</option>
            <option value="major">major</option>
            <option value="minor">minor</option>
          </select>
        </label>
      )}
      <label>
        Station
        <select value={filter.station} onChange={set('station')}>
          <option value="">all</option>
          {(Object.keys(STATION_WORDS) as StationId[]).map((id) => (
            <option key={id} value={id}>
              {STATION_WORDS[id]}
            </option>
          ))}
        </select>
      </label>
      {view === 'rules' && (
        <label>
          Local policy
          <select value={filter.policy} onChange={set('policy')}>
            <option value="">all</option>
            <option value="differs">depends on local policy</option>
            {hasScenario && <option value="off">not judged in this scenario</option>}
            {ruleSettings(rules).map(({ path, words }) => (
              <option key={path} value={path}>
                {words}
              </option>
            ))}
          </select>
        </label>
      )}
      <output class="rules-found">{found}</output>
    </search>
  );
}
