import { lazyPage } from '../parts/lazyPage.tsx';

/** The runs of this browser, which are listed when somebody asks for them. */
export const { Page: LazyLibrary } = lazyPage(async () => (await import('./LibraryPage.tsx')).LibraryPage, {
  waiting: 'Loading your runs.',
  failed: 'The list of runs could not be loaded. Reload the page when the network is back; the runs are kept.',
  back: 'Back to the start page',
  onBack: ({ onBack }) => onBack(),
});
