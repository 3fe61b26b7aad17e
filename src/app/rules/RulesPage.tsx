import { useMemo, useState } from 'preact/hooks';
import { LOCAL_DIFFERENCES } from '../../core/ledger/rules/localDifferences.ts';
import { POLICY_TABLE } from '../../core/ledger/rules/policyTable.ts';
import { REMEDY_TABLE } from '../../core/ledger/rules/remedyTable.ts';
import { RULE_BOOK } from '../../core/ledger/rules/ruleBook.ts';
import type { Scenario } from '../../core/scenario/schema.ts';
import { counted } from '../parts/sentence.ts';
import { DifferencesTable, PolicyTable } from './PolicyTables.tsx';
import { RemedyTable } from './RemedyTable.tsx';
import { RuleDetail } from './RuleDetail.tsx';
import { RuleFilters } from './RuleFilters.tsx';
import { filterRemedies, filterRules, NO_FILTER } from './ruleFilter.ts';
import { RuleList } from './RuleList.tsx';
import '../look/rules.css';

export interface RulesPageProps {
  /** Scenario whose policy is shown beside the published ranges, or null for the defaults alone. */
  readonly scenario: Scenario | null;
  /** Rule to show first. */
  readonly rule?: string;
  readonly backWords: string;
  readonly onBack: () => void;
}

const VIEWS = { rules: 'Rules', remedies: 'Remedies', policy: 'Local policy' } as const;
type View = keyof typeof VIEWS;

/** The rule book to read and search: rules, what answers a break of them, and where practice differs. */
export function RulesPage({ scenario, rule, backWords, onBack }: RulesPageProps) {
  const [view, setView] = useState<View>('rules');
  const [filter, setFilter] = useState(NO_FILTER);
  const [chosen, setChosen] = useState(rule ?? RULE_BOOK[0]!.id);
  const rules = useMemo(() => filterRules(RULE_BOOK, filter, scenario), [filter, scenario]);
  const remedies = useMemo(() => filterRemedies(REMEDY_TABLE, filter), [filter]);
  const shown = rules.find(({ id }) => id === chosen) ?? rules[0];
  const found = view === 'rules' ? `${rules.length} of ${counted(RULE_BOOK.length, 'rule')}` : view === 'remedies' ? `${remedies.length} of ${counted(REMEDY_TABLE.length, 'row')}` : `${POLICY_TABLE.length + LOCAL_DIFFERENCES.length} settings`;
  const toRule = (id: string): void => {
    setFilter(NO_FILTER);
    setChosen(id);
    setView('rules');
  };
  return (
    <div class="rules">
      <header class="bar report-bar">
        <h1 class="bar-title">Rule book</h1>
        {scenario && <span class="bar-scenario">as “{scenario.title}” sets it</span>}
        <nav class="rules-views" aria-label="Parts of the rule book">
          {(Object.keys(VIEWS) as View[]).map((name) => (
            <button key={name} aria-current={view === name ? 'page' : undefined} onClick={() => setView(name)}>
              {VIEWS[name]}
            </button>
          ))}
        </nav>
        <button onClick={onBack}>{backWords}</button>
      </header>
      <main>
        <p class="rules-caution">For training. Local policy and the label on the product come first; what is marked as from memory should be checked before it is quoted.</p>
        <RuleFilters filter={filter} view={view} rules={RULE_BOOK} hasScenario={scenario !== null} found={found} onChange={setFilter} />
        {view === 'rules' && (
          <div class="rules-columns">
            <RuleList rules={rules} chosen={shown?.id ?? null} onChoose={setChosen} />
            {shown ? <RuleDetail rule={shown} scenario={scenario} /> : <p class="rules-none">No rule fits. Clear the search or widen it.</p>}
          </div>
        )}
        {view === 'remedies' && <RemedyTable rows={remedies} onRule={toRule} />}
        {view === 'policy' && (
          <>
            <PolicyTable scenario={scenario} />
            <DifferencesTable />
          </>
        )}
      </main>
    </div>
  );
}
