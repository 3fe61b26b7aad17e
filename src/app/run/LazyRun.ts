import { lazyPage } from '../parts/lazyPage.tsx';

/** The page on which a run is played; it is loaded while the run begins. */
export const { Page: LazyRun, load: loadRunPage } = lazyPage(async () => (await import('./RunPage.tsx')).RunPage, {
  waiting: 'Getting the room ready.',
  failed: 'The room could not be loaded. Reload the page when the network is back; the run is kept.',
  back: 'Back to the start page',
  onBack: ({ onLeave }) => onLeave(),
});
