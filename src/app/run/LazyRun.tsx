import { useEffect, useState } from 'preact/hooks';
import type { RunPage, RunPageProps } from './RunPage.tsx';

interface Loaded {
  readonly RunPage: typeof RunPage;
}

let loaded: Loaded | null = null;

/** Loads the page on which runs are played; the start page does not wait for it. */
export const loadRunPage = async (): Promise<Loaded> => (loaded ??= await import('./RunPage.tsx'));

/** The page on which a run is played, which was loaded when the run began. */
export function LazyRun(props: RunPageProps) {
  const [page, setPage] = useState<Loaded | 'failed' | null>(loaded);
  useEffect(() => {
    if (page === null) loadRunPage().then(setPage, () => setPage('failed'));
  }, []);
  if (page === null) return <p class="report-wait">Getting the room ready.</p>;
  if (page === 'failed') {
    return (
      <main class="report-wait">
        <p>The room could not be loaded. Reload the page when the network is back; the run is kept.</p>
        <button onClick={props.onLeave}>Back to the start page</button>
      </main>
    );
  }
  return <page.RunPage {...props} />;
}
