import { useEffect, useState } from 'preact/hooks';
import type { RulesPageProps } from './RulesPage.tsx';

type Page = (props: RulesPageProps) => preact.JSX.Element;

/** The rule book, which is loaded when somebody opens it. */
export function LazyRules(props: RulesPageProps) {
  const [page, setPage] = useState<{ readonly Rules: Page } | 'failed' | null>(null);
  useEffect(() => {
    import('./RulesPage.tsx').then(({ RulesPage }) => setPage({ Rules: RulesPage }), () => setPage('failed'));
  }, []);
  if (page === null) return <p class="report-wait">Loading the rules.</p>;
  if (page === 'failed') {
    return (
      <main class="report-wait">
        <p>The rules could not be loaded. Reload the page when the network is back.</p>
        <button onClick={props.onBack}>Back</button>
      </main>
    );
  }
  return <page.Rules {...props} />;
}
