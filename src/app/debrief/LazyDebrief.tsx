import { useEffect, useState } from 'preact/hooks';
import type { DebriefPageProps } from './DebriefPage.tsx';

type Page = (props: DebriefPageProps) => preact.JSX.Element;

/** The debrief, which is loaded when somebody goes to it. */
export function LazyDebrief(props: DebriefPageProps) {
  const [page, setPage] = useState<{ readonly Debrief: Page } | 'failed' | null>(null);
  useEffect(() => {
    import('./DebriefPage.tsx').then(({ DebriefPage }) => setPage({ Debrief: DebriefPage }), () => setPage('failed'));
  }, []);
  if (page === null) return <p class="report-wait">Loading the debrief.</p>;
  if (page === 'failed') {
    return (
      <main class="report-wait">
        <p>The debrief could not be loaded. Reload the page when the network is back; the run is kept.</p>
        <button onClick={props.onReport}>Back to the report</button>
      </main>
    );
  }
  return <page.Debrief {...props} />;
}
