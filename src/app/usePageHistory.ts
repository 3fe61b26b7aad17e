import { useEffect, useRef } from 'preact/hooks';
import { focusHeading } from './parts/focusHeading.ts';

const TITLES: Readonly<Record<string, string>> = { start: 'Sterile-field trainer', run: 'Run, sterile-field trainer', report: 'Report, sterile-field trainer', debrief: 'Debrief, sterile-field trainer', runs: 'My runs, sterile-field trainer', rules: 'Rule book, sterile-field trainer' };

/** Keeps the browser's Back button in step: from a run or a report it leads to the start page. Names the page in the title and leads the focus to its heading. */
export function usePageHistory(page: string, toStart: () => void): void {
  const latest = useRef(toStart);
  const first = useRef(true);
  latest.current = toStart;
  useEffect(() => {
    document.title = TITLES[page] ?? TITLES['start']!;
    window.scrollTo(0, 0);
    if (!first.current) focusHeading();
    first.current = false;
    if (page !== 'start' && history.state !== 'inside') history.pushState('inside', '');
  }, [page]);
  useEffect(() => {
    const onBack = (): void => {
      if (history.state !== 'inside') latest.current();
    };
    window.addEventListener('popstate', onBack);
    return () => window.removeEventListener('popstate', onBack);
  }, []);
}
