import type { RunFilter } from './filterRuns.ts';

interface FilterRowProps {
  readonly filter: RunFilter;
  readonly scenarios: readonly { readonly id: string; readonly title: string }[];
  readonly onChange: (filter: RunFilter) => void;
}

type Field = HTMLInputElement | HTMLSelectElement;

/** Narrows the list by words, scenario, verdict and days. */
export function FilterRow({ filter, scenarios, onChange }: FilterRowProps) {
  const set = (name: keyof RunFilter) => (event: Event) => onChange({ ...filter, [name]: (event.currentTarget as Field).value });
  return (
    <search class="filter-row">
      <label>
        Find
        <input type="search" value={filter.text} onInput={set('text')} placeholder="title, date or id" />
      </label>
      <label>
        Scenario
        <select value={filter.scenario} onChange={set('scenario')}>
          <option value="">all</option>
          {scenarios.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <label>
        Verdict
        <select value={filter.verdict} onChange={set('verdict')}>
          <option value="">all</option>
          <option value="met">met</option>
          <option value="notYet">not yet</option>
          <option value="none">none</option>
        </select>
      </label>
      <label>
        From
        <input type="date" value={filter.from} onInput={set('from')} />
      </label>
      <label>
        To
        <input type="date" value={filter.to} onInput={set('to')} />
      </label>
    </search>
  );
}
