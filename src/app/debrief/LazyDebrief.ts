import { lazyPage } from '../parts/lazyPage.tsx';

/** The debrief, which is loaded when somebody goes to it. */
export const { Page: LazyDebrief } = lazyPage(async () => (await import('./DebriefPage.tsx')).DebriefPage, {
  waiting: 'Loading the debrief.',
  failed: 'The debrief could not be loaded. Reload the page when the network is back; the run is kept.',
  back: 'Back to the report',
  onBack: ({ onReport }) => onReport(),
});
