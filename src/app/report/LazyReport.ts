import { lazyPage } from '../parts/lazyPage.tsx';

/** The report of a run, which is loaded while a run goes on or when somebody opens one. */
export const { Page: LazyReport, load: loadReportPage } = lazyPage(async () => (await import('./ReportPage.tsx')).ReportPage, {
  waiting: 'Loading the report.',
  failed: 'The report could not be loaded. Reload the page when the network is back; the run is kept.',
  back: 'Back to the start page',
  onBack: ({ onBack }) => onBack(),
});
